package org.undercall.core.procedure;

import java.util.List;
import org.undercall.core.term.Side;

/** Where the steps of a phase are walked. */
public enum Each {
  /** Once for the whole car. */
  CAR,
  SIDE,
  /** Both front corners. */
  FRONT,
  /** Both rear corners. */
  REAR,
  /** All four corners. */
  CORNER;

  /** The sides or corners, in the order in which they are walked. */
  public List<Side> sides() {
    return switch (this) {
      case CAR -> List.of(Side.CAR);
      case SIDE -> List.of(Side.LEFT, Side.RIGHT);
      case FRONT -> List.of(Side.FRONT_LEFT, Side.FRONT_RIGHT);
      case REAR -> List.of(Side.REAR_LEFT, Side.REAR_RIGHT);
      case CORNER -> List.of(Side.FRONT_LEFT, Side.FRONT_RIGHT, Side.REAR_LEFT, Side.REAR_RIGHT);
    };
  }
}
