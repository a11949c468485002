package org.undercall.adapter.table;

import java.util.List;
import java.util.Set;

/**
 * The cells of a table as they stand in the file.
 *
 * @param rows by row and column, from 0; rows may be of different length
 * @param merges the joined cells
 * @param hidden what is not shown
 * @param comments what is written beside cells
 * @param readAs how the file was read, for the user
 */
record Grid(
    List<List<Cell>> rows,
    List<Merge> merges,
    Hidden hidden,
    List<Comment> comments,
    String readAs) {
  static final int MOST_ROWS = 2000;
  static final int MOST_COLUMNS = 100;

  /** The most that all cells of a sheet hold together. */
  static final int MOST_CHARACTERS = 20 * 1024 * 1024;

  /** The limits, for a message. */
  static final String MOST =
      MOST_ROWS + " rows, " + MOST_COLUMNS + " columns and 20 million characters";

  /** Cells joined into one; the first holds what is shown. All from 0 and inclusive. */
  record Merge(int top, int left, int bottom, int right) {
    boolean covers(int row, int column) {
      return top <= row && row <= bottom && left <= column && column <= right;
    }
  }

  /** The numbers of rows and columns that are not shown, from 0. */
  record Hidden(Set<Integer> rows, Set<Integer> columns) {
    static final Hidden NONE = new Hidden(Set.of(), Set.of());

    Hidden {
      rows = Set.copyOf(rows);
      columns = Set.copyOf(columns);
    }
  }

  /**
   * A comment on a cell.
   *
   * @param row of the cell, from 0
   * @param column of the cell, from 0
   * @param text what it says, blanks made single, without who wrote it
   */
  record Comment(int row, int column, String text) {
    /** A comment with its blanks as in a cell. */
    static Comment of(int row, int column, String raw) {
      return new Comment(row, column, Cell.of(row, column, raw, Cell.Kind.TEXT).given());
    }

    String address() {
      return Cell.of(row, column, "", Cell.Kind.EMPTY).address();
    }
  }

  Grid {
    rows = rows.stream().map(List::copyOf).toList();
    merges = List.copyOf(merges);
    comments = comments.stream().filter(comment -> !comment.text().isEmpty()).toList();
  }

  /** A grid of nothing. */
  static Grid none(String readAs) {
    return new Grid(List.of(), List.of(), Hidden.NONE, List.of(), readAs);
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
