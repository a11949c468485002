package org.undercall.port;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.function.LongSupplier;
import org.undercall.core.event.Moment;

/** Tells the time on both clocks. */
@FunctionalInterface
public interface Time {

  /** This moment. */
  Moment now();

  /** The clocks of this machine. */
  static Time ofMachine() {
    return () ->
        new Moment(
            OffsetDateTime.now(java.time.ZoneId.systemDefault()).truncatedTo(ChronoUnit.MILLIS),
            System.nanoTime() / 1_000_000);
  }

  /**
   * The time along a sound: its start and the milliseconds played so far, for runs that are faster
   * than life.
   */
  static Time ofSound(OffsetDateTime start, LongSupplier millis) {
    OffsetDateTime whole = start.truncatedTo(ChronoUnit.MILLIS);
    return () -> {
      long passed = millis.getAsLong();
      return new Moment(whole.plus(passed, ChronoUnit.MILLIS), passed);
    };
  }
}
