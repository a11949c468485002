package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * A point on both clocks of the review.
 *
 * @param at wall clock
 * @param millis time since the first decision
 * @param gaps how often the program was started again until then
 * @param place where in the log: a thousand times the number of the decision, and that of its event
 */
record Reading(OffsetDateTime at, long millis, int gaps, long place) {
  Span to(Reading later) {
    return new Span(Duration.ofMillis(later.millis - millis), later.gaps > gaps);
  }

  Reading next() {
    return new Reading(at, millis, gaps, place + 1);
  }
}
