package org.undercall.core.term;

/** Why a step is closed before those that should come first. */
public enum OrderReason {
  AS_THE_MAKER_SAYS,
  DONE_BY_SOMEBODY_ELSE,
  NOT_ON_THIS_CAR
}
