package org.undercall.adapter.procedure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Procedures and blocks that tests write. */
final class Blocks {
  private Blocks() {}

  /** Copies a folder with all that is in it. */
  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }

  /** A procedure of one phase with these steps. */
  static String procedure(String given, List<String> steps) {
    return """
        {"title": "Link", "vehicle": "Invented van", "author": "Test", "revision": "1",
        "values": "invented for a test", %s "cautions": ["Stands carry the car."],
        "tools": [{"id": "w", "least": 40, "most": 200, "unit": "N·m",
        "calibrated": "2026-02-17"}],
        "phases": [{"name": "fit", "each": "car", "steps": [
        %s
        ]}]}
        """
        .formatted(given, String.join(",\n", steps));
  }

  /** A block with what it takes and its steps. */
  static String block(String takes, String... steps) {
    return """
        {"title": "Block", "author": "Test", "revision": "1", "values": "invented for a test",
        "takes": {%s}, "steps": [%s]}
        """
        .formatted(takes, String.join(",\n", steps));
  }

  /** A step that is only done. */
  static String step(String id) {
    return "{\"id\": \"" + id + "\", \"kind\": \"do\", \"title\": \"Do it\"}";
  }

  /** An include of a block that takes nothing. */
  static String include(String path) {
    return "{\"include\": \"" + path + "\"}";
  }
}
