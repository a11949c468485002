package org.undercall.core.fastening;

import java.util.Locale;

/**
 * The nut factor K of the short form T = K F d.
 *
 * @param k more than zero, no unit
 */
public record NutFactor(double k) implements Comparable<NutFactor> {
  public NutFactor {
    Require.positive("nut factor", k, "(no unit)");
  }

  /** A nut factor from its number. */
  public static NutFactor of(double k) {
    return new NutFactor(k);
  }

  @Override
  public int compareTo(NutFactor other) {
    return Double.compare(k, other.k);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f", k);
  }
}
