package org.undercall.core.decision;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.undercall.core.term.StepRef;

/**
 * The timers of the wait steps.
 *
 * @param running when each runs out
 * @param ended the steps whose time is over
 */
record Timers(Map<StepRef, Instant> running, Set<StepRef> ended) {

  static final Timers NONE = new Timers(Map.of(), Set.of());

  Timers started(StepRef step, Instant due) {
    Map<StepRef, Instant> next = new HashMap<>(running);
    next.put(step, due);
    return new Timers(Map.copyOf(next), without(step));
  }

  Timers ended(StepRef step) {
    Set<StepRef> over = new HashSet<>(ended);
    over.add(step);
    return new Timers(stopped(step), Set.copyOf(over));
  }

  Timers cancelled(StepRef step) {
    return new Timers(stopped(step), without(step));
  }

  private Map<StepRef, Instant> stopped(StepRef step) {
    Map<StepRef, Instant> next = new HashMap<>(running);
    next.remove(step);
    return Map.copyOf(next);
  }

  private Set<StepRef> without(StepRef step) {
    Set<StepRef> over = new HashSet<>(ended);
    over.remove(step);
    return Set.copyOf(over);
  }
}
