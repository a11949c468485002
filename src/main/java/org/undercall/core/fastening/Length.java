package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A length.
 *
 * @param millimetres more than zero, in millimetres
 */
public record Length(double millimetres) implements Comparable<Length> {
  public Length {
    Require.positive("length", millimetres, "mm");
  }

  private static final double INCH = 25.4;

  /** A length given in millimetres. */
  public static Length mm(double millimetres) {
    return new Length(millimetres);
  }

  /** A length given in inches of exactly 25.4 mm (international yard and pound agreement 1959). */
  public static Length inches(double inches) {
    return new Length(inches * INCH);
  }

  /** The length in inches. */
  public double inInches() {
    return millimetres / INCH;
  }

  /** This length a number of times. */
  public Length times(double factor) {
    return new Length(millimetres * factor);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(millimetres, other.millimetres);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f mm", millimetres);
  }
}
