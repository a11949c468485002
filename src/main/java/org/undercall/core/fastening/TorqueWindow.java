package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * The window of true torque behind a setting or a reading.
 *
 * <p>ISO 6789 gives the deviation as (Xa - Xr)/Xr with Xa set or shown and Xr true. So the true
 * torque lies between Xa/(1 + a) and Xa/(1 - a); the window is not symmetrical.
 */
public final class TorqueWindow {
  private TorqueWindow() {}

  /** The least and largest true torque. */
  public static Range<Torque> of(Torque setting, Deviation permissible) {
    double set = setting.inNewtonMetres();
    double share = permissible.share();
    return new Range<>(
        Units.newtonMetres(set / (1 + share)), Units.newtonMetres(set / (1 - share)));
  }

  /** Whether every true torque in the window meets a specification of target and tolerance. */
  public static boolean meets(Range<Torque> window, Range<Torque> permitted) {
    return permitted.contains(window.low()) && permitted.contains(window.high());
  }
}
