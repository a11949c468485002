package org.undercall.core.procedure;

/** What a step does to the wheels of its side; of both sides if it is done once for the car. */
public enum Wheels {
  LEFT_AS_THEY_ARE,
  FITTED,
  REMOVED
}
