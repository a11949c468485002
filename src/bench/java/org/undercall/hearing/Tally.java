package org.undercall.hearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Counts results. */
final class Tally {
  private final Map<Result, Integer> counts = new EnumMap<>(Result.class);

  static Tally of(Collection<Result> results) {
    Tally tally = new Tally();
    results.forEach(tally::add);
    return tally;
  }

  void add(Result result) {
    counts.merge(result, 1, Integer::sum);
  }

  void addAll(Tally other) {
    other.counts.forEach((result, count) -> counts.merge(result, count, Integer::sum));
  }

  int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  Share share(Result result) {
    return new Share(counts.getOrDefault(result, 0), total());
  }

  /** The titles of the columns that {@link #cells} fills. */
  static List<String> columns(String first) {
    List<String> columns = new ArrayList<>(List.of(first, "trials"));
    Arrays.stream(Result.values()).forEach(result -> columns.add(result.title() + " %"));
    return columns;
  }

  List<Object> cells(String label) {
    List<Object> cells = new ArrayList<>(List.of(label, total()));
    Arrays.stream(Result.values()).forEach(result -> cells.add(share(result)));
    return cells;
  }
}
