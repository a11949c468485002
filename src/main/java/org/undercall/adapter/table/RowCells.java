package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The cells of one row by meaning; what has no column may be given for all rows. */
final class RowCells {
  /** In place of the size of a socket: the hexagon that ISO 272 has for the thread. */
  static final String BY_THREAD = "by thread";

  /** Such as {@code 9/16 in}, {@code 1 1/8"} or {@code 1 inch}. */
  private static final Pattern INCHES =
      Pattern.compile("(?:(?:([1-9]) )?([1-9][0-9]?)/(2|4|8|16|32|64)|([1-9])) ?(?:in|inch|\")");

  private final Layout layout;
  private final int row;
  private final Map<Column, String> given;
  private final Answers answers;
  private final CellComments comments;
  private final String name;
  private final TableFaults faults;
  private final Amounts amounts;
  private final Set<Column> used = EnumSet.noneOf(Column.class);

  /**
   * What the cells of a row are read with.
   *
   * @param given values for what has no column
   */
  record Beside(
      Layout layout,
      Map<Column, String> given,
      Answers answers,
      CellComments comments,
      TableFaults faults) {}

  /**
   * The cells of a row.
   *
   * @param name what names the row in questions and their answers
   */
  RowCells(Beside beside, int row, String name) {
    this.layout = beside.layout();
    this.row = row;
    this.given = beside.given();
    this.answers = beside.answers();
    this.comments = beside.comments();
    this.name = name;
    this.faults = beside.faults();
    this.amounts = new Amounts(faults);
    faults.inRow(name);
  }

  /** What is read out of the comments on the row. */
  List<String> comments() {
    return comments.of(row, name);
  }

  String name() {
    return name;
  }

  /** The row from 1, as a spreadsheet shows it. */
  int number() {
    return row + 1;
  }

  /** The cell of a meaning, empty if there is none; a doubtful kind of cell is a fault. */
  Cell cell(Column meaning) {
    used.add(meaning);
    int column = layout.column(meaning);
    if (column < 0) {
      return answered(meaning, Cell.option(meaning.label(), given.getOrDefault(meaning, "")));
    }
    Cell cell = answered(meaning, comments.cell(row, meaning, name));
    TableCode code =
        switch (cell.kind()) {
          case DATE -> TableCode.DATE;
          case FORMULA -> TableCode.FORMULA;
          case ERROR -> TableCode.CELL_ERROR;
          default -> null;
        };
    if (code == null) {
      return cell;
    }
    String found = (code == TableCode.DATE ? "the date " : "") + cell.shown();
    faults.at(cell, code, found, "the value of " + meaning.label() + " as text or number");
    return Cell.of(cell.row(), cell.column(), "", Cell.Kind.REPORTED);
  }

  /** The cell with what was answered about it. */
  private Cell answered(Column meaning, Cell cell) {
    return answer(meaning, cell.row() < 0 ? "" : cell.text()).map(cell::answered).orElse(cell);
  }

  private Optional<String> answer(Column meaning, String read) {
    return answers.find(meaning.label(), read, name);
  }

  /** Whether a value was given for all rows, and nothing else was answered for this one. */
  boolean isSet(Column meaning) {
    return layout.column(meaning) < 0
        && given.containsKey(meaning)
        && answer(meaning, "").isEmpty();
  }

  /** A cell that must hold something; a fault if it is empty. */
  Cell required(Column meaning) {
    Cell cell = cell(meaning);
    if (cell.isEmpty()) {
      if (layout.column(meaning) < 0) {
        String expected = "a column for it, or --set \"" + meaning.label() + "=...\"";
        faults.missing(meaning.label(), expected);
      } else {
        String at = meaning.label();
        Cell own = layout.grid().own(row, layout.column(meaning));
        faults.at(own, TableCode.EMPTY_CELL, "an empty cell", "the value of " + at);
      }
    }
    return cell;
  }

  /** The unit in the heading of a column, or the one that was answered; blank if none is known. */
  String unit(Column meaning) {
    String stated = layout.unit(meaning);
    return stated.isEmpty() && meaning == Column.TORQUE
        ? answers.find(StageCell.UNIT, "", name).orElse("")
        : stated;
  }

  boolean hasColumn(Column meaning) {
    return layout.column(meaning) >= 0;
  }

  /** Whether a cell can be read further: it holds something that is no fault already. */
  private static boolean readable(Cell cell) {
    return !cell.isEmpty() && cell.kind() == Cell.Kind.TEXT;
  }

  /** Puts a text. */
  void text(ObjectNode node, String field, Column meaning, boolean needed) {
    Cell cell = needed ? required(meaning) : cell(meaning);
    if (readable(cell)) {
      node.put(field, cell.given());
    }
  }

  /** Puts one of the words that the format has, written with blanks, hyphens or capitals. */
  void word(ObjectNode node, String field, Column meaning, List<String> words, boolean needed) {
    Cell cell = needed ? required(meaning) : cell(meaning);
    if (readable(cell)) {
      String word =
          AsWritten.word(meaning, cell.given())
              .orElse(cell.given().toLowerCase(Locale.ROOT).replaceAll("[ _]", "-"));
      if (words.contains(word)) {
        node.put(field, word);
      } else {
        faults.at(cell, TableCode.WORD, cell.shown(), "one of " + String.join(", ", words));
      }
    }
  }

  /** Puts yes or no as true or false. */
  void truth(ObjectNode node, String field, Column meaning, boolean needed) {
    Cell cell = needed ? required(meaning) : cell(meaning);
    if (readable(cell)) {
      String word =
          AsWritten.word(meaning == Column.RENEW ? Column.ONE_TIME : meaning, cell.given())
              .orElse(cell.given().toLowerCase(Locale.ROOT));
      switch (word) {
        case "yes", "y", "true", "✓", "✔" -> node.put(field, true);
        case "no", "n", "false" -> node.put(field, false);
        default -> faults.at(cell, TableCode.WORD, cell.shown(), "yes or no");
      }
    }
  }

  /** Puts a whole number. */
  void whole(ObjectNode node, String field, Column meaning, boolean needed) {
    Cell cell = needed ? required(meaning) : cell(meaning);
    if (readable(cell)) {
      amounts.whole(cell).ifPresent(number -> node.put(field, number));
    }
  }

  /** Puts a number with decimals. */
  void number(ObjectNode node, String field, Column meaning) {
    Cell cell = cell(meaning);
    if (readable(cell)) {
      put(node, field, amounts.signed(cell, cell.given(), "a number"));
    }
  }

  /** Puts the size of a socket: in mm or inches, or that of the hexagon for the thread. */
  void drive(ObjectNode node, String field, Column meaning) {
    Cell cell = required(meaning);
    if (readable(cell) && cell.given().equalsIgnoreCase(BY_THREAD)) {
      Optional<Integer> hexagon = Threads.hexagon(node.path("thread").asText());
      if (hexagon.isEmpty()) {
        faults.at(cell, TableCode.NUMBER, cell.shown(), "a size: no hexagon is known for it");
      }
      hexagon.ifPresent(size -> node.put(field, size));
      return;
    }
    Matcher inches = INCHES.matcher(cell.given());
    if (readable(cell) && inches.matches()) {
      String ones = inches.group(4) == null ? inches.group(1) : inches.group(4);
      BigDecimal whole = ones == null ? BigDecimal.ZERO : new BigDecimal(ones);
      BigDecimal part =
          inches.group(2) == null
              ? BigDecimal.ZERO
              : new BigDecimal(inches.group(2)).divide(new BigDecimal(inches.group(3)));
      node.put(field, whole.add(part));
      node.put("driveUnit", "in");
    } else if (readable(cell)) {
      put(node, field, amounts.millimetres(cell, unit(meaning)));
    }
  }

  /** Puts a size in mm, whose cell may be empty. */
  void millimetres(ObjectNode node, String field, Column meaning) {
    Cell cell = cell(meaning);
    if (readable(cell)) {
      put(node, field, amounts.millimetres(cell, unit(meaning)));
    }
  }

  private static void put(ObjectNode node, String field, Optional<BigDecimal> number) {
    number.ifPresent(value -> node.put(field, value));
  }

  /** Adds a fault for every cell of the row that was not asked for. */
  void requireNothingElse(String kind) {
    for (Column meaning : Column.values()) {
      int column = layout.column(meaning);
      if (column >= 0 && !used.contains(meaning)) {
        Cell cell = comments.cell(row, meaning, name);
        if (!cell.isEmpty()) {
          String expected = "an empty cell in a step of the kind " + kind;
          faults.at(cell, TableCode.OUT_OF_PLACE, cell.shown(), expected);
        }
      }
    }
  }
}
