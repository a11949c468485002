package org.undercall.hearing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What was reached of what was aimed at. */
final class Goals {
  private final Map<Goal, String> reached = new EnumMap<>(Goal.class);

  Goals() {
    reached.put(
        Goal.FREE_VALUE,
        "not measured here: the table has no such way, see docs/reference/behaviour.md");
  }

  /** Notes a figure; the last one counts. */
  void reached(Goal goal, Object figure) {
    reached.put(goal, figure.toString());
  }

  /** A row a goal, those of parts that were left out included. */
  Table table() {
    Table table =
        new Table(
            "Against what was aimed at",
            "Per cent with 95 % Wilson intervals; the tables below say more.",
            List.of("figure", "aimed at", "measured"));
    for (Goal goal : Goal.values()) {
      table.row(goal.figure(), goal.aim(), reached.getOrDefault(goal, "left out"));
    }
    return table;
  }
}
