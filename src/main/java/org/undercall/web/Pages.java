package org.undercall.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The fixed pages, read once from the program itself. */
public final class Pages {
  private final Map<String, Answer> answers;

  /**
   * Reads the files of a page.
   *
   * @param owner beside whose class they lie; a name that begins with a slash lies elsewhere
   * @param files the file of each path
   */
  public Pages(Class<?> owner, Map<String, String> files) {
    answers =
        files.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, each -> read(owner, each.getValue())));
  }

  /** The page at a path; empty if there is none. */
  public Optional<Answer> at(String path) {
    return Optional.ofNullable(answers.get(path));
  }

  private static Answer read(Class<?> owner, String file) {
    try (InputStream in = owner.getResourceAsStream(file)) {
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
      case "json" -> "application/json";
      default -> "image/svg+xml";
    };
  }
}
