package org.undercall.adapter.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** The SQL that the questions are asked with; DuckDB and Apache Spark share most of it. */
public final class SqlText {
  private SqlText() {}

  /** What the lines of the logs come to, as views. */
  public static String derive() {
    return resource("derive.sql");
  }

  /** Questions to many sessions, as views. */
  public static String compare() {
    return resource("compare.sql");
  }

  static String readWithDuckDb() {
    return resource("read-duckdb.sql");
  }

  /** The tables of the index. */
  static String index() {
    return resource("index-duckdb.sql");
  }

  /** The statements of a script without their comments; no text in it has a semicolon. */
  public static List<String> statements(String script) {
    String plain = script.replaceAll("(?m)^\\s*--.*$", "");
    return Arrays.stream(plain.split(";", -1))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .toList();
  }

  private static String resource(String name) {
    try (InputStream in = SqlText.class.getResourceAsStream("/org/undercall/fleet/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }
}
