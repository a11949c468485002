package org.undercall.core.fastening;

import java.util.Locale;

/**
 * An elastic compliance: how much a part gives under a force.
 *
 * @param millimetresPerNewton more than zero, in millimetres per newton
 */
public record Compliance(double millimetresPerNewton) implements Comparable<Compliance> {
  public Compliance {
    Require.positive("compliance", millimetresPerNewton, "mm/N");
  }

  /** Two parts in series. */
  public Compliance plus(Compliance other) {
    return new Compliance(millimetresPerNewton + other.millimetresPerNewton);
  }

  /** The change of length under a force. */
  public Length under(Force force) {
    return new Length(millimetresPerNewton * force.newtons());
  }

  @Override
  public int compareTo(Compliance other) {
    return Double.compare(millimetresPerNewton, other.millimetresPerNewton);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.3f µm/kN", millimetresPerNewton * 1e6);
  }
}
