package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;

@DisplayName("The watch on the clocks")
class ClockWatchTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private final ClockWatch watch = new ClockWatch(at(0, 0));

  private static Moment at(long wallSeconds, long steadySeconds) {
    return new Moment(START.plusSeconds(wallSeconds), 1000 * steadySeconds);
  }

  private static Optional<Intent> jump(long seconds, long asleep) {
    return Optional.of(new Intent.ClockJumped(1000 * seconds, 1000 * asleep));
  }

  @Test
  @DisplayName("finds nothing while both go alike, nor in a difference of five seconds")
  void alike() {
    assertEquals(Optional.empty(), watch.look(at(60, 60), 60_000));
    assertEquals(Optional.empty(), watch.look(at(65, 60), 60_000));
    assertEquals(Optional.empty(), watch.look(at(55, 60), 60_000));
  }

  @Test
  @DisplayName("finds a clock set forward, which may be a sleep, and one set back, which is none")
  void jumps() {
    assertEquals(jump(6, 6), watch.look(at(66, 60), 60_000));
    assertEquals(jump(-6, 0), watch.look(at(54, 60), 60_000));
  }

  @Test
  @DisplayName("finds a sleep that both clocks count by the time nobody listened")
  void bothSlept() {
    assertEquals(Optional.empty(), watch.look(at(180, 180), 60_000));
    assertEquals(jump(0, 121), watch.look(at(181, 181), 60_000));
  }

  @Test
  @DisplayName("looks from the last look on, so that a slow drift is none")
  void drift() {
    for (int minute = 1; minute < 10; minute++) {
      assertEquals(Optional.empty(), watch.look(at(64L * minute, 60L * minute), 60_000));
      watch.seen(at(64L * minute, 60L * minute));
    }
  }
}
