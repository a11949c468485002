package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.PutOffReason;

/**
 * How far a step has come.
 *
 * @param status open, put off, snug or closed
 * @param workDone whether the work of a do step is done and only its check question is open
 * @param reason why it was put off
 * @param tightening for a fastener
 * @param outOfOrder why it may be closed before those that come first; empty if it may not
 */
public record StepState(
    Status status,
    boolean workDone,
    Optional<PutOffReason> reason,
    Tightening tightening,
    Optional<OrderReason> outOfOrder) {

  /** Whether a step is open, and how. */
  public enum Status {
    OPEN,
    PUT_OFF,
    /** A fastener that is started, not tightened. */
    SNUG,
    CLOSED
  }

  static final StepState FRESH =
      new StepState(Status.OPEN, false, Optional.empty(), Tightening.LOOSE, Optional.empty());

  /** Whether nothing of it is left to do. */
  public boolean closed() {
    return status == Status.CLOSED;
  }

  StepState with(Status next) {
    return new StepState(next, workDone, reason, tightening, outOfOrder);
  }

  StepState withWorkDone(boolean done) {
    return new StepState(status, done, reason, tightening, outOfOrder);
  }

  StepState with(Tightening next) {
    return new StepState(status, workDone, reason, next, outOfOrder);
  }

  StepState putOff(PutOffReason why) {
    Status next = status == Status.SNUG ? Status.SNUG : Status.PUT_OFF;
    return new StepState(next, false, Optional.of(why), tightening, outOfOrder);
  }

  StepState outOfOrder(OrderReason why) {
    return new StepState(status, workDone, reason, tightening, Optional.of(why));
  }

  StepState inOrder() {
    return new StepState(status, workDone, reason, tightening, Optional.empty());
  }
}
