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
import java.util.Locale;

/** Prints the tables as they come and writes the pages at the end. */
final class Pages {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Path JSON_FILE = Path.of("target", "hearing.json");
  private static final Path PAGE = Path.of("docs/evidence/hearing.md");
  private static final Path PART_PAGE = Path.of("target", "hearing.md");

  private final Path page;
  private final List<Table> tables = new ArrayList<>();
  private final long began = System.nanoTime();

  /**
   * No pages yet.
   *
   * @param named where the page is to go; blank for the usual place
   * @param whole whether every part runs in full, so that the usual place is in docs
   */
  Pages(String named, boolean whole) {
    this.page = named.isBlank() ? (whole ? PAGE : PART_PAGE) : Path.of(named);
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
    tables.add(0, bench.goals().table());
    System.out.println(tables.get(0).markdown());
    tables.forEach(table -> list.add(table.json()));
    JSON.writerWithDefaultPrettyPrinter().writeValue(JSON_FILE.toFile(), root);
    StringBuilder text = new StringBuilder(text("hearing-before.md"));
    text.append("Machine: ").append(Machine.described()).append(".\n");
    text.append(String.format(Locale.ROOT, "The run took %.0f minutes.%n", minutes()));
    text.append(String.format(Locale.ROOT, "Trials: %.0f %% of a full run's.%n", 100 * scale));
    text.append("Noise files: ").append(bench.noises().counted()).append(".\n\n");
    tables.forEach(table -> text.append(table.markdown()));
    text.append(text("hearing-after.md"));
    Files.writeString(page, text.toString());
    System.out.println("hearing: wrote " + JSON_FILE + " and " + page);
  }

  private double minutes() {
    return (System.nanoTime() - began) / 60e9;
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
