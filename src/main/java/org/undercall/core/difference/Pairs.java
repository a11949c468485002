package org.undercall.core.difference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Step;

/**
 * Which step of the newer procedure is which of the older: by kind and id, else by kind and name,
 * else of a fastener by all its values, where both have one such step. What has no counterpart was
 * removed or added.
 *
 * @param pairs in the order of the newer one
 * @param removed steps of the older one alone
 * @param added steps of the newer one alone
 */
record Pairs(List<Pair> pairs, List<Placed> removed, List<Placed> added) {
  /**
   * The same step before and after.
   *
   * @param byValues whether nothing but its values tells that it is the same
   */
  record Pair(Placed before, Placed after, boolean byValues) {}

  static Pairs of(List<Placed> before, List<Placed> after) {
    List<Pair> pairs = new ArrayList<>();
    List<Placed> removed = new ArrayList<>(before);
    List<Placed> added = new ArrayList<>(after);
    pair(removed, added, step -> StepFacts.kind(step.step()) + " " + step.id(), pairs);
    pair(removed, added, Placed::likeness, pairs);
    List<Pair> alike = new ArrayList<>();
    List<Placed> bolts = new ArrayList<>(fasteners(removed));
    List<Placed> others = new ArrayList<>(fasteners(added));
    pair(bolts, others, Placed::values, alike);
    for (Pair pair : alike) {
      pairs.add(new Pair(pair.before(), pair.after(), true));
      removed.remove(pair.before());
      added.remove(pair.after());
    }
    pairs.sort(Comparator.comparingInt(pair -> pair.after().number()));
    return new Pairs(pairs, removed, added);
  }

  private static List<Placed> fasteners(List<Placed> steps) {
    return steps.stream().filter(each -> each.step() instanceof Step.Fasten).toList();
  }

  private static void pair(
      List<Placed> removed, List<Placed> added, Function<Placed, String> by, List<Pair> pairs) {
    Map<String, List<Placed>> old = removed.stream().collect(Collectors.groupingBy(by));
    Map<String, List<Placed>> fresh = added.stream().collect(Collectors.groupingBy(by));
    old.forEach(
        (key, some) -> {
          if (some.size() == 1 && fresh.getOrDefault(key, List.of()).size() == 1) {
            pairs.add(new Pair(some.get(0), fresh.get(key).get(0), false));
            removed.remove(some.get(0));
            added.remove(fresh.get(key).get(0));
          }
        });
  }

  /** For each phase of the newer one the phase of the older that most of its steps were in. */
  Map<Integer, Integer> phases() {
    Map<Integer, Map<Integer, Integer>> shared = new HashMap<>();
    for (Pair pair : pairs) {
      shared
          .computeIfAbsent(pair.after().phase(), any -> new HashMap<>())
          .merge(pair.before().phase(), 1, Integer::sum);
    }
    Map<Integer, Integer> phases = new HashMap<>();
    Set<Integer> taken = new HashSet<>();
    shared.entrySet().stream()
        .flatMap(e -> e.getValue().entrySet().stream().map(b -> new Shared(e.getKey(), b)))
        .sorted(Comparator.comparingInt(Shared::most).thenComparingInt(Shared::after))
        .forEach(
            each -> {
              if (!phases.containsKey(each.after()) && taken.add(each.before())) {
                phases.put(each.after(), each.before());
              }
            });
    return phases;
  }

  private record Shared(int after, int before, int most) {
    Shared(int after, Map.Entry<Integer, Integer> before) {
      this(after, before.getKey(), -before.getValue());
    }
  }

  /** The pairs whose order among the others is another: as few as explain it. */
  Set<Pair> moved() {
    int[] best = new int[pairs.size()];
    int[] from = new int[pairs.size()];
    int last = -1;
    for (int i = 0; i < pairs.size(); i++) {
      best[i] = 1;
      from[i] = -1;
      for (int j = 0; j < i; j++) {
        boolean rises = pairs.get(j).before().number() < pairs.get(i).before().number();
        if (rises && best[j] + 1 > best[i]) {
          best[i] = best[j] + 1;
          from[i] = j;
        }
      }
      last = last < 0 || best[i] > best[last] ? i : last;
    }
    Set<Pair> moved = new HashSet<>(pairs);
    for (int at = last; at >= 0; at = from[at]) {
      moved.remove(pairs.get(at));
    }
    return moved;
  }
}
