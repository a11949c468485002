package org.undercall.command.fleet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.report.CsvText;

/** Tables as JSON and CSV, and the small forms of the text. */
final class GridOut {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
  private static final int SECONDS = 60;

  private GridOut() {}

  static String csv(Grid grid) {
    CsvText csv = new CsvText(grid.columns());
    grid.rows().forEach(row -> csv.row(row.toArray()));
    return csv.toString();
  }

  static String json(Map<String, Object> root) {
    try {
      return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree always has a text", e);
    }
  }

  /** Each row as an object; what is empty is left out. */
  static List<Map<String, Object>> objects(Grid grid) {
    List<Map<String, Object>> objects = new ArrayList<>();
    for (List<Optional<Object>> row : grid.rows()) {
      Map<String, Object> object = new LinkedHashMap<>();
      for (int i = 0; i < grid.columns().size(); i++) {
        String column = grid.columns().get(i);
        row.get(i).ifPresent(value -> object.put(column, value));
      }
      objects.add(object);
    }
    return objects;
  }

  /** A length of time as minutes and seconds, or a hyphen. */
  static String time(Optional<Number> millis) {
    return millis.map(m -> minutes(Duration.ofMillis(Math.round(m.doubleValue())))).orElse("-");
  }

  private static String minutes(Duration length) {
    long seconds = (length.toMillis() + 500) / 1000;
    return String.format(Locale.ROOT, "%d:%02d", seconds / SECONDS, seconds % SECONDS);
  }
}
