package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.port.Fault;

/** The blocks that a procedure in a folder can include. */
public final class Library {
  private static final int MOST_DEPTH = 3;
  private static final int MOST_BLOCKS = 200;
  private static final int MOST_LOOKED_AT = 2000;

  private Library() {}

  /**
   * A block.
   *
   * @param path from the folder, as an include names it
   * @param tree what its file holds
   */
  public record Block(String path, JsonNode tree) {}

  /** Those below a folder, by their paths; a file that cannot be read is none. */
  public static List<Block> below(Path folder) {
    List<Block> blocks = new ArrayList<>();
    try (Stream<Path> found = Files.walk(folder, MOST_DEPTH)) {
      for (Path file :
          found
              .limit(MOST_LOOKED_AT)
              .filter(Files::isRegularFile)
              .filter(ProcedureFile::named)
              .sorted()
              .toList()) {
        if (blocks.size() < MOST_BLOCKS) {
          block(folder, file).ifPresent(blocks::add);
        }
      }
    } catch (IOException | java.io.UncheckedIOException e) {
      return blocks;
    }
    return blocks;
  }

  private static Optional<Block> block(Path folder, Path file) {
    String path = folder.relativize(file).toString().replace('\\', '/');
    if (!Include.PATH.matcher(path).matches()) {
      return Optional.empty();
    }
    Faults faults = new Faults(path);
    try {
      JsonNode tree = LocatedJson.read(path, FileText.read(file, faults).text(), faults);
      boolean block = tree.path("takes").isObject() && tree.has("phases") != tree.has("steps");
      return Optional.of(new Block(path, tree)).filter(of -> block);
    } catch (Fault e) {
      return Optional.empty();
    }
  }
}
