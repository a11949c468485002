package org.undercall.adapter.table;

import java.util.Locale;
import org.undercall.text.Shown;

/**
 * One cell of a table.
 *
 * @param row from 0; -1 for a value that was given as an option
 * @param column from 0
 * @param text what is written in it, blanks made single; the name of the option for an option
 * @param kind what it holds
 * @param given the value of an option, else the same as the text
 */
record Cell(int row, int column, String text, Kind kind, String given) {
  /** What a cell holds. */
  enum Kind {
    EMPTY,
    TEXT,
    DATE,
    FORMULA,
    ERROR,
    /** Doubtful, and already reported. */
    REPORTED
  }

  /** A cell of a file; a dash alone stands for nothing. */
  static Cell of(int row, int column, String raw, Kind kind) {
    String text = raw.replaceAll("[\\s\\u00a0\\u202f]+", " ").strip();
    boolean empty = kind == Kind.TEXT && text.matches("[-–—]?");
    return new Cell(row, column, text, empty ? Kind.EMPTY : kind, empty ? "" : text);
  }

  /** A value that was given as an option. */
  static Cell option(String name, String value) {
    Kind kind = value.isBlank() ? Kind.EMPTY : Kind.TEXT;
    return new Cell(-1, 0, "--set " + name, kind, value.strip());
  }

  /** The same cell with what was answered about it; a dash means that nothing stands there. */
  Cell answered(String answer) {
    Kind now = answer.matches("[-–—]?") ? Kind.EMPTY : Kind.TEXT;
    return new Cell(row, column, text, now, now == Kind.EMPTY ? "" : answer);
  }

  boolean isEmpty() {
    return kind == Kind.EMPTY;
  }

  /** The address as a spreadsheet shows it, for example {@code C7}. */
  String address() {
    return letters(column) + (row + 1);
  }

  /** The letters of a column, from 0. */
  static String letters(int column) {
    String last = String.valueOf((char) ('A' + column % 26));
    return column < 26 ? last : letters(column / 26 - 1) + last;
  }

  /** The number of a column from its letters, from 0; -1 if there is no such column. */
  static int column(String letters) {
    if (!letters.matches("[A-Za-z]{1,2}")) {
      return -1;
    }
    int number = 0;
    for (char c : letters.toUpperCase(Locale.ROOT).toCharArray()) {
      number = number * 26 + c - 'A' + 1;
    }
    return number - 1;
  }

  /** What is there, for a message. */
  String shown() {
    return isEmpty() ? "an empty cell" : Shown.quoted(given);
  }
}
