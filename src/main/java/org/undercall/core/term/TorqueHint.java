package org.undercall.core.term;

/** What a torque after the last angle hints at. A hint to look, never a proof. */
public enum TorqueHint {
  /** Below the band: it may have yielded, or a thread is stripping. */
  TOO_SOFT,
  /** In the band, which proves nothing either. */
  AS_EXPECTED,
  /** Above the band: it may be cross-threaded or dirty. */
  TOO_HARD
}
