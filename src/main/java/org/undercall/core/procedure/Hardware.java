package org.undercall.core.procedure;

/** What kind of fastener is turned. */
public enum Hardware {
  BOLT,
  NUT,
  SELF_LOCKING_NUT
}
