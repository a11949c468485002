package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A coefficient of friction, of a thread or of a seat under a head or nut.
 *
 * @param coefficient more than zero, no unit
 */
public record Friction(double coefficient) implements Comparable<Friction> {
  public Friction {
    Require.positive("friction", coefficient, "(no unit)");
  }

  /**
   * The widest range that may be typed in: no value published for threads or seats that was read
   * lies outside 0.04 to 0.45, and a coefficient outside 0.02 to 0.6 is taken as a slip of the
   * finger. The bounds are a choice of this program.
   */
  public static final Range<Friction> TYPED = new Range<>(new Friction(0.02), new Friction(0.6));

  /**
   * The band that screws of the car industry are set to by coating and lubricant, measured by ISO
   * 16047: 0.09 to 0.14 (VDA 235-101, from memory). For new parts as delivered only.
   */
  public static final Range<Friction> VDA_235_101 =
      new Range<>(new Friction(0.09), new Friction(0.14));

  /** A friction from its coefficient. */
  public static Friction of(double coefficient) {
    return new Friction(coefficient);
  }

  @Override
  public int compareTo(Friction other) {
    return Double.compare(coefficient, other.coefficient);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f", coefficient);
  }
}
