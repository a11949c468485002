package org.undercall.core.fastening;

import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.Torque;

/**
 * The torque that a self-locking nut needs to turn before it clamps.
 *
 * <p>ISO 2320, all-metal and insert nuts of coarse thread, classes 8 (which holds for 5 and 6 too)
 * and 10, from memory: at most this at the first screwing on, at least that at the first screwing
 * off. A nut that turns more easily than the least no longer locks. What the clamped joint gets is
 * less than the torque set by what prevails.
 *
 * @param firstOn the most at the first screwing on
 * @param firstOff the least at the first screwing off
 */
public record PrevailingTorque(Torque firstOn, Torque firstOff) {
  /** By diameter: on and off for class 8, on and off for class 10, in N·m. */
  private static final Map<Integer, double[]> TABLE =
      Map.ofEntries(
          Map.entry(5, new double[] {1.6, 0.29, 2.1, 0.35}),
          Map.entry(6, new double[] {3, 0.45, 4, 0.55}),
          Map.entry(8, new double[] {6, 0.85, 8, 1.15}),
          Map.entry(10, new double[] {10.5, 1.5, 14, 2}),
          Map.entry(12, new double[] {15.5, 2.3, 21, 3.1}),
          Map.entry(14, new double[] {24, 3.3, 31, 4.4}),
          Map.entry(16, new double[] {32, 4.5, 42, 6}),
          Map.entry(18, new double[] {42, 6, 56, 8}),
          Map.entry(20, new double[] {54, 7.5, 72, 10.5}),
          Map.entry(22, new double[] {68, 9.5, 90, 13}),
          Map.entry(24, new double[] {80, 11.5, 106, 15}));

  /** The torques for a nut; empty where the table has none. */
  public static Optional<PrevailingTorque> of(ThreadSize thread, NutClass strength) {
    int at =
        switch (strength) {
          case N5, N6, N8 -> 0;
          case N10 -> 2;
          case N04, N05, N9, N12 -> -1;
        };
    return Optional.ofNullable(TABLE.get((int) thread.diameter().millimetres()))
        .filter(row -> at >= 0)
        .map(row -> new PrevailingTorque(newtonMetres(row[at]), newtonMetres(row[at + 1])));
  }

  private static Torque newtonMetres(double amount) {
    return Units.newtonMetres(amount);
  }

  /**
   * What is left for clamping of a torque that is set: from that less the most that prevails up to
   * all of it, for a nut that has lost its lock.
   *
   * @throws IllegalArgumentException FAS-001 if no more is set than prevails
   */
  public Range<Torque> left(Torque set) {
    double least = set.inNewtonMetres() - firstOn.inNewtonMetres();
    return new Range<>(Units.newtonMetres(least), set);
  }
}
