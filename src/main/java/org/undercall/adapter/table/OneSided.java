package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Rows for one side each: a row for the left and one for the right that are alike in all else are
 * one step for each side. A procedure has nothing for one side alone.
 */
final class OneSided {
  private static final Pattern LEFT =
      Pattern.compile("(?i)[ ,(]*\\b(left(?![ -]?hand)|lh|l/h|lhs)\\b[)]?( side)?");
  private static final Pattern RIGHT =
      Pattern.compile("(?i)[ ,(]*\\b(right(?![ -]?hand)|rh|r/h|rhs)\\b[)]?( side)?");

  /** A side. */
  enum Side {
    LEFT,
    RIGHT
  }

  /** What two rows must have in common. */
  private record Alike(String phase, ObjectNode step) {}

  private record Waiting(Side side, Cell cell, String name) {}

  private final TableFaults faults;
  private final Map<Alike, Waiting> waiting = new LinkedHashMap<>();

  OneSided(TableFaults faults) {
    this.faults = faults;
  }

  /** The side that a row is for; its words are taken out of name and title. */
  Optional<Side> side(RowCells row, ObjectNode step) {
    Cell cell = row.cell(Column.SIDE);
    if (cell.isEmpty() || row.isSet(Column.SIDE)) {
      Optional<Side> named = named(row.cell(Column.FASTENER).given());
      named.ifPresent(side -> strip(step));
      return named;
    }
    Optional<Side> stated =
        switch (cell.given().toLowerCase(Locale.ROOT)) {
          case "left", "l", "lh", "lhs", "left side" -> Optional.of(Side.LEFT);
          case "right", "r", "rh", "rhs", "right side" -> Optional.of(Side.RIGHT);
          default -> Optional.empty();
        };
    stated.ifPresent(side -> strip(step));
    return stated;
  }

  private static Optional<Side> named(String name) {
    boolean left = LEFT.matcher(name).find();
    boolean right = RIGHT.matcher(name).find();
    if (left == right || name.toLowerCase(Locale.ROOT).contains("thread")) {
      return Optional.empty();
    }
    return Optional.of(left ? Side.LEFT : Side.RIGHT);
  }

  private static void strip(ObjectNode step) {
    step.put("title", bare(step.path("title").asText()));
    if (step.path("fastener") instanceof ObjectNode fastener) {
      fastener.put("name", bare(fastener.path("name").asText()));
    }
  }

  private static String bare(String text) {
    return RIGHT.matcher(LEFT.matcher(text).replaceAll("")).replaceAll("").strip();
  }

  /**
   * Whether the row is the second of a pair; the first of one waits for the other.
   *
   * @param phase the name of the phase that the row belongs to
   */
  boolean isOther(RowCells row, String phase, ObjectNode step, Side side) {
    Alike alike = new Alike(phase, step.deepCopy());
    Waiting first = waiting.get(alike);
    if (first != null && first.side() != side) {
      waiting.remove(alike);
      return true;
    }
    waiting.put(alike, new Waiting(side, row.cell(Column.SIDE), row.name()));
    return false;
  }

  /** A fault for every row without its like on the other side. */
  void requirePairs() {
    String expected =
        "a row for the other side that is alike in all else, or both, or car (once for the car)";
    waiting.forEach(
        (alike, first) -> {
          faults.inRow(first.name());
          String found = first.cell().shown() + " alone";
          faults.at(first.cell(), TableCode.WORD, found, expected);
        });
  }
}
