package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A height above a reference, negative below it.
 *
 * @param millimetres signed, in millimetres
 */
public record Height(double millimetres) implements Comparable<Height> {
  public Height {
    Require.finite("height", millimetres, "mm");
  }

  /** A height given in millimetres. */
  public static Height mm(double millimetres) {
    return new Height(millimetres);
  }

  /** How far this height is above another one; negative if it is below. */
  public Height above(Height other) {
    return new Height(millimetres - other.millimetres);
  }

  @Override
  public int compareTo(Height other) {
    return Double.compare(millimetres, other.millimetres);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f mm", millimetres);
  }
}
