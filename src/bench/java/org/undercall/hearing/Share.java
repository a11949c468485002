package org.undercall.hearing;

import java.util.Locale;

/** So many of so many, with the Wilson interval that holds the true share with 95 %. */
record Share(int count, int total) {
  private static final double Z = 1.959964;

  double share() {
    return total == 0 ? 0 : (double) count / total;
  }

  double low() {
    return total == 0 ? 0 : Math.max(0, middle() - half());
  }

  double high() {
    return total == 0 ? 1 : Math.min(1, middle() + half());
  }

  private double middle() {
    return (share() + Z * Z / (2 * total)) / (1 + Z * Z / total);
  }

  private double half() {
    double p = share();
    double inner = p * (1 - p) / total + Z * Z / (4.0 * total * total);
    return Z * Math.sqrt(inner) / (1 + Z * Z / total);
  }

  /** The numbers themselves: "2 of 44220". */
  String counted() {
    return count + " of " + total;
  }

  /** The share and its interval in per cent. */
  @Override
  public String toString() {
    if (total == 0) {
      return "none";
    }
    return String.format(Locale.ROOT, "%.1f (%.1f-%.1f)", 100 * share(), 100 * low(), 100 * high());
  }
}
