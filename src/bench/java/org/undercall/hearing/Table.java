package org.undercall.hearing;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A table of figures: on the screen, in Markdown and in JSON. */
final class Table {
  private static final JsonMapper JSON = new JsonMapper();

  private final String title;
  private final String about;
  private final List<String> columns;
  private final List<List<Object>> rows = new ArrayList<>();

  /**
   * An empty table.
   *
   * @param about what the figures are, in sentences
   */
  Table(String title, String about, List<String> columns) {
    this.title = title;
    this.about = about;
    this.columns = List.copyOf(columns);
  }

  Table row(Object... cells) {
    return row(List.of(cells));
  }

  Table row(List<Object> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(columns + " do not fit " + cells);
    }
    rows.add(List.copyOf(cells));
    return this;
  }

  String markdown() {
    StringBuilder text = new StringBuilder("### " + title + "\n\n" + about + "\n\n");
    text.append(line(columns)).append("|").append("---|".repeat(columns.size())).append('\n');
    rows.forEach(row -> text.append(line(row.stream().map(Table::shown).toList())));
    return text.append('\n').toString();
  }

  private static String line(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  ObjectNode json() {
    ObjectNode node = JSON.createObjectNode().put("title", title).put("about", about);
    ArrayNode list = node.putArray("rows");
    for (List<Object> row : rows) {
      ObjectNode object = list.addObject();
      for (int i = 0; i < row.size(); i++) {
        put(object, columns.get(i), row.get(i));
      }
    }
    return node;
  }

  private static void put(ObjectNode object, String name, Object cell) {
    if (cell instanceof Share share) {
      object
          .putObject(name)
          .put("count", share.count())
          .put("total", share.total())
          .put("share", share.share())
          .put("low95", share.low())
          .put("high95", share.high());
    } else if (cell instanceof Double number) {
      object.put(name, number);
    } else if (cell instanceof Integer number) {
      object.put(name, number);
    } else {
      object.put(name, cell.toString());
    }
  }

  private static String shown(Object cell) {
    return cell instanceof Double number
        ? String.format(Locale.ROOT, number < 10 ? "%.2f" : "%.0f", number)
        : cell.toString();
  }
}
