package org.undercall.command.fleet;

import java.util.Collection;
import java.util.List;

/**
 * Sorted numbers, and what lies at a share of them: linear between neighbours (type 7 of Hyndman
 * and Fan, 1996).
 */
record Spread(List<Long> sorted) {
  private static final double FENCE = 1.5;

  static Spread of(Collection<Long> numbers) {
    return new Spread(numbers.stream().sorted().toList());
  }

  double at(double share) {
    double place = share * (sorted.size() - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.size() - 1);
    return sorted.get(below) + (sorted.get(above) - sorted.get(below)) * (place - below);
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
    return sorted.stream().filter(n -> n > fence).count();
  }

  long least() {
    return sorted.get(0);
  }

  long most() {
    return sorted.get(sorted.size() - 1);
  }

  long count() {
    return sorted.size();
  }
}
