package org.undercall.adapter.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The files of one session, as far as the index must know them.
 *
 * @param session the name of its folder
 * @param stamp changes when a file of it was written: sizes and times of log, checksum, procedure
 * @param trouble why it cannot be read; blank if it can
 */
record SessionFiles(String session, String stamp, String trouble) {
  private static final String LOG = "log.jsonl";
  private static final String SUM = "log.jsonl.sha256";
  private static final String PROCEDURE = "procedure.json";
  private static final String PROCEDURE_YAML = "procedure.yaml";

  /** Every folder with a log in a folder of sessions. */
  static List<SessionFiles> in(Path folder) throws IOException {
    List<SessionFiles> found = new ArrayList<>();
    try (Stream<Path> paths = Files.list(folder)) {
      for (Path path : (Iterable<Path>) paths.sorted()::iterator) {
        Path log = path.resolve(LOG);
        if (Files.exists(log)) {
          found.add(of(path, log));
        }
      }
    }
    return found;
  }

  private static SessionFiles of(Path path, Path log) {
    String name = String.valueOf(path.getFileName());
    try {
      String stamp = stamp(log) + " " + stamp(path.resolve(SUM)) + " " + stamp(procedure(path));
      return new SessionFiles(name, stamp, trouble(path));
    } catch (IOException e) {
      return new SessionFiles(name, "", "a file that is gone or hidden");
    }
  }

  private static String trouble(Path path) {
    for (Path file : List.of(path.resolve(LOG), procedure(path))) {
      String name = String.valueOf(file.getFileName());
      if (!Files.isRegularFile(file)) {
        return name + " absent or no file";
      }
      if (!Files.isReadable(file)) {
        return name + " that may not be read";
      }
    }
    Path sum = path.resolve(SUM);
    boolean odd = Files.exists(sum) && (!Files.isRegularFile(sum) || !Files.isReadable(sum));
    return odd ? SUM + " that cannot be read" : "";
  }

  private static String stamp(Path file) throws IOException {
    return Files.exists(file)
        ? Files.size(file) + "@" + Files.getLastModifiedTime(file).toMillis()
        : "-";
  }

  private static Path procedure(Path folder) {
    Path yaml = folder.resolve(PROCEDURE_YAML);
    return Files.exists(yaml) && !Files.exists(folder.resolve(PROCEDURE))
        ? yaml
        : folder.resolve(PROCEDURE);
  }
}
