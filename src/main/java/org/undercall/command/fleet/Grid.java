package org.undercall.command.fleet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A table.
 *
 * @param columns the names of the columns
 * @param rows a value for each column; texts, whole numbers, decimals and empties
 */
record Grid(List<String> columns, List<List<Optional<Object>>> rows) {
  Grid {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** A row with a value in every column. */
  static List<Optional<Object>> row(Object... values) {
    return Arrays.stream(values).map(Optional::of).toList();
  }

  /** How many rows it has. */
  int size() {
    return rows.size();
  }

  /** A text; blank if it is empty. */
  String text(int row, String column) {
    return value(row, column).map(Object::toString).orElse("");
  }

  /** A number; empty if there is none. */
  Optional<Number> number(int row, String column) {
    return value(row, column).map(Number.class::cast);
  }

  /** A whole number; 0 if there is none. */
  long whole(int row, String column) {
    return number(row, column).map(Number::longValue).orElse(0L);
  }

  private Optional<Object> value(int row, String column) {
    int at = columns.indexOf(column);
    if (at < 0) {
      throw new IllegalArgumentException("no column " + column + " in " + columns);
    }
    return rows.get(row).get(at);
  }

  /** Its first rows. */
  Grid first(int most) {
    return new Grid(columns, rows.subList(0, Math.min(most, rows.size())));
  }
}
