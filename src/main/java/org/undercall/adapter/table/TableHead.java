package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.text.Shown;

/** What stands above a table or is given by options: title, vehicle, cautions, wrenches. */
final class TableHead {
  /** The words that may begin a line above the table. */
  static final List<String> WORDS =
      List.of(
          "title",
          "vehicle",
          "author",
          "revision",
          "source",
          "caution",
          "ride height",
          "ride height arm",
          "load holds",
          "tool");

  /** The words whose parts are divided by semicolons where they are given by an option. */
  private static final Set<String> OF_PARTS = Set.of("tool", "ride height", "ride height arm");

  private static final String RIDE_HEIGHT = "rideHeight";
  private static final String LOAD_HOLDS = "loadHoldsMinutes";
  private static final Pattern NAMED =
      Pattern.compile("([a-z][a-z ]*) ([-−–]?[0-9.,]+) ?(?:mm|°)?");
  private static final List<String> ARM_NEEDS =
      List.of("length", "ride", "droop", "bump", "presetLimit");

  private static final String SOURCE_BRIEF = "valuesBrief";
  private static final Set<String> MAY_LACK = Set.of(RIDE_HEIGHT, LOAD_HOLDS, SOURCE_BRIEF);

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final TableFaults faults;
  private final Amounts amounts;
  private final ObjectNode root = NODES.objectNode();
  private final List<String> notTaken = new ArrayList<>();
  private final Set<String> taken = new HashSet<>();
  private final Set<List<String>> before = new HashSet<>();

  TableHead(TableFaults faults) {
    this.faults = faults;
    this.amounts = new Amounts(faults);
  }

  /**
   * Takes the lines above the heading that begin with a known word. What stands above the table of
   * a sheet before in the same words is taken once.
   */
  void above(Layout layout) {
    Set<List<String>> here = new HashSet<>();
    for (int row = 0; row < layout.top(); row++) {
      List<Cell> cells =
          layout.grid().rows().get(row).stream().filter(cell -> !cell.isEmpty()).toList();
      if (cells.isEmpty()) {
        continue;
      }
      String word = cells.get(0).text().toLowerCase(Locale.ROOT).replaceAll(" ?:$", "");
      List<String> line = cells.stream().map(Cell::text).toList();
      here.add(line);
      if (before.contains(line)) {
        continue;
      }
      if (WORDS.contains(word) && cells.size() > 1) {
        take(word, cells.subList(1, cells.size()));
      } else {
        notTaken.add(cells.get(0).address() + " " + Shown.quoted(cells.get(0).text()));
      }
    }
    before.addAll(here);
  }

  /** Takes a value that was given as an option. */
  void option(String word, String value) {
    List<Cell> cells = new ArrayList<>();
    for (String part : OF_PARTS.contains(word) ? value.split(";", -1) : new String[] {value}) {
      cells.add(Cell.option(word, part));
    }
    if (!word.equals("caution") && !word.equals("tool")) {
      root.remove(word.equals("source") ? "values" : word);
    }
    take(word, cells);
  }

  /** Takes what was answered about a line that is not there; several are divided by bars. */
  void answer(String word, String value) {
    if (taken.contains(word)) {
      return;
    }
    for (String each : value.split(" ?\\| ?", -1)) {
      option(word, each);
    }
  }

  private void take(String word, List<Cell> cells) {
    taken.add(word);
    Cell first = cells.get(0);
    switch (word) {
      case "caution" -> caution(cells);
      case "tool" -> tool(cells);
      case "ride height" -> rideHeight(cells);
      case "ride height arm" -> arm(cells);
      case "load holds" -> loadHolds(first);
      default -> {
        String field = word.equals("source") ? "values" : word;
        if (root.has(field)) {
          faults.at(first, TableCode.STATED_TWICE, first.shown(), "one " + word);
        }
        root.put(field, first.given());
        if (word.equals("source") && cells.size() > 1) {
          root.put(SOURCE_BRIEF, cells.get(1).given());
        }
      }
    }
  }

  /** A caution, perhaps with its brief form in the next cell. */
  private void caution(List<Cell> cells) {
    ArrayNode cautions = root.withArray("/cautions");
    if (cells.size() == 1) {
      cautions.add(cells.get(0).given());
    } else {
      cautions.addObject().put("text", cells.get(0).given()).put("brief", cells.get(1).given());
    }
  }

  private void tool(List<Cell> cells) {
    Cell first = cells.get(0);
    if (cells.size() < 4 || cells.size() > 7) {
      String expected =
          "name, least, most, unit, perhaps day of calibration, kind and uncertainty: "
              + "wrench 2; 40; 210; Nm; 2026-03-31; clicking; 2 %";
      faults.at(first, TableCode.HEAD, cells.size() + " values", expected);
      return;
    }
    ObjectNode tool = root.withArray("/tools").addObject();
    tool.put("id", first.given());
    amounts
        .number(cells.get(1), cells.get(1).given(), "a torque")
        .ifPresent(n -> tool.put("least", n));
    amounts
        .number(cells.get(2), cells.get(2).given(), "a torque")
        .ifPresent(n -> tool.put("most", n));
    Cell unit = cells.get(3);
    TorqueWord.of(unit.given())
        .ifPresentOrElse(
            u -> tool.put("unit", u.symbol()),
            () -> faults.at(unit, TableCode.OTHER_UNIT, unit.shown(), "N·m, lbf·ft or lbf·in"));
    for (Cell more : cells.subList(4, cells.size())) {
      if (more.given().endsWith("%")) {
        String percent = more.given().replaceFirst(" ?%$", "");
        amounts.number(more, percent, "percent").ifPresent(n -> tool.put("uncertainty", n));
      } else if (!more.isEmpty() && !more.given().equals("-")) {
        boolean kind = List.of("clicking", "indicating").contains(more.given());
        tool.put(kind ? "kind" : "calibrated", more.given());
      }
    }
  }

  private void rideHeight(List<Cell> cells) {
    Cell first = cells.get(0);
    Optional<java.math.BigDecimal> amount =
        amounts.number(
            first,
            first.given().replaceFirst("^± ?", "").replaceFirst(" ?mm$", ""),
            "how far a height may lie off, in mm");
    ObjectNode height = root.withObject("/" + RIDE_HEIGHT);
    amount.ifPresent(a -> height.put("plusMinus", a));
    height.put("unit", "mm");
    for (Cell more : cells.subList(1, cells.size())) {
      if (more.given().toLowerCase(Locale.ROOT).startsWith("sides ")) {
        named(more, List.of("sides"), height);
      } else if (!more.given().equals("mm")) {
        faults.at(more, TableCode.OTHER_UNIT, more.shown(), "mm, or such as sides 20");
      }
    }
  }

  /** The arm whose bush the height twists, part by part, each with its name. */
  private void arm(List<Cell> cells) {
    ObjectNode arm = root.withObject("/" + RIDE_HEIGHT).putObject("arm");
    List<String> names = new ArrayList<>(ARM_NEEDS);
    names.add("ratio");
    cells.forEach(cell -> named(cell, names, arm));
    if (!ARM_NEEDS.stream().allMatch(arm::has)) {
      String expected = "such as length 350; ride -10; droop -100; bump 70; preset limit 5";
      faults.at(cells.get(0), TableCode.HEAD, "not each of them", expected);
    }
    arm.put("unit", "mm");
  }

  /** Puts a number that stands behind its name. */
  private void named(Cell cell, List<String> names, ObjectNode node) {
    Matcher named = NAMED.matcher(cell.given().toLowerCase(Locale.ROOT));
    String name = named.matches() ? named.group(1).replace("preset limit", "presetLimit") : "";
    if (!names.contains(name) || node.has(name)) {
      String expected = "one of " + String.join(", ", names) + ", once, with its number";
      faults.at(
          cell, TableCode.HEAD, cell.shown(), expected.replace("presetLimit", "preset limit"));
    } else {
      amounts.signed(cell, named.group(2), "a number").ifPresent(n -> node.put(name, n));
    }
  }

  private void loadHolds(Cell cell) {
    Matcher minutes = Pattern.compile("([0-9]{1,4}) ?(min|minutes?)").matcher(cell.given());
    if (minutes.matches()) {
      root.put(LOAD_HOLDS, Integer.parseInt(minutes.group(1)));
    } else {
      faults.at(cell, TableCode.HEAD, cell.shown(), "whole minutes such as 30 minutes");
    }
  }

  /** The procedure without its phases; a fault for everything that is missing. */
  ObjectNode root(Set<String> sources) {
    String joined = String.join("; ", sources);
    if (!joined.isEmpty()) {
      if (root.has("values") && !sources.contains(root.get("values").textValue())) {
        joined = root.get("values").textValue() + "; " + joined;
      }
      root.put("values", joined);
    }
    ObjectNode ordered = NODES.objectNode();
    for (String field :
        List.of(
            "title",
            "vehicle",
            "author",
            "revision",
            "values",
            SOURCE_BRIEF,
            "cautions",
            RIDE_HEIGHT,
            LOAD_HOLDS,
            "tools")) {
      if (root.has(field)) {
        ordered.set(field, root.get(field));
      } else if (!MAY_LACK.contains(field)) {
        missing(field);
      }
    }
    return ordered;
  }

  private void missing(String field) {
    String word =
        switch (field) {
          case "values" -> "source";
          case "cautions" -> "caution";
          case "tools" -> "tool";
          default -> field;
        };
    String option = field.equals("values") ? "--source" : "--set \"" + word + "=...\"";
    String expected = "a line above the table that begins with it, or " + option;
    faults.inRow("");
    faults.missing(word, expected);
  }

  /** The lines above the table that were not taken. */
  List<String> notTaken() {
    return notTaken;
  }
}
