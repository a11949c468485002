package org.undercall.core.term;

import java.util.Objects;

/**
 * Names one step of the walk: the step of the procedure and the side it is done on.
 *
 * @param id the step's id in the procedure
 * @param side the side, {@link Side#CAR} for a step done once
 */
public record StepRef(String id, Side side) {
  public StepRef {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(side, "side");
  }

  @Override
  public String toString() {
    return side == Side.CAR ? id : id + "/" + side.words().replace(' ', '-');
  }
}
