package org.undercall.adapter.report;

import java.time.Duration;
import org.undercall.core.event.SessionEvent;

/** The words of the written review for timers and the clock. */
final class TimerWords {
  private TimerWords() {}

  /** What happened to a timer or to the clock. */
  static String of(SessionEvent event) {
    if (event instanceof SessionEvent.NamedTimerStarted e) {
      return ReviewWords.plain(e.name()) + ": started, " + length(e.seconds());
    }
    if (event instanceof SessionEvent.NamedTimerEnded e) {
      return ReviewWords.plain(e.name()) + ": time over";
    }
    if (event instanceof SessionEvent.NamedTimerCancelled e) {
      return ReviewWords.plain(e.name()) + ": cancelled";
    }
    return ofStep(event);
  }

  private static String ofStep(SessionEvent event) {
    if (event instanceof SessionEvent.TimerStarted e) {
      return ReviewWords.step(e.step()) + ": started, " + length(e.seconds());
    }
    if (event instanceof SessionEvent.TimerEnded e) {
      return ReviewWords.step(e.step()) + ": time over";
    }
    if (event instanceof SessionEvent.TimerCancelled e) {
      return ReviewWords.step(e.step()) + ": cancelled";
    }
    return event instanceof SessionEvent.ClockJumped e ? clock(e.millis()) : event.toString();
  }

  private static String clock(long millis) {
    String way = millis < 0 ? "back" : "forward";
    return "the clock was set "
        + way
        + " by "
        + ReviewWords.length(Duration.ofMillis(Math.abs(millis)));
  }

  private static String length(long seconds) {
    return ReviewWords.length(Duration.ofSeconds(seconds));
  }
}
