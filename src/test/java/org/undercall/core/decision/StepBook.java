package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.term.HeadMarking;

/**
 * What {@link Promises} keeps of one step.
 *
 * @param closed whether it is closed
 * @param hardware whether new hardware was fitted since it was last loosened
 * @param marking the head marking that was read back
 * @param stages how many stages are closed in this go
 * @param called the stage a value was called for, 0 for none
 */
record StepBook(
    boolean closed, boolean hardware, Optional<HeadMarking> marking, int stages, int called) {
  static final StepBook EMPTY = new StepBook(false, false, Optional.empty(), 0, 0);

  StepBook closed(boolean now) {
    return new StepBook(now, hardware, marking, stages, called);
  }

  StepBook go(int stage, int value) {
    return new StepBook(closed, hardware, marking, stage, value);
  }
}
