package org.undercall.adapter.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercall.core.writing.Kept;
import org.undercall.port.Fault;

/**
 * Answers as a table in CSV that {@link TorqueTable} reads, and back. What is not in the table yet
 * stands in a line above it, which a reading for a procedure leaves out.
 */
public final class DraftTable {
  private static final String OPEN = "more answers";

  /** The columns that are there even without a row, so that the heading is found. */
  private static final List<String> ALWAYS = List.of("phase", "side", "kind");

  private DraftTable() {}

  /** The table as text. */
  public static String csv(Kept kept) {
    StringBuilder out = new StringBuilder();
    kept.head().forEach(line -> TableText.line(out, line));
    if (!kept.open().isEmpty()) {
      List<String> cells = new ArrayList<>(List.of(OPEN));
      kept.open().forEach(one -> cells.add(one.getKey() + "=" + one.getValue()));
      TableText.line(out, cells);
    }
    Set<String> columns = new LinkedHashSet<>(ALWAYS);
    kept.rows().forEach(row -> columns.addAll(row.keySet()));
    TableText.line(out, List.copyOf(columns));
    for (Map<String, String> row : kept.rows()) {
      TableText.line(out, columns.stream().map(c -> row.getOrDefault(c, "")).toList());
    }
    return out.toString();
  }

  /**
   * Reads what {@link #csv} wrote.
   *
   * @throws Fault if it cannot be read as a table at all
   */
  public static Kept read(Path file) throws Fault {
    String name = String.valueOf(file.getFileName());
    TableFaults faults = new TableFaults(name);
    Layout layout = Layout.find(CsvGrid.read(bytes(file, faults), faults), Map.of(), faults);
    List<List<String>> head = new ArrayList<>();
    List<Map.Entry<String, String>> open = new ArrayList<>();
    for (int row = 0; row < layout.top(); row++) {
      List<String> cells =
          layout.grid().rows().get(row).stream()
              .filter(cell -> !cell.isEmpty())
              .map(Cell::text)
              .toList();
      if (cells.size() > 1 && cells.get(0).equals(OPEN)) {
        cells.subList(1, cells.size()).forEach(cell -> open.add(entry(cell)));
      } else if (cells.size() > 1) {
        head.add(cells);
      }
    }
    return new Kept(head, rows(layout), open);
  }

  private static Map.Entry<String, String> entry(String cell) {
    int cut = cell.indexOf('=');
    return Map.entry(cell.substring(0, Math.max(cut, 0)), cell.substring(cut + 1));
  }

  private static List<Map<String, String>> rows(Layout layout) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (int row = layout.data(); row < layout.grid().rows().size(); row++) {
      Map<String, String> cells = new LinkedHashMap<>();
      for (Column column : Column.values()) {
        int at = layout.column(column);
        if (at >= 0 && !layout.grid().cell(row, at).isEmpty()) {
          cells.put(column.label(), layout.grid().cell(row, at).text());
        }
      }
      if (!cells.isEmpty()) {
        rows.add(cells);
      }
    }
    return rows;
  }

  private static byte[] bytes(Path file, TableFaults faults) throws Fault {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      faults.file(TableCode.NOT_READABLE, Fault.kind(e), "a file to read");
      faults.throwIfAny();
      return "".getBytes(StandardCharsets.UTF_8);
    }
  }
}
