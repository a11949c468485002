package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Dialled;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Torque;

/** What is said about values and heights; every value is invented. */
class EngineeringTalkTest {
  private static final Moment NOW =
      new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);

  private final List<SessionEvent> events = new ArrayList<>();
  private Session session;

  private String say(String words) {
    Decision decision =
        Decider.decide(
            session,
            Interpreter.interpret(RecognisedPhrase.typed(words), Decider.heard(session), 0.5),
            NOW);
    events.addAll(decision.events());
    session = session.after(decision.events());
    return decision.reply().text();
  }

  private void begin(Optional<RideHeight> rideHeight, Step... steps) {
    Procedure sample =
        SampleProcedures.procedure(new WorkPhase("tighten", Each.SIDE, List.of(steps)));
    session =
        Session.start(
            Walk.of(
                new Procedure(
                    sample.about(),
                    sample.cautions(),
                    sample.tools(),
                    rideHeight,
                    sample.phases())));
    say("cautions understood");
  }

  private static Step nut(Stage... stages) {
    return SampleProcedures.fasten(
        "nut",
        new Fastener.Part(Hardware.NUT, false, Lubrication.OILED),
        LoadCondition.ANY,
        List.of(new Variant(Optional.empty(), List.of(stages))));
  }

  @Nested
  @DisplayName("with an adaptor on the wrench")
  class WithAnAdaptor {
    private final Stage stage =
        new Stage.TorqueStage(
            Torque.newtonMetres("84"),
            new BigDecimal("4"),
            Optional.of(
                new Dialled(
                    Torque.newtonMetres("74"),
                    new BigDecimal("420"),
                    new BigDecimal("55"),
                    BigDecimal.ZERO)),
            Stage.TorqueStage.Form.NOMINAL);

    @Test
    void theSettingToDialIsReadAloudAndTheLogHoldsBoth() {
      begin(Optional.empty(), nut(stage));
      assertTrue(say("say again").contains("adaptor on, set the wrench to seven four newton"));
      assertTrue(say("torque reached 84").startsWith("I heard eight four."));
      say("torque reached 74");
      assertTrue(
          events.stream()
              .anyMatch(
                  e ->
                      e instanceof SessionEvent.StageClosed closed
                          && closed
                              .value()
                              .equals("84 N·m, wrench set to 74 N·m with the adaptor")));
    }

    @Test
    void theQuestionIsAnsweredWithBothValues() {
      begin(Optional.empty(), nut(stage));
      assertEquals(
          "Set the wrench to seven four newton metres. Eight four newton metres at the fastener.",
          say("what is the wrench setting"));
    }
  }

  @Nested
  @DisplayName("taken up again")
  class TakenUpAgain {
    private Phase afterMinutes(long minutes) {
      begin(Optional.empty(), SampleProcedures.bushBolt("bush"));
      say("new bolt fitted");
      say("head marking ten point nine");
      say("that is correct");
      say("knuckle jacked body lifting");
      say("left side at ride height");
      assertEquals(Phase.TORQUE, session.phase());
      Decision up = Decider.takeUp(session, "test", java.time.Duration.ofMinutes(minutes));
      return session.after(up.events()).phase();
    }

    @Test
    void soonTheLoadIsToBeConfirmedAgain() {
      assertEquals(Phase.GATE, afterMinutes(0));
    }

    @Test
    void laterTheLoadIsToBeConfirmedAgain() {
      assertEquals(Phase.GATE, afterMinutes(3));
    }
  }

  @Nested
  @DisplayName("asked about a value")
  class AskedAboutAValue {
    @Test
    void newtonMetresAreShownInFootPounds() {
      begin(Optional.empty(), nut(SampleProcedures.torque("110")));
      assertEquals(
          "One one zero newton metres is about eight one point one foot pounds."
              + " The specification is in newton metres.",
          say("what is that in foot pounds"));
    }

    @Test
    void aKnownClassAndFrictionGiveARangeOfClampForce() {
      Step bolt =
          SampleProcedures.fasten(
              "bolt",
              new Fastener.Part(Hardware.BOLT, false, Lubrication.OILED),
              LoadCondition.ANY,
              List.of(
                  SampleProcedures.variant(
                      "8.8",
                      List.of(SampleProcedures.torque("68"), SampleProcedures.angle("90")))));
      begin(Optional.empty(), bolt);
      say("head marking eight point eight");
      say("that is correct");
      String why = say("why this value");
      assertTrue(why.contains("M 12 by 1.5, head marking eight point eight."), why);
      assertTrue(why.matches(".*clamps with about [0-9]+ to [0-9]+ kilonewtons\\."), why);
      say("torque reached 68");
      assertTrue(say("why this value").contains("needs data of the joint"));
    }

    @Test
    void anUnknownClassIsSaidToBeUnknown() {
      begin(Optional.empty(), nut(SampleProcedures.torque("110")));
      assertTrue(say("why this value").contains("clamp force is not known"));
    }
  }

  @Nested
  @DisplayName("when an arch height is called")
  class WhenAnArchHeightIsCalled {
    private void beginAt(String presetLimit, String tolerance) {
      beginAt(presetLimit, tolerance, "1");
    }

    private void beginAt(String presetLimit, String tolerance, String ratio) {
      RideHeight.Arm arm =
          new RideHeight.Arm(
              new BigDecimal("350"),
              new BigDecimal("-10"),
              new BigDecimal("-100"),
              new BigDecimal("70"),
              new BigDecimal(presetLimit),
              new BigDecimal(ratio));
      begin(
          Optional.of(new RideHeight(new BigDecimal(tolerance), Optional.of(arm))),
          SampleProcedures.measure("height", true, false),
          SampleProcedures.bushBolt("bush"));
      say("350");
      say("that is correct");
      say("new bolt fitted");
      say("head marking ten point nine");
      say("that is correct");
    }

    @Test
    void theReplyGivesTheDifferenceAndThePresetTwist() {
      beginAt("5", "10");
      assertEquals(
          "Three five eight is eight millimetres high."
              + " The bush would stay twisted one point three degrees."
              + " Read it back: left side at ride height.",
          say("arch height 358"));
    }

    @Test
    void aJointThatMovesHalfAsFarTwistsTheBushHalfAsMuch() {
      beginAt("5", "20", "0.5");
      assertTrue(say("arch height 366").contains("twisted one point three degrees."));
      beginAt("5", "20", "1");
      assertTrue(say("arch height 366").contains("twisted two point six degrees."));
    }

    @Test
    void aHeightOutsideTheToleranceIsRefused() {
      beginAt("5", "10");
      assertTrue(say("arch height 362").startsWith("Not ride height."));
      assertEquals(Phase.GATE, session.phase());
    }

    @Test
    void aTwistAboveTheLimitIsRefusedWithinTheTolerance() {
      beginAt("2", "30");
      assertTrue(say("arch height 365").startsWith("Not ride height."));
      assertEquals(Phase.GATE, session.phase());
    }

    @Test
    void aTwistJustAtTheLimitIsTakenAndOneAboveIsNot() {
      beginAt("1.3", "10");
      assertTrue(say("arch height 358").endsWith("left side at ride height."));
      beginAt("1.2", "10");
      assertTrue(say("arch height 358").startsWith("Not ride height."));
    }

    @Test
    void aHeightThatTheArmCannotReachIsRefused() {
      beginAt("5", "100");
      assertTrue(say("arch height 800").startsWith("Not ride height."));
    }
  }
}
