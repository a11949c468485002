package org.undercall.core.procedure;

import java.util.List;

/**
 * A phase of the work, such as inspect, remove, fit, tighten or finish.
 *
 * @param name as spoken
 * @param perSide whether its steps are walked for each side, or once for the car
 * @param steps at least one
 */
public record WorkPhase(String name, boolean perSide, List<Step> steps) {
  public WorkPhase {
    steps = List.copyOf(steps);
  }
}
