package org.undercall.adapter.report;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** An axis of time, from one moment to another, between two places across. */
final class TimeAxis {
  private static final int MOST_TICKS = 9;
  private static final long[] STEPS = {
    1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 21_600, 43_200, 86_400
  };
  private static final DateTimeFormatter SECONDS =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAYS =
      DateTimeFormatter.ofPattern("MM-dd HH:mm", Locale.ROOT);

  private final OffsetDateTime from;
  private final OffsetDateTime to;
  private final double left;
  private final double right;

  /** A label and where it stands. */
  record Tick(double x, String label) {}

  TimeAxis(OffsetDateTime from, OffsetDateTime to, double left, double right) {
    this.from = from;
    this.to = to;
    this.left = left;
    this.right = right;
  }

  /** Where a moment stands; one beyond an end stands at the end. */
  double x(OffsetDateTime at) {
    double whole = Math.max(1, span().toMillis());
    double share = Duration.between(from, at).toMillis() / whole;
    return left + (right - left) * Math.max(0, Math.min(1, share));
  }

  Duration span() {
    return Duration.between(from, to);
  }

  /** Round moments, about as many as there is room for. */
  List<Tick> ticks() {
    long seconds = Math.max(1, span().toSeconds());
    long step = Math.max(1, seconds / MOST_TICKS);
    for (long round : STEPS) {
      if (round >= step && seconds / round <= MOST_TICKS) {
        step = round;
        break;
      }
    }
    OffsetDateTime day = from.truncatedTo(ChronoUnit.DAYS);
    long first = (Duration.between(day, from).toSeconds() + step) / step * step;
    List<Tick> ticks = new ArrayList<>();
    for (OffsetDateTime at = day.plusSeconds(first); !at.isAfter(to); at = at.plusSeconds(step)) {
      ticks.add(new Tick(x(at), format(step).format(at)));
    }
    return ticks;
  }

  private DateTimeFormatter format(long step) {
    if (!from.toLocalDate().equals(to.toLocalDate())) {
      return DAYS;
    }
    return step < 60 ? SECONDS : MINUTES;
  }
}
