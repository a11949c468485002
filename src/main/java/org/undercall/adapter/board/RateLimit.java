package org.undercall.adapter.board;

import java.util.function.LongSupplier;

/** Lets through so many at once and then one each so many milliseconds. */
final class RateLimit {
  private final int burst;
  private final long millisEach;
  private final LongSupplier clock;
  private double left;
  private long since;

  /**
   * A limit with nothing used.
   *
   * @param burst how many at once
   * @param millisEach the time after which one more is let through
   * @param clock milliseconds of a clock that is never set
   */
  RateLimit(int burst, long millisEach, LongSupplier clock) {
    this.burst = burst;
    this.millisEach = millisEach;
    this.clock = clock;
    this.left = burst;
    this.since = clock.getAsLong();
  }

  /** Whether one more is let through; if so, it is counted. */
  synchronized boolean allows() {
    long now = clock.getAsLong();
    left = Math.min(burst, left + (double) (now - since) / millisEach);
    since = now;
    if (left < 1) {
      return false;
    }
    left--;
    return true;
  }
}
