package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.undercall.text.Shown;

/** The given values that can be referred to at one place, and which of them were. */
final class Scope {
  /** How a given value may be named. */
  static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private static final int LONGEST_NAME = 60;
  private static final String FIELD = "given";

  private final Map<String, Piece.Member> given;
  private final Set<String> leftOut;
  private final Set<String> used = new HashSet<>();
  private final Faults faults;

  Scope(Map<String, Piece.Member> given, Faults faults) {
    this(given, Set.of(), faults);
  }

  private Scope(Map<String, Piece.Member> given, Set<String> leftOut, Faults faults) {
    this.given = given;
    this.leftOut = leftOut;
    this.faults = faults;
  }

  /**
   * What a block can refer to: all that it takes, as an include gives it. What is taken and not
   * given, or given and not taken, is a fault. Where the block permits it, {@code null} is given on
   * purpose, and what refers to it is left out.
   *
   * @param with the values of the include
   * @param takes the names that the block takes, each with what it is
   */
  static Scope of(
      Include include,
      Map<String, Piece.Member> with,
      Map<String, Piece.Member> takes,
      Faults faults) {
    Map<String, Piece.Member> given = new LinkedHashMap<>();
    Set<String> leftOut = new HashSet<>();
    takes.forEach(
        (name, member) -> {
          JsonNode taken = member.piece().value();
          boolean orNull = taken.path("orNull").asBoolean();
          if (orNull && with.containsKey(name) && with.get(name).piece().isNone()) {
            leftOut.add(name);
          }
          if (!with.containsKey(name)) {
            String what = taken.path("what").asText(taken.asText()) + (orNull ? ", or null" : "");
            String expected = Shown.quoted(name) + ": " + what;
            String found = "no " + Shown.quoted(name);
            faults.at(ProcedureCode.BLOCK_LACKS, include.at().spot(), found, Shown.line(expected));
          }
          Piece.Member lost = new Piece.Member(member.key(), member.piece().lost());
          given.put(name, with.getOrDefault(name, lost));
        });
    with.forEach(
        (name, member) -> {
          if (!takes.containsKey(name)) {
            String expected = "one that the block takes: " + String.join(", ", takes.keySet());
            faults.at(ProcedureCode.NOT_USED, member.key(), Shown.quoted(name), expected);
          }
        });
    return new Scope(given, leftOut, faults);
  }

  /** Whether a value is a reference to one that was left out on purpose. */
  boolean leavesOut(Piece piece) {
    Optional<String> name = piece.at(FIELD).map(named -> named.value().asText());
    boolean left = name.isPresent() && leftOut.contains(name.get());
    if (left) {
      used.add(name.get());
    }
    return left;
  }

  /** The value that a reference names; with a fault, something lost in its place. */
  Piece of(Piece reference) {
    Piece named = reference.at(FIELD).orElseThrow();
    for (Map.Entry<String, Piece.Member> member : reference.members().entrySet()) {
      if (!member.getKey().equals(FIELD)) {
        String found = Shown.quoted(member.getKey());
        faults.at(
            ProcedureCode.UNKNOWN_FIELD, member.getValue().key(), found, "\"given\" and no other");
      }
    }
    if (!named.value().isTextual()) {
      String expected = "a text: the name of a given value";
      faults.at(ProcedureCode.WRONG_TYPE, named.spot(), Shown.value(named.value()), expected);
      return reference.lost();
    }
    String name = named.value().textValue();
    Piece.Member member = given.get(name);
    if (member == null) {
      if (!named.unusable()) {
        faults.at(ProcedureCode.NOT_GIVEN, named.spot(), Shown.quoted(name), expected());
      }
      return reference.lost();
    }
    used.add(name);
    return member.piece().usedAt(reference.spot());
  }

  private String expected() {
    return given.isEmpty()
        ? "the value itself: none is given here"
        : "one of " + String.join(", ", given.keySet());
  }

  /** Whether a reference named this value. */
  boolean isUsed(String name) {
    return used.contains(name);
  }

  /** Adds a fault for each value of a map that nothing referred to. */
  void requireUsed(Map<String, Piece.Member> members) {
    members.forEach(
        (name, member) -> {
          if (!isUsed(name)) {
            String expected = "a reference {\"given\": " + Shown.quoted(name) + "} to it";
            faults.at(ProcedureCode.NOT_USED, member.key(), Shown.quoted(name), expected);
          }
        });
  }

  /** Adds a fault for each name that is not of the form of one. */
  static void requireNames(Map<String, Piece.Member> members, Faults faults) {
    members.forEach(
        (name, member) -> {
          if (name.length() > LONGEST_NAME || !NAME.matcher(name).matches()) {
            String expected = "small letters, digits and hyphens, such as \"wheel-stages\"";
            faults.at(ProcedureCode.VALUE_NAME, member.key(), Shown.quoted(name), expected);
          }
        });
  }
}
