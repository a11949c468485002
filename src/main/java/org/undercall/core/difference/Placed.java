package org.undercall.core.difference;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;

/**
 * A step with its place.
 *
 * @param phase the number of its phase, from 0
 * @param number its number among all steps, from 0
 */
record Placed(Step step, int phase, int number) {

  static List<Placed> all(Procedure procedure) {
    List<Placed> all = new ArrayList<>();
    for (int phase = 0; phase < procedure.phases().size(); phase++) {
      for (Step step : procedure.phases().get(phase).steps()) {
        all.add(new Placed(step, phase, all.size()));
      }
    }
    return all;
  }

  String id() {
    return step.head().id();
  }

  /** The name of the fastener, or the title of another step. */
  String name() {
    return step instanceof Step.Fasten fasten ? fasten.fastener().name() : step.head().title();
  }

  /** What tells it from others where its id is another one. */
  String likeness() {
    return StepFacts.kind(step) + " " + name().toLowerCase(Locale.ROOT);
  }

  /** All that it is beside its words. */
  String values() {
    return StepFacts.of(step, true).all().entrySet().stream()
        .filter(entry -> entry.getValue().weight() != Weight.TEXT)
        .map(entry -> entry.getKey() + " " + entry.getValue().shown())
        .collect(Collectors.joining("; "));
  }

  /** Names that several steps have, so that they do not tell which one is meant. */
  static Set<String> shared(List<Placed> steps) {
    Set<String> once = new HashSet<>();
    Set<String> shared = new HashSet<>();
    for (Placed each : steps) {
      if (!once.add(each.name())) {
        shared.add(each.name());
      }
    }
    return shared;
  }
}
