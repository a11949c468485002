package org.undercall.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What is in a folder, to be compared with what was. */
final class FolderTexts {
  private FolderTexts() {}

  /** Every file and folder in it by its path; files with their text. */
  static Map<String, String> of(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.toList()) {
        all.put(file.toString(), Files.isRegularFile(file) ? Files.readString(file) : "");
      }
    }
    return all;
  }
}
