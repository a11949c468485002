package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;

@DisplayName("Somebody who did not measure, lost count or does not know")
class LostCountTest {
  private static final Fastener.Part STRETCHED =
      SampleProcedures.part(Set.of(Renewal.YIELDED), Optional.of(SampleProcedures.LENGTH_LIMIT));
  private static final Fastener.Part COUNTED =
      SampleProcedures.part(Set.of(Renewal.SELF_LOCKING), Optional.of(SampleProcedures.THREE_USES));
  private static final Fastener.Part PLAIN =
      new Fastener.Part(Hardware.BOLT, false, Lubrication.OILED);

  private static Step step(String id, Fastener.Part part, Stage... stages) {
    return SampleProcedures.fasten(
        id, part, LoadCondition.ANY, List.of(new Variant(Optional.empty(), List.of(stages))));
  }

  private static Bay bay(Each each, Step... steps) {
    return Bay.working(
        Walk.of(SampleProcedures.procedure(new WorkPhase("work", each, List.of(steps)))));
  }

  private static Bay used(Fastener.Part part) {
    Stage torque = SampleProcedures.torque("52");
    return bay(Each.CAR, step("head", part, torque, SampleProcedures.angle("60")));
  }

  /** A closed fastener with a band for the torque after its angle, and one that is open. */
  private static Bay turned() {
    return bay(
            Each.CAR,
            step(
                "pin",
                PLAIN,
                SampleProcedures.torque("52"),
                SampleProcedures.banded("60", "100", "160")),
            step("hub", PLAIN, SampleProcedures.torque("117")))
        .after("torque reached 52", "angle turned 60");
  }

  private static boolean fitted(Bay bay) {
    return !bay.recorded(SessionEvent.NewHardwareFitted.class).isEmpty()
        || !bay.recorded(SessionEvent.ReuseNoted.class).isEmpty();
  }

  private static void requireStillAsked(Bay bay, String said) {
    assertTrue(!fitted(bay), said);
    assertTrue(bay.recorded(SessionEvent.ReuseCalled.class).isEmpty(), said);
    bay.after("torque reached five two", "that is correct");
    assertTrue(bay.recorded(SessionEvent.ValueCalled.class).isEmpty(), said);
    bay.after("new bolt fitted");
    assertTrue(fitted(bay), said + ": a new one can still be fitted");
  }

  @Nested
  @DisplayName("of a length")
  class OfLength {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "i don't know",
          "don't know",
          "no idea",
          "not sure",
          "no caliper",
          "caliper is missing",
          "length not known",
          "length unknown",
          "length is unknown",
          "length not measured",
          "length was not measured",
          "did not measure the length",
          "length later",
          "length same as the other side",
          "same as other side",
          "same as left",
          "as before",
          "length as before",
          "length is the same",
          "length about five two",
          "length between five two and five three",
          "length five two point",
          "length point three",
          "length zero",
          "length minus five two",
          "length five two or five three",
          "length five two centimeters",
          "length five point two three centimeters",
          "length five two degrees",
          "length five two inches",
          "length two inches",
          "length five hundred twenty three",
          "length five two five",
          "length nine nine nine nine nine",
          "length one",
          "length four seven",
          "length within limit",
          "length is good",
          "length five two is it okay",
          "not length five two point three",
          "length isn't five two point three",
          "length wasn't five two point three",
        })
    @DisplayName("must still fit a new one")
    void length(String said) {
      requireStillAsked(used(STRETCHED).after(said), said);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "i don't know",
          "not sure",
          "i think so",
          "maybe",
          "probably",
          "it should be",
          "more or less",
          "same as other side",
          "measured",
          "length is okay",
          "that is correct i think",
          "that is not correct",
          "is that correct",
          "yes that is it",
          "step completed",
          "five two point three",
        })
    @DisplayName("confirms no length that was read back")
    void readBack(String said) {
      Bay bay = used(STRETCHED).after("length five two point three", said);
      assertTrue(!fitted(bay), said);
    }

    @Test
    @DisplayName("is told what to do when asked again and again")
    void toldAgain() {
      used(STRETCHED)
          .goes(
              """
              > length two inches
              < No. Say it in millimetres.
              > length four seven
              < Four seven is too short for it. Measure again.
              > length five point two three
              < Five point two three is too short for it. Measure again.
              > new bolt fitted
              < New hardware noted.
              < Stage one of two: torque, five two newton metres.
              """);
    }

    @Test
    @DisplayName("on one side has not measured on the other")
    void otherSide() {
      Stage torque = SampleProcedures.torque("52");
      Bay bay = bay(Each.SIDE, step("head", STRETCHED, torque, SampleProcedures.angle("60")));
      bay.after(
          "length five two point three",
          "that is correct",
          "torque reached 52",
          "angle turned 60",
          "same as other side",
          "length same as left",
          "that is correct",
          "torque reached 52");
      assertEquals(1, bay.recorded(SessionEvent.ReuseNoted.class).size());
      assertEquals(1, bay.recorded(SessionEvent.StepClosed.class).size());
    }
  }

  @Nested
  @DisplayName("of its uses")
  class OfUses {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "i lost count",
          "lost count",
          "don't know",
          "used don't know",
          "used i don't know",
          "used not sure",
          "used a few times",
          "used some times",
          "used several times",
          "used many times",
          "used often",
          "used once or twice",
          "used twice i think",
          "used maybe twice",
          "used about twice",
          "used never",
          "never used",
          "not used once",
          "used not twice",
          "used zero times",
          "used ten times",
          "used nine times",
          "used two",
          "used two times",
          "used two newton meters",
          "used last time",
          "used same as other side",
          "same as other side",
          "used on the other side",
          "used as often as left",
          "second time",
          "was it used twice",
          "wasn't used twice",
          "length one",
          "two",
          "twice",
        })
    @DisplayName("must still fit a new one")
    void uses(String said) {
      requireStillAsked(used(COUNTED).after(said), said);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "i lost count",
          "i think so",
          "maybe",
          "not sure",
          "used",
          "twice",
          "two",
          "yes"
        })
    @DisplayName("confirms no number that was read back")
    void readBack(String said) {
      Bay bay = used(COUNTED).after("used twice", said);
      assertTrue(!fitted(bay), said);
    }

    @Test
    @DisplayName("says another number to what was read back, and that one is read back")
    void another() {
      used(COUNTED)
          .goes(
              """
              > used once
              < Used once before: this is use two of three.
              < Say: that is correct.
              > used twice
              < Used twice before: this is use three of three.
              < Correct?
              > that is correct
              < Noted.
              < Stage one of two: torque, five two newton metres.
              """);
    }
  }

  @Nested
  @DisplayName("of the torque after an angle")
  class OfLastTorque {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "i don't know",
          "did not look",
          "no reading",
          "final torque not read",
          "final torque unknown",
          "final torque okay",
          "final torque is fine",
          "final torque same as other side",
          "same as other side",
          "same as before",
          "final torque about nine zero",
          "final torque almost nine zero",
          "final torque between nine zero and one hundred",
          "final torque nine zero degrees",
          "final torque nine zero foot pounds",
          "final torque nine zero inch pounds",
          "final torque nine zero kilos",
          "final torque not nine zero",
          "final torque",
          "it pulls",
          "it pulls hard",
          "it pulls fine",
          "it pulls about nine zero",
          "it pulls nine zero or so",
          "it pulled nine zero",
          "does it pull nine zero",
          "it doesn't pull nine zero",
          "it pulls more",
          "it pulls like the other side",
          "felt soft",
          "feels tight",
        })
    @DisplayName("leaves everything as it was")
    void torque(String said) {
      Bay bay = turned().after(said);
      assertTrue(bay.recorded(SessionEvent.FinalTorqueCalled.class).isEmpty(), said);
      bay.after("that is correct");
      assertTrue(bay.recorded(SessionEvent.FinalTorqueNoted.class).isEmpty(), said);
      assertEquals("pin", bay.closed(), said);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "i don't know",
          "i think so",
          "maybe",
          "yes",
          "okay",
          "that is not correct",
          "same as other side",
          "nine zero",
          "it is fine",
        })
    @DisplayName("keeps none that was read back")
    void readBack(String said) {
      Bay bay = turned().after("final torque nine zero", said);
      assertTrue(bay.recorded(SessionEvent.FinalTorqueNoted.class).isEmpty(), said);
      assertEquals("pin", bay.closed(), said);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "i don't know",
          "maybe",
          "yes",
          "no",
          "okay",
          "that is correct",
          "it is fine",
          "thread is fine",
          "thread is okay",
          "thread is not stripped",
          "thread isn't stripped",
          "bolt is not yielding",
          "it is not cross threaded",
          "is it cross threaded",
          "is the thread stripped",
          "same as other side",
          "feels stripped",
        })
    @DisplayName("has hints that open nothing unless they are said to be so")
    void hint(String said) {
      Bay bay = turned().after("final torque nine zero", "that is correct", said, "step completed");
      assertTrue(bay.recorded(SessionEvent.TroubleNoted.class).isEmpty(), said);
      assertEquals("pin", bay.closed(), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "okay", "maybe", "i think so", "not sure", "step completed"})
    @DisplayName("opens nothing by a lesser answer to what went wrong")
    void hintReadBack(String said) {
      Bay bay =
          turned().after("final torque nine zero", "that is correct", "thread is stripped", said);
      assertTrue(bay.recorded(SessionEvent.TroubleNoted.class).isEmpty(), said);
      assertEquals("pin", bay.closed(), said);
    }
  }
}
