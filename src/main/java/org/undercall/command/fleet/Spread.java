package org.undercall.command.fleet;

import java.util.Arrays;
import java.util.Collection;

/**
 * Sorted numbers, and what lies at a share of them: linear between neighbours (type 7 of Hyndman
 * and Fan, 1996).
 */
record Spread(long[] sorted) {
  private static final double FENCE = 1.5;

  static Spread of(Collection<Long> numbers) {
    long[] sorted = numbers.stream().mapToLong(Long::longValue).toArray();
    Arrays.sort(sorted);
    return new Spread(sorted);
  }

  double at(double share) {
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (sorted[above] - sorted[below]) * (place - below);
  }

  double median() {
    return at(0.5);
  }

  /** Tukey's fence: above the third quartile by one and a half times the spread (1977). */
  double fence() {
    return at(0.75) + FENCE * (at(0.75) - at(0.25));
  }

  long beyondFence() {
    double fence = fence();
    return Arrays.stream(sorted).filter(n -> n > fence).count();
  }

  long least() {
    return sorted[0];
  }

  long most() {
    return sorted[sorted.length - 1];
  }

  long count() {
    return sorted.length;
  }
}
