package org.undercall.core.term;

/** Where a band of torque comes from. */
public enum BandSource {
  /** The procedure states it. */
  STATED,
  /** It is computed from the sizes of the joint and its friction. */
  COMPUTED
}
