package org.undercall.command.work;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Properties;

/**
 * Names and what is kept of them from session to session, in a file.
 *
 * @param file which may be absent
 */
record KeptLines(Path file) {
  /** The lines; none of a file that cannot be read. */
  Properties read() {
    Properties all = new Properties();
    try (Reader reader = Files.newBufferedReader(file)) {
      all.load(reader);
    } catch (IOException | IllegalArgumentException e) {
      all.clear();
    }
    return all;
  }

  /**
   * Takes the place of what stood there. If that fails the old file stays, and the next session
   * begins as if nothing had been kept.
   *
   * @param what what the lines tell
   */
  void write(Properties all, String what) {
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      try (Writer writer = Files.newBufferedWriter(fresh)) {
        all.store(writer, what);
      }
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // As told above.
    }
  }
}
