package org.undercall.core.fastening;

import java.util.Locale;

/**
 * A change of force, negative for a loss.
 *
 * @param newtons signed, in newtons
 */
public record ForceChange(double newtons) implements Comparable<ForceChange> {
  public ForceChange {
    Require.finite("change of force", newtons, "N");
  }

  /** The change in kilonewtons. */
  public double inKilonewtons() {
    return newtons / 1000;
  }

  /** What a force becomes; zero at least, since a bolt cannot push. */
  public Force on(Force before) {
    return new Force(Math.max(0, before.newtons() + newtons));
  }

  @Override
  public int compareTo(ForceChange other) {
    return Double.compare(newtons, other.newtons);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%+.1f kN", newtons / 1000);
  }
}
