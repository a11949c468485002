package org.undercall.core.term;

/** Why a step was put off. It stays open whatever the reason. */
public enum PutOffReason {
  RIDE_HEIGHT,
  FULL_DROOP,
  WAITING_FOR_PARTS,
  TOOL_MISSING,
  /** Nobody is there who could see it. */
  NO_WITNESS,
  LATER
}
