package org.undercall.adapter.drawing;

import java.util.stream.IntStream;

/**
 * Lengths of time on a logarithmic scale: the same distance is the same factor.
 *
 * @param low seconds at its left end
 * @param high seconds at its right end
 * @param left where it begins
 * @param right where it ends
 */
record TimeAxis(double low, double high, double left, double right) {
  private static final int MINUTE = 60;
  private static final int HOUR = 3600;

  /** An axis with room for times between two, in milliseconds. */
  static TimeAxis around(double least, double most, double left, double right) {
    return new TimeAxis(seconds(least) / 1.5, Math.max(seconds(most), MINUTE) * 4, left, right);
  }

  /** Less than one second has no place on the scale. */
  private static double seconds(double millis) {
    return Math.max(1, millis / 1000);
  }

  /** Where a time in milliseconds stands. */
  double at(double millis) {
    return left + (right - left) * Math.log(seconds(millis) / low) / Math.log(high / low);
  }

  /** Round times, in seconds. */
  int[] ticks() {
    return IntStream.of(
            1, 2, 5, 10, 20, 60, 120, 300, 600, 1200, 3600, 7200, 18_000, 36_000, 86_400)
        .filter(seconds -> seconds >= low && seconds <= high)
        .toArray();
  }

  static String label(int seconds) {
    if (seconds < MINUTE) {
      return seconds + " s";
    }
    return seconds < HOUR ? seconds / MINUTE + " min" : seconds / HOUR + " h";
  }
}
