package org.undercall.adapter.table;

import org.undercall.port.Fault;

/** What can be doubtful in a table. The codes are permanent. */
public enum TableCode implements Fault.Code {
  NOT_READABLE(
      "TAB-001",
      "The file cannot be read, or ends neither in .csv, .tsv or .txt nor in .xlsx or .ods."),
  TOO_LARGE("TAB-002", "The file has more than 2 MB, 20 MB unpacked, 2000 rows or 100 columns."),
  NOT_TEXT(
      "TAB-003", "The text is none of UTF-8, UTF-16 with its mark and Windows-1252, or not CSV."),
  NOT_A_WORKBOOK("TAB-004", "The workbook is damaged, kept by a password or of another kind."),
  WHICH_SHEET("TAB-005", "The workbook has several sheets, or not the one that is named."),
  NO_HEADING(
      "TAB-006", "No row, or more than one way of reading it, names at least three columns."),
  TWO_COLUMNS("TAB-007", "Two columns have the same meaning."),
  MISSING_COLUMN(
      "TAB-008", "What must be known has no column, no line above the table and no --set."),
  EMPTY_CELL("TAB-009", "A cell that must hold something is empty."),
  NUMBER("TAB-010", "A cell is not the plain number that is expected."),
  TWO_READINGS("TAB-011", "A number can be read in two ways."),
  NO_UNIT("TAB-012", "A torque has no unit."),
  OTHER_UNIT("TAB-013", "A unit is not known, or a procedure cannot hold it."),
  TWO_UNITS("TAB-014", "A cell has another unit than its heading."),
  RANGE("TAB-015", "A range stands where a target is needed."),
  NO_TOLERANCE("TAB-016", "A stage has no tolerance, or one that cannot be told to be its own."),
  DATE("TAB-017", "A cell holds a date, or looks as if it had been turned into one."),
  FORMULA("TAB-018", "A cell holds a formula; its value may be an old one."),
  CELL_ERROR("TAB-019", "A cell holds the error of a calculation."),
  WORD("TAB-020", "A word is not one that the column knows."),
  THREAD("TAB-021", "A thread is not ISO metric with its pitch."),
  MARKING("TAB-022", "A class is not a property class of ISO 898-1."),
  STATED_TWICE("TAB-023", "Something is stated twice."),
  ALIKE("TAB-024", "Rows of one fastener differ in more than class and stages, or not at all."),
  STEP_NUMBERS("TAB-025", "Numbers of steps do not rise."),
  HIDDEN("TAB-026", "A hidden row or column holds values."),
  OUT_OF_PLACE("TAB-027", "A cell holds something that this kind of step does not have."),
  HEAD("TAB-028", "A line above the table, or a --set or --map, cannot be taken."),
  EXISTS("TAB-029", "The file to be written is there already."),
  CANNOT_WRITE("TAB-030", "The file cannot be written."),
  NOT_ONE_EACH("TAB-031", "Entries beside the stages are not one for each stage they are about."),
  ANSWERS("TAB-032", "A file of answers is none, or an answer to empty cells names no row."),
  COMMENT("TAB-033", "A comment on a cell says something that may change how it is tightened.");

  private final String id;
  private final String meaning;

  TableCode(String id, String meaning) {
    this.id = id;
    this.meaning = meaning;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String meaning() {
    return meaning;
  }
}
