package org.undercall.core.fastening;

import org.undercall.core.term.Refused;

/**
 * A way of tightening with its tightening factor αA = FM,max/FM,min (VDI 2230 Part 1, table A8).
 *
 * <p>The figures were taken from secondary readings of the table.
 */
public enum TighteningMethod {
  YIELD_CONTROLLED(1.2, 1.4),
  ANGLE_CONTROLLED(1.2, 1.4),
  TORQUE_FROM_TESTS_ON_THE_JOINT(1.4, 1.6),
  TORQUE_FRICTION_ESTIMATED_CLASS_B(1.6, 2.0),
  TORQUE_FRICTION_ESTIMATED_CLASS_A(1.7, 2.5),
  IMPACT_WRENCH(2.5, 4.0);

  private final double best;
  private final double worst;

  TighteningMethod(double best, double worst) {
    this.best = best;
    this.worst = worst;
  }

  /** The tightening factor at its best. */
  public double best() {
    return best;
  }

  /** The tightening factor at its worst. */
  public double worst() {
    return worst;
  }

  /** The least preload for a largest one: FM,min = FM,max / αA, from worst to best factor. */
  public Range<Force> leastPreload(Force largest) {
    return new Range<>(leastPreload(largest, worst), leastPreload(largest, best));
  }

  /** The least preload for a largest one and a factor of one or more. */
  public static Force leastPreload(Force largest, double factor) {
    if (!(factor >= 1)) {
      throw new Refused("FAS-014", "tightening factor", factor + "", "1 or more");
    }
    return new Force(largest.newtons() / factor);
  }

  /** The scatter either way about the mean in percent: (αA - 1)/(αA + 1). */
  public static double scatterPercent(double factor) {
    return (factor - 1) / (factor + 1) * 100;
  }
}
