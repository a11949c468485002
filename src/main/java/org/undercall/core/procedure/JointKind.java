package org.undercall.core.procedure;

/** What kind of joint a fastener holds. */
public enum JointKind {
  /**
   * Rubber bonded to both sleeves: it is twisted for good if it is tightened at the wrong height.
   */
  BONDED_BUSH,
  /** A joint that turns freely. */
  SPHERICAL_JOINT,
  /** Parts that do not move against each other. */
  RIGID
}
