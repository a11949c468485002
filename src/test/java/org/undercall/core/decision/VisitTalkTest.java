package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.term.Job;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;

@DisplayName("A visit, as it is spoken")
class VisitTalkTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private Session session;
  private String said = "";
  private long seq;

  private static Optional<Measure> km(String amount) {
    return Optional.of(new Measure(new BigDecimal(amount), MeasureUnit.KILOMETRE));
  }

  private void begin(Optional<Measure> before, Optional<Measure> now) {
    Session fresh = Session.start(Jobs.threeLooks());
    Job job =
        new Job(Optional.of("INV 123"), Optional.empty(), now, Optional.empty(), Optional.empty());
    SessionEvent.VisitBegun visit =
        new SessionEvent.VisitBegun(
            "first", "00", Optional.of("INV 123"), Optional.of("1M8GDM9AXKP042788"), before);
    session = fresh;
    take(
        Decider.begin(
            fresh,
            new SessionEvent.SessionStarted("title", "1", "00", "test", job),
            Optional.of(visit),
            Optional.empty()));
  }

  private void take(Decision decision) {
    seq++;
    said = decision.reply().text();
    Moment at = new Moment(START.plusSeconds(seq), 1000 * seq);
    session = session.after(new Recorded(seq, at, Optional.empty(), decision.events(), said));
  }

  private String say(String phrase) {
    take(
        Decider.decide(
            session,
            Interpreter.interpret(RecognisedPhrase.typed(phrase), Decider.heard(session), 0),
            new Moment(START.plusSeconds(seq + 1), 1000 * (seq + 1))));
    return said;
  }

  @Test
  @DisplayName("says first what it is, and how the odometer stood")
  void begins() {
    begin(km("84210"), km("84260"));
    assertTrue(
        said.startsWith(
            "A visit to re-torque what was tightened before. Odometer then: eight four two one"
                + " zero kilometres. Sample."),
        said);
    assertTrue(!said.contains("lower"), said);
  }

  @Test
  @DisplayName("warns of an odometer that is lower, as given and as told")
  void lower() {
    begin(km("84210"), km("84100"));
    assertTrue(said.contains("The odometer is lower than then"), said);
    say("odometer eight four one one zero");
    String kept = say("that is correct");
    assertTrue(kept.startsWith("Kept. The odometer is lower than then"), kept);
    say("odometer eight four two six zero");
    assertEquals("Kept.", say("that is correct"));
  }

  @Test
  @DisplayName("says nothing of an odometer that was not known then")
  void unknown() {
    begin(Optional.empty(), Optional.empty());
    assertTrue(!said.contains("dometer"), said);
    say("odometer one two");
    assertEquals("Kept.", say("that is correct"));
  }

  @Test
  @DisplayName("refuses the plate and the vehicle number of another car")
  void otherCar() {
    begin(Optional.empty(), Optional.empty());
    String refused = say("registration india november victor one two four");
    assertTrue(refused.contains("This would be another car."), refused);
    assertEquals(Phase.BRIEFING, session.phase());
    assertTrue(say("vehicle number bravo bravo bravo").contains("another car"), said);
    say("registration india november victor one two three");
    assertEquals("Kept.", say("that is correct"));
  }

  @Test
  @DisplayName("is begun in the first line, and only once")
  void once() {
    begin(Optional.empty(), Optional.empty());
    SessionEvent again =
        new SessionEvent.VisitBegun(
            "other", "00", Optional.empty(), Optional.empty(), Optional.empty());
    assertTrue(Order.expected(session, again).isPresent());
    assertEquals(
        List.of("first"),
        session.account().visit().stream().map(SessionEvent.VisitBegun::session).toList());
  }
}
