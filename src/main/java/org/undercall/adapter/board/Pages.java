package org.undercall.adapter.board;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The fixed pages, read once from the program itself. */
final class Pages {
  private static final Map<String, String> FILES =
      Map.ofEntries(
          Map.entry("/", "board.html"),
          Map.entry("/code", "code.html"),
          Map.entry("/board.css", "board.css"),
          Map.entry("/board.js", "board.js"),
          Map.entry("/draw.js", "draw.js"),
          Map.entry("/shapes.js", "shapes.js"),
          Map.entry("/words.js", "words.js"),
          Map.entry("/press.js", "press.js"),
          Map.entry("/theme.js", "theme.js"),
          Map.entry("/code.js", "code.js"),
          Map.entry("/board.svg", "board.svg"));

  private final Map<String, Answer> answers =
      FILES.entrySet().stream()
          .collect(Collectors.toMap(Map.Entry::getKey, entry -> read(entry.getValue())));

  /** The page at a path; empty if there is none. */
  Optional<Answer> at(String path) {
    return Optional.ofNullable(answers.get(path));
  }

  private static Answer read(String file) {
    try (InputStream in = Pages.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its page " + file);
      }
      return new Answer(200, type(file), new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String type(String file) {
    String ending = file.substring(file.lastIndexOf('.') + 1);
    return switch (ending) {
      case "html" -> "text/html; charset=utf-8";
      case "css" -> "text/css; charset=utf-8";
      case "js" -> "text/javascript; charset=utf-8";
      default -> "image/svg+xml";
    };
  }
}
