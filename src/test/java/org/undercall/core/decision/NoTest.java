package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Side;

@DisplayName("A no")
class NoTest {
  private static Bay measuring() {
    return Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false));
  }

  @Nested
  @DisplayName("while something waits to be read back")
  class ReadBack {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "no",
          "nope",
          "wrong",
          "negative",
          "no no no",
          "no wait",
          "no that's wrong",
          "no that is wrong",
          "that was wrong",
          "that's not right",
          "that is not correct"
        })
    @DisplayName("drops it, in whatever words")
    void drops(String words) {
      for (Bay bay : List.of(measuring().after("one two"), measuring().after("end of work"))) {
        assertEquals("Forget that, then.", bay.after().say(words).get(0), words);
        assertEquals(Phase.MEASURE, bay.phase());
      }
      Bay load = Bay.working(Jobs.nutAndBush()).after("torque reached 75", "wheels carry the car");
      load.say(words);
      assertEquals(Phase.GATE, load.phase(), words);
      Bay job = Bay.briefing(Jobs.threeLooks()).after("job number one two");
      job.say(words);
      assertEquals(Phase.BRIEFING, job.phase(), words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"no left", "no right", "no left side", "no right side"})
    @DisplayName("with a side drops it, and the side is not taken")
    void side(String words) {
      Bay bay = Bay.working(Jobs.nutAndBush()).after("torque reached 75", "wheels carry the car");
      bay.goes(
          """
          > %s
          < Forget that, then.
          < Not yet. Confirm ride height, left.
          """
              .formatted(words));
      assertTrue(bay.recorded(SessionEvent.LoadConfirmed.class).isEmpty());
    }

    @Test
    @DisplayName("with the whole read-back after it is a denial")
    void wholeReadBack() {
      Bay bay = Bay.working(Jobs.nutAndBush()).after("torque reached 75", "wheels carry the car");
      bay.say("no left side at ride height");
      assertEquals(Phase.GATE, bay.phase());
      assertTrue(bay.recorded(SessionEvent.LoadConfirmed.class).isEmpty());
    }

    @Test
    @DisplayName("with a value drops it, and the value is read back as any is")
    void value() {
      measuring()
          .after("one two")
          .goes(
              """
              > no one five
              < One five.
              < Correct?
              > no one five
              < One five.
              < Correct?
              > no one six inches
              < No. Call it in millimetres.
              > one six
              < One six.
              < Correct?
              > that is correct
              < Noted.
              < Look title.
              """);
    }

    @Test
    @DisplayName("with a number of one word is left alone, or asked for with its unit")
    void oneWord() {
      measuring()
          .after("one two")
          .goes(
              """
              > no one
              > no fifteen
              < Say it with the unit, or after: it reads.
              > no fifteen millimeters
              < One five.
              < Correct?
              """);
    }

    @Test
    @DisplayName("with a value at a stage keeps or refuses it, and closes nothing")
    void stage() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("75"), Jobs.degrees("60")));
      bay.after("torque reached seven five")
          .goes(
              """
              > angle turned six one
              < Six one degrees, one over.
              < Say: that is correct.
              > no six zero
              < Six zero degrees, matches. Say: angle turned.
              > angle turned six one
              < Six one degrees, one over.
              < Correct?
              > no nine zero
              < I heard nine zero.
              < Spec is six zero degrees.
              < If it is past that, say: turned too far.
              """);
      assertEquals(Phase.ANGLE, bay.phase());
    }

    @Test
    @DisplayName("with another head marking reads that one back")
    void marking() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted", "head marking eight point eight")
          .goes(
              """
              > no ten point nine
              < Ten point nine.
              < Correct?
              > no twelve point nine
              < This procedure has no torque for twelve point nine.
              < Check the bolt.
              > no ten point nine
              < Say again.
              > head marking ten point nine
              < Ten point nine.
              < Correct?
              > no ten
              > no one five
              < Forget that, then.
              < Head marking?
              """);
    }

    @Test
    @DisplayName("alone never opens a closing that is asked about; the whole phrase does")
    void later() {
      Bay bay =
          Bay.working(Jobs.threeLooks())
              .after("step completed", "step completed", "step completed", "open step one again")
              .goes(
                  """
                  > no
                  < Closed after it: two title; three title.
                  < Is that still good?
                  < Correct?
                  > no one five
                  < Closed after it: two title; three title.
                  < Is that still good?
                  < Correct?
                  """);
      assertEquals("two three", bay.closed());
      bay.say("no that is wrong");
      assertEquals("", bay.closed());
    }
  }

  @Nested
  @DisplayName("where nothing was read back")
  class Elsewhere {
    @ParameterizedTest
    @ValueSource(strings = {"no", "wrong", "no no", "nope", "negative", "no wait"})
    @DisplayName("says how to take something back, and changes nothing")
    void nothing(String words) {
      Bay bay = Bay.working(Jobs.threeLooks()).after("step completed");
      assertEquals(
          "Nothing changed. To take the last one back, say: that was wrong.",
          String.join(" ", bay.say(words)));
      assertEquals(StepState.Status.CLOSED, bay.status("one", Side.CAR));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "negative", "wrong", "no no no"})
    @DisplayName("at a check question is asked what it means, and answers nothing")
    void check(String words) {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("75")));
      bay.after("torque reached 75", "step completed");
      assertEquals(List.of("Check has failed, or check passed?"), bay.say(words));
      assertEquals(Phase.CHECK, bay.phase());
      assertTrue(bay.recorded(SessionEvent.CheckAnswered.class).isEmpty());
    }

    @Test
    @DisplayName("in a pause says how to go on")
    void held() {
      Bay.working(Jobs.threeLooks())
          .after("take a break now")
          .goes(
              """
              > no
              < That is too short to count. Say: resume the work.
              > that was wrong
              < Say again.
              """);
    }

    @Test
    @DisplayName("in whole words takes back what was said last and nothing older, and says so")
    void takesBack() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
          .after("torque reached seven five")
          .goes(
              """
              > that was wrong
              < Taken back. This step is open.
              < Nut title.
              < Torque seven five.
              > no that's wrong
              < Nothing to take back.
              < For an older step say: open step, its number, again.
              """);
    }
  }

  @Nested
  @DisplayName("to the other side")
  class OtherSide {
    @Test
    @DisplayName("is answered with what was said and what is wanted; what was right stays")
    void stays() {
      Bay.working(Jobs.nutAndBush())
          .after("torque reached 75")
          .goes(
              """
              > right side at ride height
              < That was the right side. Left, please.
              > left side at ride height
              < No. First confirm ride height, left.
              > wheels carry the car
              < Left, wheels carry the car.
              < Read it back: left side at ride height.
              > right side at ride height
              < That was the right side. Left, please.
              < Read it back: left side at ride height.
              < Or say: that was wrong.
              > left side at full droop
              < That was full droop. Ride height, please.
              < Read it back: left side at ride height.
              < Or say: that was wrong.
              > left side at ride height
              < Ride height confirmed, left.
              < Torque five two.
              """);
    }
  }
}
