package org.undercall.core.procedure;

import java.util.List;

/**
 * A phase of the work, such as inspect, remove, fit, tighten or finish.
 *
 * @param name as spoken
 * @param each where its steps are walked
 * @param steps at least one
 */
public record WorkPhase(String name, Each each, List<Step> steps) {
  public WorkPhase {
    steps = List.copyOf(steps);
  }
}
