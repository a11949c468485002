package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Occasion;

@DisplayName("What a session was begun for")
class OriginTest {
  private static final SessionEvent.SessionStarted OLD =
      new SessionEvent.SessionStarted("t", "1", "s", "v");

  /** A log with an answer of each of these kinds. */
  private static List<Recorded> log(SessionEvent.SessionStarted started, String... hows) {
    List<Recorded> log = new ArrayList<>(new LogMaker().at(0, started).log());
    for (String how : hows) {
      log.add(decision(log.size(), how, new SessionEvent.Asked("what is left")));
    }
    return log;
  }

  private static Recorded decision(int before, String how, SessionEvent event) {
    Recorded one = new LogMaker().heard(before, "x", event).log().get(0);
    return new Recorded(
        before + 1L, one.at(), Optional.of(new Recorded.Heard("x", "x", 1, how)), one.events(), "");
  }

  @ParameterizedTest
  @EnumSource(Occasion.class)
  @DisplayName("is what its first line tells, however it was answered")
  void told(Occasion occasion) {
    Origin origin = Origin.of(log(OLD.with(occasion), "typed", "typed"));
    assertEquals(occasion, origin.occasion());
    assertEquals(occasion == Occasion.WORK, origin.isRecord());
  }

  @Test
  @DisplayName("is a rehearsal in an old log in which all was typed and nothing spoken")
  void old() {
    assertFalse(Origin.of(log(OLD, "typed", "pressed")).isRecord());
    assertTrue(Origin.of(log(OLD, "typed", "spoken")).isRecord());
    assertTrue(Origin.of(log(OLD, "pressed")).isRecord());
    assertTrue(Origin.of(log(OLD)).isRecord());
  }

  @Test
  @DisplayName("has the shares of its answers, without what was no phrase")
  void shares() {
    List<Recorded> log = log(OLD, "spoken", "spoken", "typed", "pressed");
    log.add(decision(9, "spoken", new SessionEvent.NotUnderstood("CHATTER")));
    Origin origin = Origin.of(log);
    assertEquals(new Origin(Optional.empty(), 2, 1, 1), origin);
    assertEquals(50, origin.percent(origin.spoken()));
    assertEquals(25, origin.percent(origin.typed()));
    assertEquals(0, origin.percent(0));
    assertEquals(1, new Origin(Optional.empty(), 500, 1, 0).percent(1));
  }
}
