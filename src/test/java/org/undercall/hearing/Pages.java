package org.undercall.hearing;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Prints the tables as they come and writes the pages at the end. */
final class Pages {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Path JSON_FILE = Path.of("target", "hearing.json");
  private static final Path PAGE = Path.of("docs", "hearing.md");
  private static final Path PART_PAGE = Path.of("target", "hearing.md");

  private final boolean whole;
  private final List<Table> tables = new ArrayList<>();

  /**
   * No pages yet.
   *
   * @param whole whether every part runs in full, so that the page in docs may be written
   */
  Pages(boolean whole) {
    this.whole = whole;
  }

  void add(List<Table> more) {
    more.forEach(table -> System.out.println(table.markdown()));
    tables.addAll(more);
  }

  void write(Bench bench, double scale) throws IOException {
    Files.createDirectories(JSON_FILE.getParent());
    ObjectNode root = JSON.createObjectNode();
    root.put("machine", Machine.described()).put("scale", scale);
    root.put("noise", bench.noises().counted());
    ArrayNode list = root.putArray("tables");
    tables.forEach(table -> list.add(table.json()));
    JSON.writerWithDefaultPrettyPrinter().writeValue(JSON_FILE.toFile(), root);
    Path page = whole ? PAGE : PART_PAGE;
    StringBuilder text = new StringBuilder(text("hearing-before.md"));
    text.append("Machine: ").append(Machine.described()).append(".\n");
    text.append("Noise files: ").append(bench.noises().counted()).append(".\n\n");
    tables.forEach(table -> text.append(table.markdown()));
    text.append(text("hearing-after.md"));
    Files.writeString(page, text.toString());
    System.out.println("hearing: wrote " + JSON_FILE + " and " + page);
  }

  private static String text(String name) throws IOException {
    try (InputStream in = Pages.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("no text " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
