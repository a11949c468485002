package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.term.MeasureUnit;

@DisplayName("Cancel that")
class CancelTest {
  @Nested
  @DisplayName("takes back")
  class TakesBack {
    @Test
    @DisplayName("the value called, then nothing more")
    void value() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
          .goes(
              """
            > seven five
            < Seven five newton metres, matches. Say: torque reached.
            > cancel that
            < Forget that, then.
            > torque reached
            < No. Call the value first: seven five newton metres.
            > take that back
            < Nothing to take back.
            < For an older step say: open step, its number, again.
            """);
    }

    @Test
    @DisplayName("the stage closed last, and the tightening starts again")
    void stage() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("52"), Jobs.degrees("60")))
          .goes(
              """
            > torque reached five two
            < Stage one closed at five two newton metres.
            < Six zero degrees.
            > cancel that
            < Taken back. This step is open.
            < Nut title.
            < Torque five two, then six zero degrees.
            > angle turned six zero
            < No. The torque stage comes first.
            """);
    }

    @Test
    @DisplayName("the step closed last, once")
    void step() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
          .goes(
              """
            > torque reached seven five
            < Stage one closed at seven five newton metres.
            < Look title.
            > cancel that
            < Taken back. This step is open.
            < Nut title.
            < Torque seven five.
            > cancel that
            < Nothing to take back.
            < For an older step say: open step, its number, again.
            > torque reached seven five
            < Closed.
            < Look title.
            """);
    }

    @Test
    @DisplayName("the last step when all are closed")
    void lastOfAll() {
      Bay.working(Jobs.nut(Jobs.newtonMetres("75")))
          .after("torque reached 75", "step completed", "check passed")
          .goes(
              """
            > cancel that
            < Taken back. This step is open.
            < Look title.
            > check passed
            < Say again.
            """);
    }

    @Test
    @DisplayName("what waits for read-back")
    void readBack() {
      Bay bay =
          Bay.working(Jobs.measuring(MeasureUnit.MILLIMETRE, false))
              .goes(
                  """
            > one two
            < One two millimetres.
            < Say: that is correct.
            > cancel that
            < Forget that, then.
            < Millimetres?
            > that is correct
            < Say again.
            """);
      assertEquals(Phase.MEASURE, bay.phase());
    }

    @Test
    @DisplayName("the end of the work")
    void end() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
            > end of work
            < Three steps open. End anyway?
            < Say: that is correct.
            > cancel that
            < Forget that, then.
            > step completed
            < Step closed.
            < Two title.
            """);
    }

    @Test
    @DisplayName("a note, while it is spoken")
    void note() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
            > make a note
            < Speak your note.
            > cancel that
            < Forget that, then.
            > step completed
            < Step closed.
            < Two title.
            """);
    }
  }
}
