package org.undercall.core.term;

/** How something that went wrong was settled. */
public enum Remedy {
  NEW_HARDWARE,
  /** The part was repaired or replaced. */
  REPAIRED
}
