package org.undercall.core.term;

/** By what it is told whether a part may be used again. */
public enum ReuseBy {
  /** Its length, in millimetres. */
  LENGTH,
  /** How often it was tightened before. */
  USES
}
