package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;
import org.undercall.core.term.StepRef;

/**
 * Something that was answered sooner than it can be done. It is marked, not refused: the work may
 * have been done before it was asked for.
 *
 * @param at when it was answered
 * @param step its step
 * @param kind what was answered
 * @param stage the stage, from 1; 0 if it is none
 * @param took from when it was asked at the earliest, by the clock that is never set
 * @param least what it takes at least
 */
public record Haste(
    OffsetDateTime at, StepRef step, Kind kind, int stage, Duration took, Duration least) {
  /**
   * For each fastener of a torque or angle stage: to set the socket on, pull to the value and say
   * it. Common practice, no source; the shortest that a person can do, not the usual.
   */
  public static final Duration A_FASTENER = Duration.ofSeconds(2);

  /**
   * From the last time the car was lowered or the jack moved: to settle the suspension and look.
   * Common practice, no source.
   */
  public static final Duration A_LOAD = Duration.ofSeconds(5);

  /** What was answered. */
  public enum Kind {
    /** A torque or angle stage, or positions of a set. */
    STAGE,
    /** A time to be waited, such as for settling or curing: by the procedure. */
    WAIT,
    /** A load condition. */
    LOAD
  }
}
