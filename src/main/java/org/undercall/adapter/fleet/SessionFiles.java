package org.undercall.adapter.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The files of one session, as far as the index must know them.
 *
 * @param session the name of its folder; of a rehearsal with that of the rehearsals before it
 * @param stamp changes when a file of it was written: sizes and times of log, checksum, procedure
 * @param trouble why it cannot be read; blank if it can
 */
record SessionFiles(String session, String stamp, String trouble) {
  private static final String LOG = "log.jsonl";
  private static final String SUM = "log.jsonl.sha256";
  private static final String PROCEDURE = "procedure.json";
  private static final String PROCEDURE_YAML = "procedure.yaml";

  private static final String REHEARSALS = "rehearsals";

  /** Every folder with a log in a folder of sessions and in that of its rehearsals, by name. */
  static List<SessionFiles> in(Path folder) throws IOException {
    List<SessionFiles> found = new ArrayList<>();
    add(found, folder, "");
    Path rehearsals = folder.resolve(REHEARSALS);
    if (Files.isDirectory(rehearsals)) {
      add(found, rehearsals, REHEARSALS + "/");
    }
    found.sort(Comparator.comparing(SessionFiles::session));
    return found;
  }

  private static void add(List<SessionFiles> found, Path folder, String before) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      for (Path path : (Iterable<Path>) paths::iterator) {
        Path log = path.resolve(LOG);
        if (Files.exists(log)) {
          found.add(of(before + path.getFileName(), path, log));
        }
      }
    }
  }

  private static SessionFiles of(String name, Path path, Path log) {
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
