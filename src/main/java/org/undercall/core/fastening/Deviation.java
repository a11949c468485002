package org.undercall.core.fastening;

import java.util.Locale;
import org.undercall.core.term.Refused;

/**
 * A permissible deviation either way, in percent of the true value.
 *
 * @param percent more than zero, in percent
 */
public record Deviation(double percent) implements Comparable<Deviation> {
  public Deviation {
    Require.positive("deviation", percent, "%");
    if (percent >= 100) {
      throw new Refused("FAS-007", "deviation", percent + " %", "less than 100 %");
    }
  }

  /** The deviation as a share of one. */
  public double share() {
    return percent / 100;
  }

  @Override
  public int compareTo(Deviation other) {
    return Double.compare(percent, other.percent);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "±%.0f %%", percent);
  }
}
