package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A force, for example the preload of a bolt.
 *
 * @param newtons zero or more, in newtons
 */
public record Force(double newtons) implements Comparable<Force> {
  public Force {
    Require.notNegative("force", newtons, "N");
  }

  /** A force given in kilonewtons. */
  public static Force kilonewtons(double kilonewtons) {
    return new Force(kilonewtons * 1000);
  }

  /** The lesser of two forces. */
  public static Force least(Force one, Force other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  /** The force in kilonewtons. */
  public double inKilonewtons() {
    return newtons / 1000;
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(newtons, other.newtons);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f kN", newtons / 1000);
  }
}
