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
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;

@DisplayName("A part that is renewed for a reason")
class ReuseTest {
  private static final Fastener.Part STRETCHED =
      SampleProcedures.part(Set.of(Renewal.YIELDED), Optional.of(SampleProcedures.LENGTH_LIMIT));
  private static final Fastener.Part COUNTED =
      SampleProcedures.part(Set.of(Renewal.SELF_LOCKING), Optional.of(SampleProcedures.THREE_USES));

  private static Step step(String id, Fastener.Part part) {
    return SampleProcedures.fasten(
        id,
        part,
        LoadCondition.ANY,
        List.of(
            new Variant(
                Optional.empty(),
                List.of(SampleProcedures.torque("52"), SampleProcedures.angle("60")))));
  }

  private static Bay bay(Step... steps) {
    return Bay.working(
        Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(steps)))));
  }

  private static boolean hardware(Bay bay) {
    return !bay.recorded(SessionEvent.NewHardwareFitted.class).isEmpty()
        || !bay.recorded(SessionEvent.ReuseNoted.class).isEmpty();
  }

  @Nested
  @DisplayName("up to a length")
  class Length {
    @Test
    @DisplayName("is fitted again once its length was read back")
    void within() {
      Bay bay = bay(step("head", STRETCHED));
      bay.goes(
          """
          > say again
          < Step one. head title.
          < Fit a new bolt, and say: new bolt fitted. Or measure it, at most five two point five millimetres, and say: length, and the value.
          > what is it for
          < It was stretched into yield.
          < Longer than five two point five millimetres, it is used up.
          > length five two point three
          < Length five two point three millimetres.
          < Say: that is correct.
          > torque reached five two
          < Not yet.
          < Length five two point three millimetres.
          < Say: that is correct.
          < Or say: that was wrong.
          > that is correct
          < Noted.
          < Stage one of two: torque, five two newton metres.
          """);
      assertEquals("REUSE_NOTED", bay.last());
    }

    @Test
    @DisplayName("is refused when it is too long, or no length that it can have")
    void outside() {
      Bay bay = bay(step("head", STRETCHED));
      bay.goes(
          """
          > length five two point six
          < Too long. Fit a new bolt.
          > length five point three
          < Five point three is too short for it. Measure again.
          > length five two point three inches
          < No. Say it in millimetres.
          > torque reached five two
          < No. First fit the new part, and say so.
          > length five two point five
          < Length five two point five millimetres.
          < Say: that is correct.
          > no five two point six
          < Too long. Fit a new bolt.
          > that is correct
          < Say again.
          > new bolt fitted
          < New hardware noted.
          < Stage one of two: torque, five two newton metres.
          """);
      assertEquals(3, bay.recorded(SessionEvent.ReuseRefused.class).size());
      assertTrue(bay.recorded(SessionEvent.ReuseNoted.class).isEmpty());
    }

    @Test
    @DisplayName("is kept when it is called again, and denied or taken back it is asked for again")
    void again() {
      Bay bay = bay(step("head", STRETCHED));
      bay.goes(
          """
          > length five two point three
          < Length five two point three millimetres.
          < Say: that is correct.
          > length is five two point four
          < Length five two point four millimetres.
          < Correct?
          > length is five two point four
          < Noted.
          < Stage one of two: torque, five two newton metres.
          > cancel that
          < Taken back. This step is open.
          < New bolt, or measure it: at most five two point five.
          > length five two point four
          < Length five two point four millimetres.
          < Correct?
          > that was wrong
          < Forget that, then.
          < New bolt, or measure it: at most five two point five.
          """);
    }

    @Test
    @DisplayName("is measured again when it was turned through its angle and opened or loosened")
    void measuredAnew() {
      Bay bay =
          bay(step("head", STRETCHED))
              .after("length five two point three", "that is correct", "torque reached 52");
      bay.goes(
          """
          > fully loosened
          < Loose. It was turned: fit a new one.
          < New bolt, or measure it: at most five two point five.
          > torque reached five two
          < No. First fit the new part, and say so.
          > length five two point four
          < Length five two point four millimetres.
          < Correct?
          > that is correct
          < Torque five two, then six zero degrees.
          > torque reached five two
          < Six zero degrees.
          > angle turned six zero
          < Closed.
          < All steps are closed. Say: end of work.
          > open step one again
          < Reopened. Loosen it and start again.
          < Head title.
          < New bolt, or measure it: at most five two point five.
          """);
    }

    @Test
    @DisplayName("of a set is that of the longest, all measured")
    void ofSet() {
      Bay bay = bay(SampleProcedures.set(step("head", STRETCHED), 5, List.of()));
      bay.goes(
          """
          > length five two point three
          < All measured, the longest five two point three millimetres.
          < Say: that is correct.
          > that was wrong
          < Forget that, then.
          < Five new bolts, or measure all: at most five two point five.
          > length five two point eight
          < Too long. Fit five new bolts.
          """);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "same bolt",
          "old bolt",
          "old bolt fitted",
          "old one is fine",
          "same bolt again",
          "it is new",
          "it's new",
          "bolt is good",
          "length is fine",
          "length is okay",
          "length",
          "not new",
          "no new bolt",
          "no new bolt fitted",
          "new bolt not fitted",
          "didn't measure",
          "did not measure it",
          "not measured",
          "five two point three",
          "five two point three millimeters",
          "it reads five two point three",
          "length five two point three newton meters",
          "length not five two point three",
          "length almost five two point three",
          "about five two point three",
          "length is it five two point three",
          "five two newton meters",
          "torque reached five two",
          "it pulls five two point three",
          "arch height five two point three",
          "head marking eight point eight",
          "used once",
          "used twice",
          "second use",
          "yes",
          "done",
          "okay",
          "that is correct",
          "step completed",
          "fitted hand tight",
          "it is repaired now"
        })
    @DisplayName("is not satisfied by anything else that a tired person may say")
    void tired(String said) {
      Bay bay = bay(step("head", STRETCHED));
      bay.after(said);
      assertTrue(!hardware(bay) && bay.recorded(SessionEvent.ReuseCalled.class).isEmpty(), said);
      bay.after("torque reached five two");
      assertTrue(bay.recorded(SessionEvent.ValueCalled.class).isEmpty(), said);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "yes",
          "okay",
          "correct",
          "no",
          "not correct",
          "that is not correct",
          "length is fine",
          "old bolt is fine",
          "new bolt fitted",
          "five two point three",
          "used once",
          "length five two point six"
        })
    @DisplayName("is not kept by a lesser answer to what was read back")
    void readBack(String said) {
      Bay bay = bay(step("head", STRETCHED)).after("length five two point three", said);
      assertTrue(!hardware(bay), said);
    }
  }

  @Nested
  @DisplayName("up to a number of uses")
  class Counted {
    @Test
    @DisplayName("is fitted again once it was read back how often it was used")
    void within() {
      bay(step("hub", COUNTED))
          .goes(
              """
              > say again
              < Step one. hub title.
              < Fit a new nut, and say: new nut fitted. Or, if it was used at most twice before, say: used, and how often.
              > why a new one
              < Its lock wears out.
              < After three times it is used up.
              > used twice
              < Used twice before: this is use three of three.
              < Say: that is correct.
              > that is correct
              < Noted.
              < Stage one of two: torque, five two newton metres.
              """);
    }

    @Test
    @DisplayName("is refused when it is used up, and what was tightened here counts")
    void usedUp() {
      Bay bay = bay(step("hub", COUNTED));
      bay.goes(
          """
          > used three times
          < Used too often. Fit a new nut.
          > used twice
          < Used twice before: this is use three of three.
          < Say: that is correct.
          > that is correct
          < Noted.
          < Stage one of two: torque, five two newton metres.
          > torque reached five two
          < Stage one closed at five two newton metres.
          < Six zero degrees.
          > fully loosened
          < Loose. It was turned: fit a new one.
          < New nut, or used at most twice before?
          > used twice
          < No. With this job it was used at least three times.
          > used three times
          < Used too often. Fit a new nut.
          > new nut fitted
          < Torque five two, then six zero degrees.
          > torque reached five two
          < Six zero degrees.
          > fully loosened
          < Loose. It was turned: fit a new one.
          < New nut, or used at most twice before?
          > used once
          < Used once before: this is use two of three.
          < Correct?
          """);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "second use",
          "used",
          "used before",
          "used often",
          "not used",
          "used maybe once",
          "used two",
          "used bolt fitted",
          "same nut",
          "nut is good",
          "length five two point three",
          "it was used once"
        })
    @DisplayName("is not satisfied by anything else that a tired person may say")
    void tired(String said) {
      Bay bay = bay(step("hub", COUNTED)).after(said);
      assertTrue(!hardware(bay) && bay.recorded(SessionEvent.ReuseCalled.class).isEmpty(), said);
    }
  }

  @Test
  @DisplayName("in any case is asked for new, with the reason on demand")
  void absolute() {
    Fastener.Part glued =
        SampleProcedures.part(Set.of(Renewal.MICRO_ENCAPSULATED, Renewal.MAKER), Optional.empty());
    bay(step("pin", glued))
        .goes(
            """
            > say again
            < Step one. pin title.
            < Fit a new bolt, then say: new bolt fitted.
            > why a new one
            < The glue in its thread works only once.
            < The maker says so.
            > length five two point three
            < No. Only new ones will do: new bolt.
            > used once
            < No. Only new ones will do: new bolt.
            """);
  }

  @Test
  @DisplayName("for its lock is asked for again when it was tightened at all and loosened")
  void lockWears() {
    Fastener.Part lock = SampleProcedures.part(Set.of(Renewal.SELF_LOCKING), Optional.empty());
    Step two =
        SampleProcedures.fasten(
            "pin",
            lock,
            LoadCondition.ANY,
            List.of(
                new Variant(
                    Optional.empty(),
                    List.of(SampleProcedures.torque("52"), SampleProcedures.torque("65")))));
    bay(two)
        .after("new bolt fitted", "torque reached 52")
        .goes(
            """
            > fully loosened
            < Loose. It was turned: fit a new one.
            < New bolt?
            """);
  }
}
