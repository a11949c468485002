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
