package org.undercall.core.fastening;

import org.undercall.core.term.Refused;

/**
 * Tightening that stops when the bolt begins to yield, found from the slope of torque over angle.
 *
 * <p>Friction in the seat has no say, only that of the thread through torsion; beside it the
 * preload follows the true yield strength, from the least of the class to that times a spread. VDI
 * 2230 Part 1, table A8: αA = 1.2 to 1.4 for it, from memory; 1.2 agrees with the least and largest
 * hardness of ISO 898-1 for 10.9. A page of remarks on VDI 2230 names 1.15 for 10.9 and 12.9 and
 * 1.3 for 8.8 and lower.
 *
 * @param preload from highest friction and least strength to lowest friction and largest strength
 */
public record YieldControlled(Range<Force> preload) {
  /** The spread of yield strength taken without better knowledge. */
  public static final double SPREAD = 1.2;

  /**
   * The preload of yield controlled tightening.
   *
   * @param spread largest yield strength over the least of the class, one or more
   */
  public static YieldControlled of(Bolt bolt, Range<Friction> thread, double spread) {
    if (!(spread >= 1) || Double.isInfinite(spread)) {
      throw new Refused("FAS-016", "spread of yield strength", spread + "", "1 or more");
    }
    Assembly yield = Assembly.atYield(bolt);
    double high = yield.preload(thread.low()).newtons() * spread;
    return new YieldControlled(new Range<>(yield.preload(thread.high()), new Force(high)));
  }

  /** The tightening factor αA: the highest preload over the lowest. */
  public double factor() {
    return preload.high().newtons() / preload.low().newtons();
  }
}
