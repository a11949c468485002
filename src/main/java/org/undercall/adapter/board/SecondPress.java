package org.undercall.adapter.board;

import java.util.Optional;
import java.util.function.LongSupplier;
import org.undercall.web.Secrets;

/**
 * Holds the first press of a button until the second comes. It comes not sooner than a bouncing
 * finger or a held key would make it, and not later than someone who means it.
 */
final class SecondPress {
  /** A second press sooner than this is taken for the first, in milliseconds. */
  static final long SOONEST_MILLIS = 400;

  /** A second press later than this is a first one, in milliseconds. */
  static final long LATEST_MILLIS = 5000;

  private record First(String id, long state, String phrase, long at) {}

  private final LongSupplier clock;
  private Optional<First> first = Optional.empty();

  SecondPress(LongSupplier clock) {
    this.clock = clock;
  }

  /**
   * Presses.
   *
   * @param id what the first press was answered with; empty for a first press
   * @return empty if this is the second press; else what to send with the second
   */
  synchronized Optional<String> press(String id, long state, String phrase) {
    long now = clock.getAsLong();
    Optional<First> same =
        first
            .filter(f -> f.id().equals(id) && f.state() == state && f.phrase().equals(phrase))
            .filter(f -> now - f.at() <= LATEST_MILLIS);
    if (same.isEmpty()) {
      first = Optional.of(new First(Secrets.word(), state, phrase, now));
      return first.map(First::id);
    }
    if (now - same.get().at() < SOONEST_MILLIS) {
      return same.map(First::id);
    }
    first = Optional.empty();
    return Optional.empty();
  }
}
