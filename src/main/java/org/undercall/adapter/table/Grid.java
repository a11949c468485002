package org.undercall.adapter.table;

import java.util.List;
import java.util.Set;

/**
 * The cells of a table as they stand in the file.
 *
 * @param rows by row and column, from 0; rows may be of different length
 * @param merges the joined cells
 * @param hidden numbers of the rows that are not shown, from 0
 * @param readAs how the file was read, for the user
 */
record Grid(List<List<Cell>> rows, List<Merge> merges, Set<Integer> hidden, String readAs) {
  static final int MOST_ROWS = 2000;
  static final int MOST_COLUMNS = 100;

  /** Cells joined into one; the first holds what is shown. All from 0 and inclusive. */
  record Merge(int top, int left, int bottom, int right) {
    boolean covers(int row, int column) {
      return top <= row && row <= bottom && left <= column && column <= right;
    }
  }

  Grid {
    rows = rows.stream().map(List::copyOf).toList();
    merges = List.copyOf(merges);
    hidden = Set.copyOf(hidden);
  }

  int width() {
    return rows.stream().mapToInt(List::size).max().orElse(0);
  }

  /** What is shown at a place: of joined cells the first. */
  Cell cell(int row, int column) {
    for (Merge merge : merges) {
      if (merge.covers(row, column)) {
        return own(merge.top(), merge.left());
      }
    }
    return own(row, column);
  }

  /** What is written at a place itself. */
  Cell own(int row, int column) {
    return row < rows.size() && column < rows.get(row).size()
        ? rows.get(row).get(column)
        : Cell.of(row, column, "", Cell.Kind.EMPTY);
  }

  boolean isEmpty(int row) {
    return rows.get(row).stream().allMatch(Cell::isEmpty);
  }
}
