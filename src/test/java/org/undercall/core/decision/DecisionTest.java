package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.reply.Reply;
import org.undercall.core.term.LogTrouble;

class DecisionTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  @ParameterizedTest
  @CsvSource({
    "ACCEPTED, false, true, false",
    "ACCEPTED, true, true, false",
    "ASKED, false, true, false",
    "ASKED, true, false, true",
    "REFUSED, false, false, false",
    "IGNORED, true, false, false"
  })
  @DisplayName("A phrase was taken up, or is asked for again because it was not understood")
  void taken(Outcome outcome, boolean notUnderstood, boolean taken, boolean again) {
    SessionEvent event =
        notUnderstood
            ? new SessionEvent.NotUnderstood("X", Optional.empty())
            : new SessionEvent.NoteStarted();
    Decision decision = new Decision(List.of(event), Reply.SILENCE, outcome);
    assertEquals(taken, decision.isTaken());
    assertEquals(again, decision.isAskedAgain());
  }

  @Test
  @DisplayName("What is offered is heard, and can come to more than a refusal")
  void offered() {
    for (Phase phase : Phase.values()) {
      Set<IntentKind> expected = EnumSet.noneOf(IntentKind.class);
      for (IntentKind kind : Decider.heard(phase)) {
        if (Table.rule(phase, kind).outcomes().stream()
            .anyMatch(outcome -> outcome != Outcome.REFUSED)) {
          expected.add(kind);
        }
      }
      assertEquals(expected, Decider.offered(phase), phase::toString);
      assertEquals(phase == Phase.ENDED, expected.isEmpty(), phase::toString);
    }
  }

  @Test
  @DisplayName("Nothing is asked after the end, and something before")
  void prompt() {
    Session start = Session.start(Jobs.threeLooks());
    assertNotEquals(Reply.SILENCE, Decider.prompt(start));
    Session end = start.after(new SessionEvent.SessionEnded(false, 3));
    assertEquals(Reply.SILENCE, Decider.prompt(end));
  }

  @Test
  @DisplayName("A log that was not whole is told of when the work is taken up")
  void doubted() {
    Session session = Session.start(Jobs.threeLooks());
    SessionEvent.LogDoubted doubted =
        new SessionEvent.LogDoubted(LogTrouble.LINES_GONE, Optional.of(1));
    Decision up =
        Decider.takeUp(session, "test", Duration.ZERO, Optional.of(doubted), Optional.empty());
    assertEquals(1, up.events().stream().filter(doubted::equals).count());
    Decision plain = Decider.takeUp(session, "test", Duration.ZERO);
    assertEquals(plain.reply().sentences().size() + 1, up.reply().sentences().size());
  }

  @Test
  @DisplayName("The time of a step and of the work grows at work, not on hold or when closed")
  void elapsed() {
    Session session = Session.start(Jobs.threeLooks());
    session = session.after(at(0, new SessionEvent.CautionsUnderstood()));
    assertEquals(new Elapsed(5000, 5000, true), session.elapsed(moment(5)));
    session = session.after(at(10, new SessionEvent.StepClosed(session.ref())));
    assertEquals(new Elapsed(10_000, 10_000, false), session.elapsed(moment(60)));
    session =
        session.after(at(60, new SessionEvent.StepEntered(session.walk().places().get(1).ref())));
    session = session.after(at(70, new SessionEvent.WorkHeld()));
    assertEquals(new Elapsed(20_000, 10_000, false), session.elapsed(moment(100)));
    session = session.after(at(100, new SessionEvent.WorkResumed()));
    assertEquals(new Elapsed(23_000, 13_000, true), session.elapsed(moment(103)));
    assertEquals(100_000, session.quietSince());
  }

  private static Moment moment(long second) {
    return new Moment(START.plusSeconds(second), 1000 * second);
  }

  private static Recorded at(long second, SessionEvent event) {
    return new Recorded(second + 1, moment(second), Optional.empty(), List.of(event), "Said.");
  }
}
