package org.undercall.adapter.drawing;

import java.util.Optional;

/**
 * The time at work on one step: of one session, and of those it is held against.
 *
 * @param name the step with its side
 * @param millis this session's time in milliseconds; empty if it did not close the step
 * @param spread of the others; empty if none of them closed it
 * @param slow whether this session's time is beyond the fence
 */
public record StepRow(String name, Optional<Double> millis, Optional<Spread> spread, boolean slow) {

  /**
   * How times are spread, in milliseconds.
   *
   * @param sessions how many closed the step
   */
  public record Spread(
      long sessions, double least, double lower, double median, double upper, double most) {}
}
