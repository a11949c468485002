package org.undercall.adapter.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/** Reads the sheets of an XLSX. */
final class XlsxGrid {
  private static final String FORMAT_TEXTS = "\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.";

  private final TableFaults faults;
  private final List<List<Cell>> rows = new ArrayList<>();
  private final Set<Integer> hidden = new HashSet<>();
  private long room = Grid.MOST_CHARACTERS;

  private XlsxGrid(TableFaults faults) {
    this.faults = faults;
  }

  /** All sheets that have cells, in their order. */
  static List<Sheet> read(byte[] bytes, TableFaults faults) throws Fault {
    List<Sheet> sheets = new ArrayList<>();
    try {
      ZipParts unpacked = ZipParts.of(bytes, faults);
      faults.throwIfAny();
      XlsxParts parts = XlsxParts.of(unpacked);
      try (ReadableWorkbook book =
          new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, false))) {
        for (org.dhatim.fastexcel.reader.Sheet sheet : book.getSheets().toList()) {
          if (parts.hasCells(sheet.getName())) {
            sheets.add(sheet(sheet, parts, faults.ofSheet()));
          }
        }
      }
    } catch (IOException | RuntimeException e) {
      faults.file(TableCode.NOT_A_WORKBOOK, Fault.kind(e), "a workbook in XLSX");
    }
    faults.throwIfAny();
    return sheets;
  }

  private static Sheet sheet(
      org.dhatim.fastexcel.reader.Sheet sheet, XlsxParts parts, TableFaults faults) {
    String name = sheet.getName();
    String readAs = "sheet " + Shown.quoted(name);
    boolean shown = sheet.getVisibility() == SheetVisibility.VISIBLE;
    Grid grid = Grid.none(readAs);
    try {
      XlsxGrid cells = new XlsxGrid(faults);
      cells.addAll(sheet);
      Grid.Hidden hidden = new Grid.Hidden(cells.hidden, parts.hiddenColumns(name));
      grid = new Grid(cells.rows, parts.merges(name), hidden, parts.comments(name), readAs);
    } catch (Fault e) {
      // kept in the faults of the sheet
    } catch (IOException | XMLStreamException | RuntimeException e) {
      String found = readAs + " " + Fault.kind(e);
      faults.file(TableCode.NOT_A_WORKBOOK, found, "a workbook in XLSX");
    }
    return Sheet.of(name, !shown, grid, faults);
  }

  /** The library throws what its parser met, declared or not, where a sheet is damaged. */
  private void addAll(org.dhatim.fastexcel.reader.Sheet sheet)
      throws IOException, XMLStreamException, Fault {
    try (Stream<Row> all = sheet.openStream()) {
      for (Row row : (Iterable<Row>) all::iterator) {
        add(row);
      }
    }
  }

  private void add(Row row) throws Fault {
    int number = row.getRowNum() - 1;
    room -=
        row.stream()
            .filter(cell -> cell != null && cell.getText() != null)
            .mapToLong(cell -> cell.getText().length())
            .sum();
    if (number >= Grid.MOST_ROWS || row.getCellCount() > Grid.MOST_COLUMNS || room < 0) {
      String found = number + 1 + " rows, " + row.getCellCount() + " columns";
      faults.file(TableCode.TOO_LARGE, found, "at most " + Grid.MOST);
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
