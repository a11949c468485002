package org.undercall.core.review;

import java.time.Duration;

/**
 * A length of time.
 *
 * @param length by the clock that is never set
 * @param acrossRestart whether the program was started again within it; the length over that gap is
 *     then by the wall clock, which may have been set
 */
public record Span(Duration length, boolean acrossRestart) {
  /** No time at all. */
  public static final Span NONE = new Span(Duration.ZERO, false);
}
