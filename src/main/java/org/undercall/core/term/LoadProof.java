package org.undercall.core.term;

/** What the technician saw that shows a load condition. */
public enum LoadProof {
  WHEELS_CARRY_THE_CAR,
  KNUCKLE_JACKED_BODY_LIFTING,
  ARCH_HEIGHT_WITHIN_TOLERANCE,
  SUSPENSION_HANGS_FREE
}
