package org.undercall.core.term;

/** Why a wrench is used although its calibration is over. */
public enum OverdueReason {
  NO_OTHER_WRENCH,
  CHECKED_ON_A_TESTER,
  AS_TOLD
}
