package org.undercall.adapter.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/** Reads a table from one sheet of a workbook. */
final class XlsxGrid {
  private static final String FORMAT_TEXTS = "\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.";

  private final TableFaults faults;
  private final List<List<Cell>> rows = new ArrayList<>();
  private final Set<Integer> hidden = new HashSet<>();

  private XlsxGrid(TableFaults faults) {
    this.faults = faults;
  }

  /**
   * The table of a sheet.
   *
   * @param wanted its name; empty for the only one that is not hidden
   */
  static Grid read(byte[] bytes, Optional<String> wanted, TableFaults faults) throws Fault {
    String place = "";
    List<Grid.Merge> merges = List.of();
    XlsxGrid grid = new XlsxGrid(faults);
    try {
      XlsxParts parts = XlsxParts.of(bytes, faults);
      faults.throwIfAny();
      try (ReadableWorkbook book =
          new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, false))) {
        Sheet sheet = grid.sheet(book, wanted);
        place = "sheet " + Shown.quoted(sheet.getName());
        grid.addAll(sheet);
        merges = parts.merges(sheet.getName());
      }
    } catch (IOException | XMLStreamException | RuntimeException e) {
      String found = place + " " + Fault.kind(e);
      faults.file(TableCode.NOT_A_WORKBOOK, found.strip(), "a workbook in XLSX");
    }
    faults.throwIfAny();
    return new Grid(grid.rows, merges, grid.hidden, place);
  }

  private Sheet sheet(ReadableWorkbook book, Optional<String> wanted) throws Fault {
    List<Sheet> shown =
        book.getSheets().filter(s -> s.getVisibility() == SheetVisibility.VISIBLE).toList();
    List<Sheet> fitting =
        shown.stream().filter(s -> s.getName().equals(wanted.orElse(s.getName()))).toList();
    if (fitting.size() != 1) {
      String names =
          shown.stream().map(s -> Shown.quoted(s.getName())).collect(Collectors.joining(", "));
      faults.file(TableCode.WHICH_SHEET, "the sheets " + names, "one of them with --sheet");
    }
    faults.throwIfAny();
    return fitting.get(0);
  }

  /** The library throws what its parser met, declared or not, where a sheet is damaged. */
  private void addAll(Sheet sheet) throws IOException, XMLStreamException, Fault {
    try (Stream<Row> all = sheet.openStream()) {
      for (Row row : (Iterable<Row>) all::iterator) {
        add(row);
      }
    }
  }

  private void add(Row row) throws Fault {
    int number = row.getRowNum() - 1;
    if (number >= Grid.MOST_ROWS || row.getCellCount() > Grid.MOST_COLUMNS) {
      faults.file(
          TableCode.TOO_LARGE,
          number + 1 + " rows, " + row.getCellCount() + " columns",
          "at most " + Grid.MOST_ROWS + " rows and " + Grid.MOST_COLUMNS + " columns");
      faults.throwIfAny();
    }
    while (rows.size() <= number) {
      rows.add(new ArrayList<>());
    }
    if (row.isHidden()) {
      hidden.add(number);
    }
    List<Cell> cells = rows.get(number);
    for (int i = 0; i < row.getCellCount(); i++) {
      cells.add(cell(number, i, row.getCell(i)));
    }
  }

  private static Cell cell(int row, int column, org.dhatim.fastexcel.reader.Cell cell) {
    if (cell == null) {
      return Cell.of(row, column, "", Cell.Kind.EMPTY);
    }
    String raw = Objects.requireNonNullElse(cell.getRawValue(), "");
    return switch (cell.getType()) {
      case EMPTY -> Cell.of(row, column, "", Cell.Kind.EMPTY);
      case STRING -> Cell.of(row, column, cell.asString(), Cell.Kind.TEXT);
      case BOOLEAN -> Cell.of(row, column, cell.asBoolean() ? "yes" : "no", Cell.Kind.TEXT);
      case FORMULA ->
          Cell.of(row, column, "=" + cell.getFormula() + " (" + raw + ")", Cell.Kind.FORMULA);
      case ERROR -> Cell.of(row, column, raw, Cell.Kind.ERROR);
      case NUMBER -> number(row, column, cell, raw);
    };
  }

  private static Cell number(
      int row, int column, org.dhatim.fastexcel.reader.Cell cell, String raw) {
    String format =
        Objects.requireNonNullElse(cell.getDataFormatString(), "")
            .replaceAll(FORMAT_TEXTS, "")
            .toLowerCase(Locale.ROOT);
    boolean general = format.isEmpty() || format.contains("general");
    if (!general && format.split(";", 2)[0].matches(".*[ymdhs].*")) {
      return Cell.of(row, column, cell.asDate().toLocalDate().toString(), Cell.Kind.DATE);
    }
    BigDecimal value = shortest(raw);
    if (format.contains("%")) {
      String percent = value.movePointRight(2).stripTrailingZeros().toPlainString();
      return Cell.of(row, column, percent + " %", Cell.Kind.TEXT);
    }
    return Cell.of(row, column, value.toPlainString(), Cell.Kind.TEXT);
  }

  /** A workbook keeps 8.8 as 8.8000000000000007: the shortest number that is stored alike. */
  private static BigDecimal shortest(String raw) {
    BigDecimal value = BigDecimal.valueOf(Double.parseDouble(raw)).stripTrailingZeros();
    return value.scale() < 0 ? value.setScale(0, java.math.RoundingMode.UNNECESSARY) : value;
  }
}
