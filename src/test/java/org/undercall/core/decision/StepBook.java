package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.term.HeadMarking;

/**
 * What {@link Promises} keeps of one step.
 *
 * @param closed whether it is closed
 * @param hardware whether new hardware was fitted since it was last loosened
 * @param marking the head marking that was read back
 * @param stages how many stages are closed since it was last loosened
 * @param called the stage a value was called for, 0 for none
 * @param broken whether its angle was broken off, so that what was turned is not known
 * @param turned the degrees turned before, as they were read back
 */
record StepBook(
    boolean closed,
    boolean hardware,
    Optional<HeadMarking> marking,
    int stages,
    int called,
    boolean broken,
    Optional<BigDecimal> turned) {
  static final StepBook EMPTY = loose(false, Optional.empty());

  static StepBook loose(boolean hardware, Optional<HeadMarking> marking) {
    return new StepBook(false, hardware, marking, 0, 0, false, Optional.empty());
  }

  StepBook closed(boolean now) {
    return new StepBook(now, hardware, marking, stages, called, broken, turned);
  }

  /** After this many stages, with a value called for this one. */
  StepBook go(int stage, int value) {
    boolean same = stage == stages;
    return new StepBook(
        closed, hardware, marking, stage, value, same && broken, same ? turned : Optional.empty());
  }

  StepBook broken(boolean atAngle) {
    return new StepBook(false, hardware, marking, stages, 0, atAngle, Optional.empty());
  }

  StepBook turned(BigDecimal degrees, boolean tooFar, boolean reached) {
    return new StepBook(
        false, hardware, marking, stages, reached ? stages + 1 : 0, tooFar, Optional.of(degrees));
  }
}
