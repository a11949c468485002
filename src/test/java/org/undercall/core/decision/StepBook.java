package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
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
 * @param set which of a set were called at the stage at hand
 * @param wrong what went wrong and is not settled
 */
record StepBook(
    boolean closed,
    boolean hardware,
    Optional<HeadMarking> marking,
    int stages,
    int called,
    boolean broken,
    Optional<BigDecimal> turned,
    SetBook set,
    Optional<SessionEvent.TroubleNoted> wrong) {
  static final StepBook EMPTY = loose(false, Optional.empty());

  static StepBook loose(boolean hardware, Optional<HeadMarking> marking) {
    return new StepBook(
        false, hardware, marking, 0, 0, false, Optional.empty(), SetBook.EMPTY, Optional.empty());
  }

  StepBook closed(boolean now) {
    return new StepBook(now, hardware, marking, stages, called, broken, turned, set, wrong);
  }

  /** After this many stages, with a value called for this one. */
  StepBook go(int stage, int value) {
    boolean same = stage == stages;
    return new StepBook(
        closed,
        hardware,
        marking,
        stage,
        value,
        same && broken,
        same ? turned : Optional.empty(),
        same ? set : set.at(stage),
        wrong);
  }

  StepBook broken(boolean atAngle) {
    return new StepBook(false, hardware, marking, stages, 0, atAngle, Optional.empty(), set, wrong);
  }

  StepBook turned(BigDecimal degrees, boolean tooFar, boolean reached) {
    return new StepBook(
        false,
        hardware,
        marking,
        stages,
        reached ? stages + 1 : 0,
        tooFar,
        Optional.of(degrees),
        set,
        wrong);
  }

  /** With these of the set called, or not; what one was turned, the next was not. */
  StepBook with(SetBook next, boolean atAngle) {
    return new StepBook(
        false, hardware, marking, stages, called, atAngle, Optional.empty(), next, wrong);
  }

  StepBook wrong(Optional<SessionEvent.TroubleNoted> next) {
    return new StepBook(closed, hardware, marking, stages, called, broken, turned, set, next);
  }

  /** It starts again; of a set only the one at which something went wrong. */
  StepBook settled(boolean renewed, int count) {
    Optional<Integer> position = wrong.flatMap(SessionEvent.TroubleNoted::position);
    return position
        .map(
            n ->
                new StepBook(
                    false,
                    hardware,
                    marking,
                    0,
                    0,
                    false,
                    Optional.empty(),
                    set.renewed(n, stages, count),
                    Optional.empty()))
        .orElse(loose(renewed, Optional.empty()));
  }
}
