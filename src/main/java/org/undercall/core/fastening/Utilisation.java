package org.undercall.core.fastening;

import java.util.Locale;
import org.undercall.core.term.Refused;

/**
 * How much of the yield strength the combined stress of tightening may use.
 *
 * @param share more than zero, up to one
 */
public record Utilisation(double share) implements Comparable<Utilisation> {
  public Utilisation {
    Require.positive("utilisation", share, "(no unit)");
    if (share > 1) {
      throw new Refused("FAS-006", "utilisation", String.valueOf(share), "at most 1");
    }
  }

  /** The usual assembly: 90 % of the yield strength (VDI 2230 Part 1, table A1). */
  public static final Utilisation ASSEMBLY = new Utilisation(0.9);

  /** The onset of yield. */
  public static final Utilisation YIELD = new Utilisation(1);

  @Override
  public int compareTo(Utilisation other) {
    return Double.compare(share, other.share);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f", share);
  }
}
