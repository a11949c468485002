package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Trouble;

/**
 * How far a step has come.
 *
 * @param status open, put off, snug or closed
 * @param workDone whether the work of a do step is done and only its check question is open
 * @param reason why it was put off
 * @param tightening for a fastener
 * @param wrong what went wrong and is not settled
 * @param byHand whether it was run in by hand since it was loose
 * @param runDown the torque that a nut needed to run down, as it was read back
 * @param outOfOrder why it may be closed before those that come first; empty if it may not
 * @param uses how often a part was tightened whose uses are counted
 * @param watch who worked on it, and who saw it if a witness is asked for
 */
public record StepState(
    Status status,
    boolean workDone,
    Optional<PutOffReason> reason,
    Tightening tightening,
    Optional<Wrong> wrong,
    boolean byHand,
    Optional<BigDecimal> runDown,
    Optional<OrderReason> outOfOrder,
    Uses uses,
    Watch watch) {
  /**
   * What went wrong.
   *
   * @param position of a set, from 1; empty if it is all of it, or a single fastener
   */
  public record Wrong(Trouble trouble, Optional<Integer> position) {}

  /** Whether a step is open, and how. */
  public enum Status {
    OPEN,
    PUT_OFF,
    /** A fastener that is started, not tightened. */
    SNUG,
    CLOSED
  }

  static final StepState FRESH =
      new StepState(
          Status.OPEN,
          false,
          Optional.empty(),
          Tightening.LOOSE,
          Optional.empty(),
          false,
          Optional.empty(),
          Optional.empty(),
          Uses.UNKNOWN,
          Watch.NOBODY);

  /** Whether nothing of it is left to do. */
  public boolean closed() {
    return status == Status.CLOSED;
  }

  StepState with(Status next) {
    return new StepState(
        next, workDone, reason, tightening, wrong, byHand, runDown, outOfOrder, uses, watch);
  }

  StepState withWorkDone(boolean done) {
    return new StepState(
        status, done, reason, tightening, wrong, byHand, runDown, outOfOrder, uses, watch);
  }

  StepState with(Tightening next) {
    return new StepState(
        status, workDone, reason, next, wrong, byHand, runDown, outOfOrder, uses, watch);
  }

  StepState putOff(PutOffReason why) {
    Status next = status == Status.SNUG ? Status.SNUG : Status.PUT_OFF;
    return new StepState(
        next, false, Optional.of(why), tightening, wrong, byHand, runDown, outOfOrder, uses, watch);
  }

  StepState outOfOrder(OrderReason why) {
    return new StepState(
        status,
        workDone,
        reason,
        tightening,
        wrong,
        byHand,
        runDown,
        Optional.of(why),
        uses,
        watch);
  }

  StepState inOrder() {
    return new StepState(
        status,
        workDone,
        reason,
        tightening,
        wrong,
        byHand,
        runDown,
        Optional.empty(),
        uses,
        watch);
  }

  StepState wrong(Optional<Wrong> next) {
    return new StepState(
        status, workDone, reason, tightening, next, byHand, runDown, outOfOrder, uses, watch);
  }

  StepState runDown(Optional<BigDecimal> next) {
    return new StepState(
        status, workDone, reason, tightening, wrong, byHand, next, outOfOrder, uses, watch);
  }

  StepState byHand(boolean next) {
    return new StepState(
        status, workDone, reason, tightening, wrong, next, runDown, outOfOrder, uses, watch);
  }

  StepState uses(Uses next) {
    return new StepState(
        status, workDone, reason, tightening, wrong, byHand, runDown, outOfOrder, next, watch);
  }

  StepState watch(Watch next) {
    return new StepState(
        status, workDone, reason, tightening, wrong, byHand, runDown, outOfOrder, uses, next);
  }

  /** Loose again: it is run in and run down anew, and nobody has seen it. */
  StepState loose() {
    return byHand(false).runDown(Optional.empty()).watch(Watch.NOBODY);
  }
}
