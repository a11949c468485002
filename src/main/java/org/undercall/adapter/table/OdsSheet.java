package org.undercall.adapter.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.undercall.text.Shown;

/** Reads one sheet of an ODS, from the begin of its element to the end. */
final class OdsSheet {
  private final XMLStreamReader xml;
  private final String name;
  private final TableFaults faults;
  private final List<List<Cell>> rows = new ArrayList<>();
  private final List<Grid.Merge> merges = new ArrayList<>();
  private final List<Grid.Comment> comments = new ArrayList<>();
  private final Set<Integer> hiddenRows = new HashSet<>();
  private final Set<Integer> hiddenColumns = new HashSet<>();
  private long room = Grid.MOST_CHARACTERS;
  private int hiddenGroups;
  private long row;
  private long column;
  private boolean elsewhere;

  OdsSheet(XMLStreamReader xml, String name, TableFaults faults) {
    this.xml = xml;
    this.name = name;
    this.faults = faults;
  }

  /** The sheet; empty if it only keeps what was read from another file. */
  Optional<Sheet> read(boolean hidden) throws XMLStreamException {
    List<Boolean> groups = new ArrayList<>();
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth += begin(groups) ? 1 : 0;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
        if (xml.getLocalName().endsWith("-group") && !groups.isEmpty()) {
          hiddenGroups -= groups.remove(groups.size() - 1) ? 1 : 0;
        }
      }
    }
    String readAs = "sheet " + Shown.quoted(name);
    Grid.Hidden unseen = new Grid.Hidden(hiddenRows, hiddenColumns);
    Grid grid = new Grid(rows, merges, unseen, comments, readAs);
    return elsewhere ? Optional.empty() : Optional.of(Sheet.of(name, hidden, grid, faults));
  }

  /** Reads an element; whether it is still open. */
  private boolean begin(List<Boolean> groups) throws XMLStreamException {
    Map<String, String> attributes = ZipParts.attributes(xml);
    switch (xml.getLocalName()) {
      case "table-row-group", "table-column-group" -> {
        boolean unseen = attributes.getOrDefault("display", "true").equals("false");
        groups.add(unseen);
        hiddenGroups += unseen ? 1 : 0;
        return true;
      }
      case "table-header-rows", "table-header-columns", "table-rows", "table-columns" -> {
        return true;
      }
      case "table-column" -> column(attributes);
      case "table-row" -> {
        row(attributes);
        return false;
      }
      case "table-source" -> elsewhere = true;
      default -> {}
    }
    skip(xml);
    return false;
  }

  /** Goes on to the end of the element at hand. */
  static void skip(XMLStreamReader xml) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    }
  }

  private boolean isHidden(Map<String, String> attributes) {
    return hiddenGroups > 0 || !attributes.getOrDefault("visibility", "visible").equals("visible");
  }

  private void column(Map<String, String> attributes) throws XMLStreamException {
    long times = times(attributes, "number-columns-repeated");
    if (isHidden(attributes)) {
      for (long i = column; i < Math.min(column + times, Grid.MOST_COLUMNS); i++) {
        hiddenColumns.add((int) i);
      }
    }
    column += times;
  }

  private void row(Map<String, String> attributes) throws XMLStreamException {
    long times = times(attributes, "number-rows-repeated");
    List<OdsCell> cells = cells();
    boolean told = cells.stream().anyMatch(OdsCell::isTold);
    room -= cells.stream().mapToLong(OdsCell::length).sum() * Math.min(times, Grid.MOST_ROWS);
    if (told && (row + times > Grid.MOST_ROWS || room < 0)) {
      tooLarge(row + times, cells.size());
    } else if (told) {
      for (int i = 0; i < times; i++) {
        add((int) row + i, cells);
        if (isHidden(attributes)) {
          hiddenRows.add((int) row + i);
        }
      }
    }
    row += times;
  }

  private void add(int at, List<OdsCell> cells) {
    while (rows.size() <= at) {
      rows.add(new ArrayList<>());
    }
    for (OdsCell cell : cells) {
      for (int i = 0; i < cell.times(); i++) {
        int of = rows.get(at).size();
        rows.get(at).add(Cell.of(at, of, cell.text(), cell.kind()));
        if (cell.rows() > 1 || cell.columns() > 1) {
          merges.add(new Grid.Merge(at, of, at + cell.rows() - 1, of + cell.columns() - 1));
        }
        comments.add(Grid.Comment.of(at, of, cell.comment()));
      }
    }
  }

  /** The cells of a row, without those at its end that hold nothing. */
  private List<OdsCell> cells() throws XMLStreamException {
    List<OdsCell> cells = new ArrayList<>();
    long width = 0;
    int lastTold = 0;
    while (xml.next() != XMLStreamConstants.END_ELEMENT) {
      if (xml.getEventType() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      if (!xml.getLocalName().endsWith("table-cell")) {
        skip(xml);
        continue;
      }
      long times = times(ZipParts.attributes(xml), "number-columns-repeated");
      OdsCell cell = OdsCell.read(xml, (int) Math.min(times, Grid.MOST_COLUMNS + 1));
      width += times;
      cells.add(cell);
      if (cell.isTold()) {
        lastTold = cells.size();
        if (width > Grid.MOST_COLUMNS) {
          tooLarge(row + 1, width);
          lastTold = 0;
        }
      }
    }
    return cells.subList(0, lastTold);
  }

  private void tooLarge(long rowsFound, long columnsFound) {
    if (faults.all().isEmpty()) {
      faults.file(
          TableCode.TOO_LARGE,
          rowsFound + " rows, " + columnsFound + " columns",
          "at most " + Grid.MOST);
    }
  }

  /** How often something stands there; what is no number is none that a program writes. */
  private static long times(Map<String, String> attributes, String name) throws XMLStreamException {
    String times = attributes.getOrDefault(name, "1");
    if (!times.matches("[0-9]{1,9}")) {
      throw new XMLStreamException(name + " " + times);
    }
    return Math.max(1, Long.parseLong(times));
  }
}
