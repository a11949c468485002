package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * The blocks below the folder of a procedure: each is read once, none from outside of it, and none
 * stands where it cannot.
 */
final class BlockFiles {
  /** Makes the schema ready on the first use, and only once. */
  private static final class Ready {
    static final SchemaCheck SCHEMA = new SchemaCheck("block-frame.schema.json");
  }

  /**
   * A file that was read.
   *
   * @param name its path from the folder of the procedure
   * @param real its path without links
   * @param root what it holds
   */
  record Source(String name, Path real, Piece root) {
    /** What is put before the paths of its includes, to see them from the procedure's folder. */
    String folder() {
      return name.substring(0, name.lastIndexOf('/') + 1);
    }
  }

  private static final int MOST_DEPTH = 4;

  private final Path folder;
  private final Faults faults;
  private final Set<String> includedAs = new HashSet<>();
  private final Map<Path, Optional<Source>> read = new HashMap<>();
  private final List<Part> parts = new ArrayList<>();
  private long bytes;

  /**
   * Nothing read yet.
   *
   * @param procedure the file of the procedure
   */
  BlockFiles(Path procedure, Faults faults) {
    this.folder = real(procedure.toAbsolutePath().normalize().resolveSibling(""));
    this.faults = faults;
  }

  /** The path without links, as far as there is such a file. */
  static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      return path.toAbsolutePath().normalize();
    }
  }

  /** The blocks that were read, in their order. */
  List<Part> parts() {
    return List.copyOf(parts);
  }

  /** Whether the blocks together are larger than one file may be. */
  boolean tooLarge() {
    return bytes > FileText.MOST_BYTES;
  }

  /**
   * The block that an include names; empty, with a fault, if it cannot stand there.
   *
   * @param kind what it must be a block of: phases or steps
   */
  Optional<Source> named(Include include, String kind, Within within) {
    Optional<Path> real = find(include, within.file());
    if (real.isEmpty()) {
      return Optional.empty();
    }
    if (within.isIn(real.get())) {
      String expected = "another file than those it is included by";
      return none(ProcedureCode.INCLUDE_CIRCLE, include, expected);
    }
    if (within.depth() >= MOST_DEPTH) {
      String expected = "no include in a block that is " + MOST_DEPTH + " deep";
      return none(ProcedureCode.INCLUDED_TOO_DEEP, include, expected);
    }
    Optional<Source> block = read(include, within.file(), real.get());
    if (block.isPresent() && block.get().root().at(kind).isEmpty()) {
      return none(ProcedureCode.BLOCK_KIND, include, "a block of " + kind);
    }
    block.ifPresent(found -> requireRevision(include, found));
    String prefix = within.prefix() + include.ids();
    if (block.isPresent() && !includedAs.add(prefix + " " + block.get().name())) {
      String expected = "\"ids\" of its own for each include of this block";
      String seen =
          prefix.isEmpty() ? "nothing before its ids again" : Shown.quoted(prefix) + " again";
      faults.at(ProcedureCode.SAME_IDS, include.at().spot(), seen, expected);
      return Optional.empty();
    }
    return block;
  }

  private void requireRevision(Include include, Source block) {
    String there = block.root().at("revision").orElseThrow().value().asText();
    Optional<Piece> wanted = include.revision();
    if (wanted.isPresent() && !wanted.get().value().asText().equals(there)) {
      String found = "revision " + Shown.quoted(there) + " of the block";
      String expected = Shown.value(wanted.get().value()) + ", which the include was written for";
      faults.at(ProcedureCode.BLOCK_REVISION, wanted.get().spot(), found, expected);
    }
  }

  private Optional<Source> none(ProcedureCode code, Include include, String expected) {
    String found = Shown.value(include.path().value());
    faults.at(code, include.path().spot(), found, expected);
    return Optional.empty();
  }

  /** The file that an include names, without links; empty, with a fault, if it is no block here. */
  private Optional<Path> find(Include include, Source from) {
    String name = from.folder() + include.path().value().textValue();
    String seen;
    try {
      Path real = folder.resolve(name).toRealPath();
      if (!real.startsWith(folder)) {
        String expected = "a file in the folder of the procedure or below";
        String found = "a link to outside of it";
        faults.at(ProcedureCode.BLOCK_OUTSIDE, include.path().spot(), found, expected);
        return Optional.empty();
      }
      if (Files.isRegularFile(real)) {
        return Optional.of(real);
      }
      seen = "a folder or device";
    } catch (NoSuchFileException e) {
      seen = "no such file";
    } catch (IOException | InvalidPathException e) {
      seen = "a file that cannot be found (" + Fault.kind(e) + ")";
    }
    faults.at(
        ProcedureCode.BLOCK_ABSENT, include.path().spot(), seen, "the file " + Shown.line(name));
    return Optional.empty();
  }

  /** A block; empty, with faults of its own file, if it cannot be read or is not of the form. */
  private Optional<Source> read(Include include, Source from, Path real) {
    String name = from.folder() + include.path().value().textValue();
    return read.computeIfAbsent(real, file -> readNew(name, file));
  }

  private Optional<Source> readNew(String name, Path real) {
    Faults own = new Faults(name);
    try {
      FileText text = FileText.read(real, own);
      bytes += text.text().getBytes(StandardCharsets.UTF_8).length;
      if (tooLarge()) {
        return Optional.empty();
      }
      JsonNode root = LocatedJson.read(name, text.text(), own);
      Ready.SCHEMA.check(root, own);
      Piece piece = Piece.of(root, own);
      piece.at("takes").ifPresent(takes -> Scope.requireNames(takes.members(), own));
      faults.take(own);
      if (!hasFrame(root)) {
        return Optional.empty();
      }
      parts.add(new Part(name, text.sha256(), Optional.of(Part.about(root))));
      return Optional.of(new Source(name, real, piece));
    } catch (Fault e) {
      faults.take(own);
      return Optional.empty();
    }
  }

  /** Whether a block has all that is needed to include it; if not, a fault was reported. */
  private static boolean hasFrame(JsonNode root) {
    return Stream.of("title", "author", "revision", "values")
            .allMatch(field -> root.path(field).isTextual())
        && root.path("takes").isObject()
        && root.path("phases").isArray() != root.path("steps").isArray();
  }
}
