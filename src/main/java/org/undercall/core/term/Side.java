package org.undercall.core.term;

/** The side of the car that a step belongs to, seen in the direction of travel. */
public enum Side {
  LEFT,
  RIGHT,
  /** A step done once for the whole car. */
  CAR
}
