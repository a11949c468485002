package org.undercall.core.term;

/** How the suspension must be loaded when a fastener gets its final tightening. */
public enum LoadCondition {
  /** No condition, for example a sealed spherical joint. */
  ANY,
  /** The suspension carries its load at ride height, for example a rubber-bonded bush. */
  RIDE_HEIGHT,
  /** The suspension hangs free. */
  FULL_DROOP
}
