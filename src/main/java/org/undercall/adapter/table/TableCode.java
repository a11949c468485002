package org.undercall.adapter.table;

import java.util.Locale;

/** What can be doubtful in a table. Numbers are permanent and never given out again. */
public enum TableCode {
  NOT_READABLE(1, "The file cannot be read, or ends neither in .csv, .tsv or .txt nor in .xlsx."),
  TOO_LARGE(2, "The file has more than 2 MB, 20 MB unpacked, 2000 rows or 60 columns."),
  NOT_TEXT(3, "The text is none of UTF-8, UTF-16 with its mark and Windows-1252, or not CSV."),
  NOT_A_WORKBOOK(4, "The workbook is damaged or of another kind."),
  WHICH_SHEET(5, "The workbook has several sheets, or not the one that is named."),
  NO_HEADING(6, "No row, or more than one way of reading it, names at least three columns."),
  TWO_COLUMNS(7, "Two columns have the same meaning."),
  MISSING_COLUMN(8, "What must be known has no column, no line above the table and no --set."),
  EMPTY_CELL(9, "A cell that must hold something is empty."),
  NUMBER(10, "A cell is not the plain number that is expected."),
  TWO_READINGS(11, "A number can be read in two ways."),
  NO_UNIT(12, "A torque has no unit."),
  OTHER_UNIT(13, "A unit is not known, or a procedure cannot hold it."),
  TWO_UNITS(14, "A cell has another unit than its heading."),
  RANGE(15, "A range stands where a target is needed."),
  NO_TOLERANCE(16, "A stage has no tolerance, or one that cannot be told to be its own."),
  DATE(17, "A cell holds a date, or looks as if it had been turned into one."),
  FORMULA(18, "A cell holds a formula; its value may be an old one."),
  CELL_ERROR(19, "A cell holds the error of a calculation."),
  WORD(20, "A word is not one that the column knows."),
  THREAD(21, "A thread is not ISO metric with its pitch."),
  MARKING(22, "A class is not a property class of ISO 898-1."),
  STATED_TWICE(23, "Something is stated twice."),
  ALIKE(24, "Rows of one fastener differ in more than class and stages, or not at all."),
  STEP_NUMBERS(25, "Numbers of steps do not rise."),
  HIDDEN(26, "A hidden row holds values."),
  OUT_OF_PLACE(27, "A cell holds something that this kind of step does not have."),
  HEAD(28, "A line above the table, or a --set or --map, cannot be taken."),
  EXISTS(29, "The file to be written is there already."),
  CANNOT_WRITE(30, "The file cannot be written.");

  private final int number;
  private final String meaning;

  TableCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  /** The code as printed, for example {@code TAB-009}. */
  public String code() {
    return String.format(Locale.ROOT, "TAB-%03d", number);
  }

  /** What is doubtful, in one sentence. */
  public String meaning() {
    return meaning;
  }
}
