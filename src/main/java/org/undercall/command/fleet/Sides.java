package org.undercall.command.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.review.Facts;

/** Left against right in one session: the same step of the procedure on both sides. */
final class Sides {
  private static final String LEFT = "/left";
  private static final String RIGHT = "/right";

  private Sides() {}

  /** A step that something was done on at both sides. */
  record Pair(String step, Facts.StepRow left, Facts.StepRow right) {}

  static List<Pair> pairs(Facts facts) {
    Map<String, Facts.StepRow> rows = new HashMap<>();
    facts.steps().forEach(row -> rows.put(row.step(), row));
    List<Pair> pairs = new ArrayList<>();
    for (Facts.StepRow left : facts.steps()) {
      Optional<String> step = leftOf(left.step());
      Facts.StepRow right = rows.get(step.orElse("") + RIGHT);
      if (step.isPresent() && right != null) {
        pairs.add(new Pair(step.get(), left, right));
      }
    }
    return pairs;
  }

  private static Optional<String> leftOf(String step) {
    return step.endsWith(LEFT)
        ? Optional.of(step.substring(0, step.length() - LEFT.length()))
        : Optional.empty();
  }

  /** What each side took, and how often it was refused, in the order of the work. */
  static Grid of(Facts facts) {
    return new Grid(
        List.of(
            "step",
            "left_ms",
            "right_ms",
            "left_refused",
            "right_refused",
            "left_state",
            "right_state"),
        pairs(facts).stream()
            .sorted(Comparator.comparing(pair -> pair.left().begun()))
            .map(
                pair ->
                    Grid.row(
                        pair.step(),
                        pair.left().workingMs(),
                        pair.right().workingMs(),
                        refused(facts, pair.left()),
                        refused(facts, pair.right()),
                        pair.left().state(),
                        pair.right().state()))
            .toList());
  }

  private static long refused(Facts facts, Facts.StepRow row) {
    return facts.refusals().stream()
        .filter(r -> r.step().equals(row.step()))
        .mapToLong(Facts.Refused::n)
        .sum();
  }

  /** The values that both sides have. */
  static Grid values(Optional<Facts> subject) {
    List<Facts.Value> all = subject.map(Facts::values).orElse(List.of());
    Map<List<String>, String> values = new HashMap<>();
    all.forEach(v -> values.put(List.of(v.step(), v.what()), v.value()));
    List<List<Optional<Object>>> rows = new ArrayList<>();
    Comparator<Facts.Value> order = Comparator.comparing(v -> leftOf(v.step()).orElse(v.step()));
    for (Facts.Value left : all.stream().sorted(order.thenComparing(Facts.Value::what)).toList()) {
      Optional<String> step = leftOf(left.step());
      String right = values.get(List.of(step.orElse("") + RIGHT, left.what()));
      if (step.isPresent() && right != null) {
        rows.add(Grid.row(step.get(), left.what(), left.value(), right));
      }
    }
    return new Grid(List.of("step", "what", "left", "right"), rows);
  }
}
