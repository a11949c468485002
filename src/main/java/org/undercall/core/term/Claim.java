package org.undercall.core.term;

/** What a phrase that closes or confirms claims to be so. */
public enum Claim {
  CAUTIONS_UNDERSTOOD,
  STEP_COMPLETED,
  CHECK_PASSED,
  TORQUE_REACHED,
  ANGLE_TURNED,
  READ_BACK_RIGHT,
  HEAD_MARKING_READ,
  NEW_HARDWARE_FITTED,
  RUN_IN_BY_HAND,
  WITNESSED,
  /** What the suspension carries. */
  LOAD,
  END_OF_WORK
}
