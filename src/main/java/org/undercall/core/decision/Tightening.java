package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.term.HeadMarking;

/**
 * How far the tightening of a fastener has come.
 *
 * @param newHardware whether new hardware was fitted since it was last loosened
 * @param marking the head marking that was read back
 * @param stagesClosed how many stages are closed since it was last loosened
 * @param called the value called for the stage at hand, if it matched
 * @param interrupted whether it was broken off, so that nobody knows how far an angle was turned
 * @param turned how far the angle of the stage at hand was turned before, in degrees, if it was
 *     read back
 */
public record Tightening(
    boolean newHardware,
    Optional<HeadMarking> marking,
    int stagesClosed,
    Optional<BigDecimal> called,
    boolean interrupted,
    Optional<BigDecimal> turned) {

  static final Tightening LOOSE = new Tightening(false, Optional.empty(), 0);

  /** After some stages, with nothing called or turned since. */
  private Tightening(boolean newHardware, Optional<HeadMarking> marking, int stagesClosed) {
    this(newHardware, marking, stagesClosed, Optional.empty(), false, Optional.empty());
  }

  /** Whether a stage is closed or a value called. */
  boolean begun() {
    return stagesClosed > 0 || called.isPresent();
  }

  /** New hardware may be of another class: its head marking is to be read again. */
  Tightening withNewHardware() {
    return new Tightening(true, Optional.empty(), 0);
  }

  /** Without what was said of new hardware. */
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
    return new Tightening(newHardware, marking, stagesClosed, value, interrupted, turned);
  }

  Tightening withStagesClosed(int stages) {
    return new Tightening(newHardware, marking, stages);
  }

  /** Broken off; what was called does not count, and how far an angle was turned is not known. */
  Tightening broken(boolean atAngle) {
    return new Tightening(
        newHardware, marking, stagesClosed, Optional.empty(), atAngle, Optional.empty());
  }

  /** Turned so far; to be gone on with unless that is too far. */
  Tightening withTurned(BigDecimal degrees, boolean tooFar) {
    return new Tightening(
        newHardware, marking, stagesClosed, Optional.empty(), tooFar, Optional.of(degrees));
  }

  /** Loosened fully: what was used up by an angle does not count as new. */
  Tightening loosened(boolean angleBegun) {
    return angleBegun ? LOOSE : new Tightening(newHardware, marking, 0);
  }
}
