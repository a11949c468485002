package org.undercall.demo;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * What an invented technician says in a demonstration.
 *
 * @param lines in order
 */
record Script(List<Line> lines) {

  /**
   * Something said, or a time in which nothing is said.
   *
   * @param speaker the name of a demo speaker
   * @param words what is said; absent for a pause
   * @param pause seconds of silence instead of words
   */
  record Line(String speaker, String words, int pause) {}

  Script {
    lines = List.copyOf(lines);
  }

  /** Reads a script file. */
  static Script read(Path file) throws IOException {
    return JsonMapper.builder()
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .build()
        .readValue(file.toFile(), Script.class);
  }
}
