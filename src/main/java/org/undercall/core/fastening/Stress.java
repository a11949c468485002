package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A mechanical stress.
 *
 * @param megapascals zero or more, in megapascals (newtons per square millimetre)
 */
public record Stress(double megapascals) implements Comparable<Stress> {
  public Stress {
    Require.notNegative("stress", megapascals, "MPa");
  }

  /** The force this stress makes on an area. */
  public Force on(Area area) {
    return new Force(megapascals * area.squareMillimetres());
  }

  @Override
  public int compareTo(Stress other) {
    return Double.compare(megapascals, other.megapascals);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.0f MPa", megapascals);
  }
}
