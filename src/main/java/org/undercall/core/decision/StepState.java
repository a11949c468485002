package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.term.PutOffReason;

/**
 * How far a step has come.
 *
 * @param status open, put off, snug or closed
 * @param workDone whether the work of a do step is done and only its check question is open
 * @param reason why it was put off
 * @param tightening for a fastener
 */
public record StepState(
    Status status, boolean workDone, Optional<PutOffReason> reason, Tightening tightening) {

  /** Whether a step is open, and how. */
  public enum Status {
    OPEN,
    PUT_OFF,
    /** A fastener that is started, not tightened. */
    SNUG,
    CLOSED
  }

  static final StepState FRESH =
      new StepState(Status.OPEN, false, Optional.empty(), Tightening.LOOSE);

  /** Whether nothing of it is left to do. */
  public boolean closed() {
    return status == Status.CLOSED;
  }

  StepState with(Status next) {
    return new StepState(next, workDone, reason, tightening);
  }

  StepState withWorkDone(boolean done) {
    return new StepState(status, done, reason, tightening);
  }

  StepState with(Tightening next) {
    return new StepState(status, workDone, reason, next);
  }

  StepState putOff(PutOffReason why) {
    Status next = status == Status.SNUG ? Status.SNUG : Status.PUT_OFF;
    return new StepState(next, false, Optional.of(why), tightening);
  }
}
