package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

@DisplayName("Where the work stands, an event that the program would not write there")
class OrderTest {
  private static final Moment NOW =
      new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);
  private static final StepRef LOOK = new StepRef("look", Side.LEFT);
  private static final StepRef BUSH = new StepRef("bush", Side.LEFT);
  private static final StepRef NUT = new StepRef("nut", Side.LEFT);
  private static final BigDecimal VALUE = new BigDecimal("52");

  private Session session =
      Session.start(
          Walk.of(
              SampleProcedures.procedure(
                  new WorkPhase(
                      "tighten",
                      Each.SIDE,
                      List.of(
                          SampleProcedures.doStep("look", true, false),
                          SampleProcedures.bushBolt("bush"),
                          Jobs.fastener(
                              "nut", LoadCondition.ANY, SampleProcedures.torque("52")))))));

  private void after(String... phrases) {
    for (String phrase : phrases) {
      Decision decision =
          Decider.decide(
              session,
              Interpreter.interpret(RecognisedPhrase.typed(phrase), Decider.heard(session), 0.6),
              NOW);
      session = session.after(decision.events());
    }
  }

  private void refused(String expected, SessionEvent event) {
    assertEquals(Optional.of(expected), Order.expected(session, event), event::toString);
  }

  private void taken(SessionEvent event) {
    assertEquals(Optional.empty(), Order.expected(session, event), event::toString);
  }

  @Test
  @DisplayName("a check question that is open keeps a step from being closed")
  void check() {
    after("cautions understood");
    refused("work that is done", new SessionEvent.CheckAnswered(LOOK, true));
    taken(new SessionEvent.StepClosed(LOOK));
    after("step completed");
    refused("the check question answered", new SessionEvent.StepClosed(LOOK));
    taken(new SessionEvent.CheckAnswered(LOOK, true));
    refused("a step that is closed", new SessionEvent.StepReopened(LOOK));
    refused("what was closed last", new SessionEvent.ClosingTakenBack(LOOK));
    after("check passed");
    taken(new SessionEvent.StepReopened(LOOK));
    taken(new SessionEvent.ClosingTakenBack(LOOK));
    refused("what was closed last", new SessionEvent.ClosingTakenBack(BUSH));
  }

  @Test
  @DisplayName("a head marking that the fastener has not, or that it does not ask for")
  void marking() {
    after("cautions understood", "go to step two", "new bolt fitted");
    HeadMarking other = new HeadMarking("12.9");
    refused("a head marking of the fastener", new SessionEvent.MarkingNoted(BUSH, other));
    refused("a head marking of the fastener", new SessionEvent.MarkingCalled(BUSH, other));
    taken(new SessionEvent.MarkingNoted(BUSH, new HeadMarking("8.8")));
    after("go to step three");
    refused(
        "a head marking of the fastener",
        new SessionEvent.MarkingNoted(NUT, new HeadMarking("8.8")));
  }

  @Test
  @DisplayName(
      "a stage without a value, out of turn, or beyond the last, and a tightening not begun")
  void stages() {
    after("cautions understood", "go to step three");
    refused("a value that was called before", new SessionEvent.ValueDropped(NUT));
    refused("a value that was called before", new SessionEvent.StageClosed(NUT, 1, "52 N·m"));
    refused("a tightening at hand that was begun", new SessionEvent.StagesVoided(NUT));
    refused("all stages closed", new SessionEvent.StepClosed(NUT));
    after("five two");
    taken(new SessionEvent.ValueDropped(NUT));
    taken(new SessionEvent.StageClosed(NUT, 1, "52 N·m"));
    taken(new SessionEvent.StagesVoided(NUT));
    refused("a tightening at hand that was begun", new SessionEvent.StagesVoided(BUSH));
    refused("the stage that is next", new SessionEvent.StageClosed(NUT, 2, "52 N·m"));
    session = session.after(new SessionEvent.StageClosed(NUT, 1, "52 N·m"));
    taken(new SessionEvent.StagesVoided(NUT));
    refused("the stage that is next", new SessionEvent.ValueCalled(NUT, 2, VALUE));
    taken(new SessionEvent.StepClosed(NUT));
  }

  @Test
  @DisplayName("anything about the other side, or between a read-back and its answer")
  void readBack() {
    after("cautions understood", "go to step two", "new bolt fitted", "head marking 8.8");
    refused("no read-back that is not answered", new SessionEvent.StepEntered(NUT));
    refused("no read-back that is not answered", new SessionEvent.FastenerSnug(BUSH));
    after("that is correct");
    refused(
        "the side at hand",
        new SessionEvent.LoadConfirmed(
            Side.RIGHT,
            LoadCondition.RIDE_HEIGHT,
            LoadProof.WHEELS_CARRY_THE_CAR,
            Optional.empty()));
    refused("work that is held", new SessionEvent.WorkResumed());
    refused("a count from 1 to 3", new SessionEvent.NotUnderstood("X", Optional.of(0)));
    refused("a count from 1 to 3", new SessionEvent.NotUnderstood("X", Optional.of(4)));
    taken(new SessionEvent.NotUnderstood("X", Optional.of(3)));
  }
}
