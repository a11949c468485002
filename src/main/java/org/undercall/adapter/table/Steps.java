package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes phases and steps of the rows of a table; rows of one fastener become its variants. */
final class Steps {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Map<Column, String> given;
  private final Answers answers;
  private final TableFaults faults;
  private final Map<String, Integer> named = new HashMap<>();
  private final ArrayNode phases = NODES.arrayNode();
  private final List<ObjectNode> steps = new ArrayList<>();
  private final Map<String, String> rows = new HashMap<>();
  private final Set<String> sources = new LinkedHashSet<>();
  private Layout layout;
  private OneSided oneSided;
  private String sheet = "";
  private String name = "";
  private int lastNumber;
  private int emptyRows;

  Steps(Map<Column, String> given, Answers answers, TableFaults faults) {
    this.given = given;
    this.answers = answers;
    this.faults = faults;
  }

  /**
   * Reads every row after the heading.
   *
   * @param sheetRead the sheet, if several are read; a phase without a name has its name then
   */
  void read(Layout table, CellComments comments, String sheetRead) {
    layout = table;
    sheet = sheetRead;
    name = sheetRead;
    lastNumber = 0;
    oneSided = new OneSided(faults);
    RowCells.Beside beside = new RowCells.Beside(layout, given, answers, comments, faults);
    Grid grid = layout.grid();
    requireShown(grid);
    for (int row = layout.data(); row < grid.rows().size(); row++) {
      if (grid.isEmpty(row)) {
        emptyRows++;
      } else if (grid.hidden().rows().contains(row)) {
        Cell first = grid.own(row, 0);
        faults.about("", first, first, TableCode.HIDDEN, "a hidden row", "a row that is shown");
      } else if (isTitle(row)) {
        name = grid.cell(row, 0).text();
      } else {
        add(new RowCells(beside, row, name(row)));
      }
    }
    oneSided.requirePairs();
    faults.inRow("");
  }

  /** A column that is taken and not shown is a fault: whoever gave the table may not know of it. */
  private void requireShown(Grid grid) {
    for (int column : new TreeSet<>(grid.hidden().columns())) {
      boolean taken =
          column < layout.meanings().size() && layout.meanings().get(column).isPresent();
      boolean told =
          taken
              && grid.rows().stream()
                  .skip(layout.data())
                  .anyMatch(row -> column < row.size() && !row.get(column).isEmpty());
      if (told) {
        String expected =
            "a column that is shown, or --map " + Cell.letters(column) + "=- to leave it out";
        Cell heading = grid.own(layout.top(), column);
        faults.at(heading, TableCode.HIDDEN, "a hidden column that is taken", expected);
      }
    }
  }

  /** The end of the table: gives every step its name. */
  void end() {
    if (steps.isEmpty()) {
      faults.file(TableCode.EMPTY_CELL, "no row below the heading", "a row for each fastener");
    }
    nameSteps();
  }

  /** What names a row in questions: phase, fastener or title, class; counted if it comes again. */
  private String name(int row) {
    String what =
        Stream.concat(
                Stream.of(shown(row, Column.FASTENER), shown(row, Column.STEP)),
                layout.grid().rows().get(row).stream().map(Cell::given))
            .filter(text -> !text.isEmpty())
            .findFirst()
            .orElse("");
    String phase = shown(row, Column.PHASE).isEmpty() ? name : shown(row, Column.PHASE);
    String whole =
        Stream.of(phase, what, shown(row, Column.MARKING))
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(", "))
            .replace('|', '/');
    int times = named.merge(whole, 1, Integer::sum);
    return times == 1 ? whole : whole + " #" + times;
  }

  private String shown(int row, Column meaning) {
    int column = layout.column(meaning);
    return column < 0 ? "" : layout.grid().cell(row, column).given();
  }

  /** Whether a row is one text over joined cells of the whole width: the name of a phase. */
  private boolean isTitle(int row) {
    Grid grid = layout.grid();
    return grid.merges().stream()
        .anyMatch(
            m ->
                m.top() == row
                    && m.bottom() == row
                    && m.left() == 0
                    && m.right() >= 2
                    && grid.rows().get(row).stream().skip(m.right() + 1L).allMatch(Cell::isEmpty));
  }

  private void add(RowCells row) {
    number(row.cell(Column.STEP));
    Cell source = row.cell(Column.SOURCE);
    if (!source.isEmpty()) {
      sources.add(source.given());
    } else if (layout.column(Column.SOURCE) >= 0) {
      row.required(Column.SOURCE);
    }
    ObjectNode step = new StepRow(row, faults).step();
    Optional<OneSided.Side> side = oneSided.side(row, step);
    if (side.isPresent() && oneSided.isOther(row, phaseName(row), step, side.get())) {
      return;
    }
    ArrayNode list = phase(row, side.isPresent());
    ObjectNode before =
        list.isEmpty() ? NODES.objectNode() : (ObjectNode) list.get(list.size() - 1);
    boolean isNamed = step.at("/fastener").has("name");
    if (isNamed && marked(step) && marked(before) && sameFastener(step, before)) {
      join(row, before, step);
    } else {
      list.add(step);
      steps.add(step);
      String of = sheet.isEmpty() ? "row " : sheet + " row ";
      rows.put("/phases/" + (phases.size() - 1) + "/steps/" + (list.size() - 1), of + row.number());
    }
  }

  private void number(Cell cell) {
    if (cell.given().matches("[0-9]{1,6}[.)]?")) {
      int number = Integer.parseInt(cell.given().replaceAll("[.)]", ""));
      if (number < lastNumber) {
        String expected = "a number not below " + lastNumber + ", that of the row before";
        faults.at(cell, TableCode.STEP_NUMBERS, cell.shown(), expected);
      }
      lastNumber = number;
    }
  }

  private String phaseName(RowCells row) {
    Cell named = row.cell(Column.PHASE);
    return named.isEmpty() ? name.isEmpty() ? "tighten" : name : named.given();
  }

  /** The steps of the phase that a row belongs to; the phase is begun if it is another one. */
  private ArrayNode phase(RowCells row, boolean pair) {
    String phase = phaseName(row);
    Cell side = pair ? Cell.option(Column.SIDE.label(), "both") : row.required(Column.SIDE);
    String each =
        switch (side.given().toLowerCase(Locale.ROOT).replace('-', ' ')) {
          case "side", "each side", "both", "both sides", "left and right", "l+r", "l/r" -> "side";
          case "front", "both front", "front corners", "front axle" -> "front";
          case "rear", "both rear", "rear corners", "rear axle" -> "rear";
          case "corner", "each corner", "all four", "four corners", "each wheel" -> "corner";
          case "car", "once", "centre", "center", "" -> "car";
          default -> {
            String expected =
                "both (each side has it), front, rear, corner or car (once for the car)";
            faults.at(side, TableCode.WORD, side.shown(), expected);
            yield "car";
          }
        };
    JsonNode last = phases.isEmpty() ? NODES.objectNode() : phases.get(phases.size() - 1);
    if (last.path("name").asText().equals(phase) && last.path("each").asText().equals(each)) {
      return (ArrayNode) last.get("steps");
    }
    ObjectNode fresh = phases.addObject();
    fresh.put("name", phase);
    fresh.put("each", each);
    return fresh.putArray("steps");
  }

  private static boolean marked(ObjectNode step) {
    return step.at("/fastener/variants/0").has("marking");
  }

  private static boolean sameFastener(ObjectNode step, ObjectNode before) {
    return step.at("/fastener/name").equals(before.at("/fastener/name"))
        && step.path("title").equals(before.path("title"));
  }

  private void join(RowCells row, ObjectNode before, ObjectNode step) {
    ArrayNode variants = (ArrayNode) before.at("/fastener/variants");
    JsonNode variant = step.at("/fastener/variants/0");
    boolean fresh = true;
    for (JsonNode known : variants) {
      fresh &= !known.get("marking").equals(variant.get("marking"));
    }
    if (fresh && bare(before).equals(bare(step))) {
      variants.add(variant);
    } else {
      Cell cell = row.cell(Column.FASTENER);
      String expected = "rows that differ in class and stages alone, or another step or name";
      faults.at(cell, TableCode.ALIKE, cell.shown() + " again", expected);
    }
  }

  private static ObjectNode bare(ObjectNode step) {
    ObjectNode copy = step.deepCopy();
    ((ObjectNode) copy.get("fastener")).remove("variants");
    return copy;
  }

  /** Gives every step an id of its own, and writes a single variant without class as stages. */
  private void nameSteps() {
    Set<String> ids = new HashSet<>();
    steps.forEach(step -> ids.add(step.path("id").asText()));
    for (ObjectNode step : steps) {
      if (!step.has("id")) {
        String id = StepRow.id(step);
        String free = id;
        for (int i = 2; !ids.add(free); i++) {
          free = id + "-" + i;
        }
        JsonNode rest = step.deepCopy();
        step.removeAll();
        step.put("id", free);
        step.setAll((ObjectNode) rest);
      }
      JsonNode variants = step.at("/fastener/variants");
      if (variants.size() == 1 && !variants.get(0).has("marking")) {
        ObjectNode fastener = (ObjectNode) step.get("fastener");
        fastener.remove("variants");
        fastener.set("stages", variants.get(0).get("stages"));
      }
    }
  }

  ArrayNode phases() {
    return phases;
  }

  Set<String> sources() {
    return sources;
  }

  /** The row that a step came from, as the user knows it, by the JSON pointer to the step. */
  Map<String, String> rows() {
    return rows;
  }

  /** How much was read, in one line. */
  String counted() {
    return "Steps: " + steps.size() + ", phases: " + phases.size() + ", empty rows: " + emptyRows;
  }
}
