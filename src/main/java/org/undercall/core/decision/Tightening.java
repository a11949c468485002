package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Positions;

/**
 * How far the tightening of a fastener has come.
 *
 * @param newHardware whether new hardware, or used hardware within its limit, was fitted since it
 *     was last loosened
 * @param marking the head marking that was read back
 * @param stagesClosed how many stages are closed since it was last loosened
 * @param called the value called for the stage at hand, if it matched
 * @param interrupted whether it was broken off, so that nobody knows how far an angle was turned
 * @param turned how far the angle of the stage at hand was turned before, in degrees, if it was
 *     read back
 * @param pass how far a set has come at the stage at hand
 */
public record Tightening(
    boolean newHardware,
    Optional<HeadMarking> marking,
    int stagesClosed,
    Optional<BigDecimal> called,
    boolean interrupted,
    Optional<BigDecimal> turned,
    Pass pass) {

  static final Tightening LOOSE = new Tightening(false, Optional.empty(), 0);

  /** After some stages, with nothing called or turned since. */
  private Tightening(boolean newHardware, Optional<HeadMarking> marking, int stagesClosed) {
    this(newHardware, marking, stagesClosed, Optional.empty(), false, Optional.empty(), Pass.NONE);
  }

  /** Whether a stage is closed or a value called. */
  boolean begun() {
    return tight() || called.isPresent();
  }

  /** Whether a stage is closed, be it of one fastener of a set. */
  boolean tight() {
    return stagesClosed > 0 || !pass.closed().isEmpty();
  }

  /** Other hardware may be of another class: its head marking is to be read again. */
  Tightening withNewHardware() {
    return new Tightening(true, Optional.empty(), 0);
  }

  /** Without what was said of the hardware. */
  Tightening withoutNewHardware() {
    return LOOSE;
  }

  Tightening withMarking(HeadMarking read) {
    return new Tightening(newHardware, Optional.of(read), 0);
  }

  Tightening withoutMarking() {
    return new Tightening(newHardware, Optional.empty(), 0);
  }

  Tightening withCalled(Optional<BigDecimal> value) {
    return new Tightening(newHardware, marking, stagesClosed, value, interrupted, turned, pass);
  }

  Tightening withStagesClosed(int stages) {
    return new Tightening(newHardware, marking, stages);
  }

  /** One stage more is closed; of a set it is kept what was called last. */
  Tightening withNextStageClosed(int stage) {
    Pass next = pass.ended(stage);
    return new Tightening(
        newHardware, marking, stage, Optional.empty(), next.doubted(), Optional.empty(), next);
  }

  /** A stage was taken back; of a set only what was called last. */
  Tightening withStageTakenBack(int stage) {
    return new Tightening(newHardware, marking, stage - 1).with(pass.reopened());
  }

  private Tightening with(Pass next) {
    return new Tightening(newHardware, marking, stagesClosed, called, interrupted, turned, next);
  }

  /** More of a set were called; what one was turned before a break, the next was not. */
  Tightening withClosed(Positions more, boolean atAngle) {
    return new Tightening(
        newHardware,
        marking,
        stagesClosed,
        called,
        atAngle && pass.doubted(),
        Optional.empty(),
        pass.with(more));
  }

  /**
   * Some of a set are open again.
   *
   * @param atAngle whether an angle may have been turned in part
   * @param next whether they are just the one that comes next
   */
  Tightening withOpened(Positions back, boolean atAngle, boolean next) {
    return new Tightening(
        newHardware,
        marking,
        stagesClosed,
        atAngle ? Optional.empty() : called,
        atAngle,
        Optional.empty(),
        pass.without(back, atAngle && !next));
  }

  /** One of a set is renewed: it starts again from the first stage. */
  Tightening renewed(int position, List<Integer> sequence) {
    Pass next = pass.renewed(position, stagesClosed, sequence);
    return new Tightening(newHardware, marking, 0).with(next);
  }

  /** Each of a set that is open may have been turned through the angle at hand. */
  Tightening doubted() {
    return broken(true).with(new Pass(pass.closed(), pass.before(), true, pass.ahead()));
  }

  /** Broken off; what was called does not count, and how far an angle was turned is not known. */
  Tightening broken(boolean atAngle) {
    return new Tightening(
        newHardware, marking, stagesClosed, Optional.empty(), atAngle, Optional.empty(), pass);
  }

  /** Turned so far; to be gone on with unless that is too far. */
  Tightening withTurned(BigDecimal degrees, boolean tooFar) {
    return new Tightening(
        newHardware, marking, stagesClosed, Optional.empty(), tooFar, Optional.of(degrees), pass);
  }

  /** Loosened fully: what was used up does not count as new. */
  Tightening loosened(boolean usedUp) {
    return usedUp ? LOOSE : new Tightening(newHardware, marking, 0);
  }
}
