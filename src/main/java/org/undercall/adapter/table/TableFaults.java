package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/** Collects the doubtful places of one table. */
final class TableFaults {
  /** What a column that is not taken most likely is: that is asked first. */
  private static final Set<String> MAY_BE_UNTAKEN =
      Set.of(Column.FASTENER.label(), Column.THREAD.label(), Column.TORQUE.label());

  private final String file;
  private final List<Fault.Finding> all = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private Optional<Layout> layout = Optional.empty();
  private String sheet = "";
  private String row = "";

  /**
   * A doubt that can be settled by an answer.
   *
   * @param asked the meaning of the column, or the word of a line above the table
   * @param read what stands there
   * @param row what names the row; blank for the whole table
   * @param finding the fault
   */
  record Doubt(String asked, String read, String row, Fault.Finding finding) {}

  TableFaults(String file) {
    this.file = file;
  }

  /** A collection for a sheet of the same file, of which it is not known yet whether it is read. */
  TableFaults ofSheet() {
    return new TableFaults(file);
  }

  void at(Cell cell, TableCode code, String found, String expected) {
    if (cell.kind() == Cell.Kind.REPORTED) {
      return;
    }
    about(asked(cell), cell, cell, code, found, expected);
  }

  /** A fault at one cell that an answer about another settles. */
  void about(String asked, Cell read, Cell cell, TableCode code, String found, String expected) {
    String place = cell.row() < 0 ? cell.text() : file + " " + sheet + cell.address();
    doubt(asked, read.row() < 0 ? "" : read.text(), code, place, found, expected);
  }

  /** Something has no column and no line above the table. */
  void missing(String asked, String expected) {
    doubt(asked, "", TableCode.MISSING_COLUMN, file, "no " + asked, expected);
  }

  /** A column that is not taken may hold what is missing; it is asked for, and no fault. */
  void untaken(String heading, String letters) {
    String expected = "what it means, such as torque or note, or - for nothing";
    Fault.Finding finding =
        new Fault.Finding(
            TableCode.MISSING_COLUMN, file + " column " + letters, Shown.quoted(heading), expected);
    doubts.add(0, new Doubt(Layout.ASKED, heading, "", finding));
  }

  private void doubt(
      String asked, String read, TableCode code, String place, String found, String expected) {
    add(code, place, found, expected);
    if (!asked.isEmpty()) {
      doubts.add(new Doubt(asked, read, row, new Fault.Finding(code, place, found, expected)));
    }
  }

  /** What an answer about a cell goes by; blank if none can be given. */
  private String asked(Cell cell) {
    if (cell.row() < 0) {
      return cell.text().replaceFirst("^--set ", "");
    }
    return layout
        .filter(known -> cell.row() >= known.data())
        .flatMap(known -> known.meanings().get(cell.column()))
        .map(Column::label)
        .orElse("");
  }

  /**
   * The heading that the cells from now on stand under.
   *
   * @param sheetRead the sheet that they are on, if several are read; else blank
   */
  void under(Layout known, String sheetRead) {
    layout = Optional.of(known);
    sheet = sheetRead.isEmpty() ? "" : sheetRead + " ";
  }

  /** A comment on a cell says something that only a person can settle. */
  void comment(String asked, Grid.Comment comment, String expected) {
    String place = file + " " + sheet + comment.address();
    String found = "the comment " + Shown.quoted(comment.text());
    doubt(asked, comment.text(), TableCode.COMMENT, place, found, expected);
  }

  /** Several sheets can be meant. */
  void sheets(String read, String found, String expected) {
    doubt(SheetChoice.ASKED, read, TableCode.WHICH_SHEET, file, found, expected);
  }

  /** The row that is read from now on, by what names it; blank for the table as a whole. */
  void inRow(String name) {
    row = name;
  }

  /** The doubts that an answer can settle, alike ones together. */
  List<Question> questions() {
    Map<List<String>, List<Doubt>> alike = new LinkedHashMap<>();
    boolean untaken = doubts.stream().anyMatch(doubt -> doubt.asked().equals(Layout.ASKED));
    for (Doubt doubt : doubts) {
      if (untaken && MAY_BE_UNTAKEN.contains(doubt.asked())) {
        continue;
      }
      List<String> key = List.of(doubt.asked(), doubt.read(), doubt.finding().expected());
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(doubt);
    }
    return alike.values().stream().map(TableFaults::question).toList();
  }

  private static Question question(List<Doubt> alike) {
    Doubt first = alike.get(0);
    return new Question(
        first.asked(),
        first.read(),
        alike.stream().map(Doubt::row).filter(name -> !name.isEmpty()).distinct().toList(),
        alike.stream().map(d -> d.finding().place().name()).distinct().toList(),
        (TableCode) first.finding().code(),
        first.finding().expected(),
        Possible.of(first.asked(), first.read(), (TableCode) first.finding().code()));
  }

  void file(TableCode code, String found, String expected) {
    add(code, file, found, expected);
  }

  void add(TableCode code, String place, String found, String expected) {
    Fault.Finding fault = new Fault.Finding(code, place, found, expected);
    if (!all.contains(fault)) {
      all.add(fault);
    }
  }

  List<Fault.Finding> all() {
    return all;
  }

  void throwIfAny() throws Fault {
    if (!all.isEmpty()) {
      throw new Fault(all);
    }
  }
}
