package org.undercall.core.term;

import java.util.Locale;

/**
 * The side or the corner of the car that a step belongs to, seen in the direction of travel. A
 * procedure knows sides or corners, never both.
 */
public enum Side {
  LEFT,
  RIGHT,
  FRONT_LEFT,
  FRONT_RIGHT,
  REAR_LEFT,
  REAR_RIGHT,
  /** A step done once for the whole car. */
  CAR;

  /** The one across the car, on the same axle; the whole car has itself. */
  public Side opposite() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case FRONT_LEFT -> FRONT_RIGHT;
      case FRONT_RIGHT -> FRONT_LEFT;
      case REAR_LEFT -> REAR_RIGHT;
      case REAR_RIGHT -> REAR_LEFT;
      case CAR -> CAR;
    };
  }

  /** In words, such as "left" or "front left". */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** In words as a place, such as "left side", "front left" or "whole car". */
  public String place() {
    return switch (this) {
      case LEFT, RIGHT -> words() + " side";
      case FRONT_LEFT, FRONT_RIGHT, REAR_LEFT, REAR_RIGHT -> words();
      case CAR -> "whole car";
    };
  }
}
