package org.undercall.adapter.fleet;

import java.util.List;
import java.util.Optional;

/**
 * An answer of the engine.
 *
 * @param columns the names of the columns
 * @param rows a value for each column; texts, whole numbers, decimals and empties
 */
public record Grid(List<String> columns, List<List<Optional<Object>>> rows) {
  public Grid {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** How many rows it has. */
  public int size() {
    return rows.size();
  }

  /** A text; blank if it is empty. */
  public String text(int row, String column) {
    return value(row, column).map(Object::toString).orElse("");
  }

  /** A number; empty if there is none. */
  public Optional<Number> number(int row, String column) {
    return value(row, column).map(Number.class::cast);
  }

  /** A whole number; 0 if there is none. */
  public long whole(int row, String column) {
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
  public Grid first(int most) {
    return new Grid(columns, rows.subList(0, Math.min(most, rows.size())));
  }
}
