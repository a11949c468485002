package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A signed moment, for example of a twisted bush.
 *
 * @param newtonMetres signed, in newton metres
 */
public record Moment(double newtonMetres) implements Comparable<Moment> {
  public Moment {
    Require.finite("moment", newtonMetres, "N·m");
  }

  @Override
  public int compareTo(Moment other) {
    return Double.compare(newtonMetres, other.newtonMetres);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f N·m", newtonMetres);
  }
}
