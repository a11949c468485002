package org.undercall.adapter.procedure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.undercall.text.Shown;

/**
 * An include as it is written.
 *
 * @param at the whole of it
 * @param path of the block, checked to be of plain names
 * @param ids what is put before the ids of its steps; empty for nothing
 * @param revision of the block that it was written for, if it is stated
 * @param with the values given to the block
 */
record Include(
    Piece at, Piece path, String ids, Optional<Piece> revision, Map<String, Piece.Member> with) {
  /**
   * Plain names with a slash between them: no name begins or ends with a point or a blank, so that
   * none leads upwards or away, and none is the path of a drive or a device.
   */
  static final Pattern PATH =
      Pattern.compile(
          "([\\p{L}\\p{N}_-]([\\p{L}\\p{M}\\p{N} ._-]*[\\p{L}\\p{M}\\p{N}_-])?/)*"
              + "[\\p{L}\\p{N}_-]([\\p{L}\\p{M}\\p{N} ._-]*[\\p{L}\\p{M}\\p{N}_-])?"
              + "\\.(json|yaml|yml)");

  /** Names that open a device under Windows, in any folder and with any ending. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(.*/)?(con|prn|aux|nul|com[0-9]|lpt[0-9])( *\\..*|/.*)?");

  /** What may be put before ids. */
  static final Pattern IDS = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*-");

  static final int LONGEST_PATH = 200;
  static final int LONGEST_IDS = 40;

  private static final List<String> FIELDS = List.of("include", "ids", "revision", "with");

  /** Reads an include; empty, with faults, if it cannot be followed. */
  static Optional<Include> of(Piece at, Faults faults) {
    at.members()
        .forEach(
            (name, member) -> {
              if (!FIELDS.contains(name)) {
                String expected = "one of " + String.join(", ", FIELDS);
                faults.at(ProcedureCode.UNKNOWN_FIELD, member.key(), Shown.quoted(name), expected);
              }
            });
    Piece path = at.at("include").orElseThrow();
    Optional<Piece> ids = at.at("ids");
    Optional<Piece> revision = at.at("revision");
    Optional<Piece> with = at.at("with");
    boolean good = isPath(path, faults);
    good &= ids.isEmpty() || areIds(ids.get(), faults);
    good &= revision.isEmpty() || isText(revision.get(), "a text: the revision of a block", faults);
    if (with.isPresent() && !with.get().value().isObject()) {
      String found = Shown.value(with.get().value());
      faults.at(ProcedureCode.WRONG_TYPE, with.get().spot(), found, "an object of given values");
      good = false;
    }
    return good
        ? Optional.of(
            new Include(
                at,
                path,
                ids.map(piece -> piece.value().textValue()).orElse(""),
                revision,
                with.map(Piece::members).orElse(Map.of())))
        : Optional.empty();
  }

  private static boolean isPath(Piece path, Faults faults) {
    if (!isText(path, "a text: the path of a block", faults)) {
      return false;
    }
    String text = path.value().textValue();
    if (text.length() <= LONGEST_PATH
        && PATH.matcher(text).matches()
        && !DEVICE.matcher(text).matches()) {
      return true;
    }
    String expected =
        "a path such as \"blocks/wheel.json\", of plain names, at most "
            + LONGEST_PATH
            + " characters";
    faults.at(ProcedureCode.INCLUDE_PATH, path.spot(), Shown.quoted(text), expected);
    return false;
  }

  private static boolean areIds(Piece ids, Faults faults) {
    if (!isText(ids, "a text to put before ids", faults)) {
      return false;
    }
    String text = ids.value().textValue();
    if (text.length() <= LONGEST_IDS && IDS.matcher(text).matches()) {
      return true;
    }
    String expected = "small letters, digits and hyphens, a hyphen last, such as \"front-\"";
    faults.at(ProcedureCode.IDS_FORM, ids.spot(), Shown.quoted(text), expected);
    return false;
  }

  /** A text that was reported already is none, without another fault. */
  private static boolean isText(Piece piece, String expected, Faults faults) {
    if (!piece.value().isTextual()) {
      faults.at(ProcedureCode.WRONG_TYPE, piece.spot(), Shown.value(piece.value()), expected);
    }
    return piece.value().isTextual() && !piece.unusable();
  }
}
