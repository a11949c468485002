package org.undercall.command.fleet;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How often something happened, and in how many sessions. */
final class Tally {
  private final Map<List<String>, Counts> counts = new HashMap<>();

  private record Counts(long times, long sessions) {
    Counts plus(Counts more) {
      return new Counts(times + more.times, sessions + more.sessions);
    }
  }

  /** Adds what happened in one session: where, what and how often. */
  void add(String where, String what, long times) {
    counts.merge(List.of(where, what), new Counts(times, 1), Counts::plus);
  }

  /** What happened most often first. */
  Grid grid(String where) {
    Comparator<Map.Entry<List<String>, Counts>> order =
        Comparator.comparing(e -> -e.getValue().times());
    return new Grid(
        List.of("times", "sessions", where, "what"),
        counts.entrySet().stream()
            .sorted(
                order.thenComparing(e -> e.getKey().get(0)).thenComparing(e -> e.getKey().get(1)))
            .map(
                e ->
                    Grid.row(
                        e.getValue().times(),
                        e.getValue().sessions(),
                        e.getKey().get(0),
                        e.getKey().get(1)))
            .toList());
  }
}
