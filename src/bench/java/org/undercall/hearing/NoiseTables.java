package org.undercall.hearing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Two tables of the same trials in noise: by level with all results, and by kind and level. */
final class NoiseTables {
  private final Map<Conditions, Tally> tallies = new LinkedHashMap<>();

  void add(Conditions conditions, Result result) {
    tallies.computeIfAbsent(conditions, c -> new Tally()).add(result);
  }

  /** Adds a row a level, all kinds of noise together. */
  void addLevels(Table table) {
    Conditions.LEVELS.forEach(level -> table.row(at(level).cells(level + " dB, all noise kinds")));
  }

  /** All kinds of noise together at one level. */
  Tally at(int level) {
    Tally sum = new Tally();
    tallies.forEach(
        (conditions, tally) -> {
          if (!conditions.isClean() && conditions.decibels() == level) {
            sum.addAll(tally);
          }
        });
    return sum;
  }

  /** One row a kind of noise, one column a level: a result's share. */
  Table byKind(String title, String about, Noises noises, Result result) {
    List<String> columns = new ArrayList<>(List.of("noise", "trials a cell"));
    Conditions.LEVELS.forEach(level -> columns.add(level + " dB"));
    Table table = new Table(title, about, columns);
    for (String kind : noises.kinds()) {
      List<Object> cells = new ArrayList<>(List.of(kind));
      for (int level : Conditions.LEVELS) {
        Tally tally = tallies.getOrDefault(new Conditions(kind, level), new Tally());
        if (cells.size() == 1) {
          cells.add(tally.total());
        }
        cells.add(tally.share(result));
      }
      table.row(cells);
    }
    return table;
  }
}
