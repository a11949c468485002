package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.term.LoadCondition;

@DisplayName("The program")
class TimesTest {
  @Nested
  @DisplayName("asked how long it took")
  class Elapsed {
    @Test
    @DisplayName("tells the step and the whole work, pauses apart, also after a restart")
    void pausesApart() {
      Bay.working(Jobs.threeLooks())
          .goes(
              """
              +65
              > how long so far
              < Step one: one minute five at work.
              > take a break now
              < On hold. Say: resume the work.
              +30
              > how long have i worked
              < One minute five at work, and thirty seconds on hold.
              > resume the work
              < Step one. one title.
              +5
              > step completed
              < Step closed.
              < Two title.
              +600
              * off 500
              < Back to work.
              < Step two. two title.
              +10
              > how long did this step take so far
              < Step two: ten minutes ten at work.
              > how long have i worked
              < Eleven minutes twenty at work, and thirty seconds on hold.
              """);
    }
  }

  @Nested
  @DisplayName("in a long quiet")
  class Quiet {
    @Test
    @DisplayName("reminds, then after twice the time, and anew after something was heard")
    void doubled() {
      Bay bay = Bay.working(Jobs.nut(Jobs.newtonMetres("52")));
      assertEquals(Optional.of(600L), bay.reminder(600));
      bay.goes(
          """
          * quiet 600
          < I am still here.
          < Step one, torque stage.
          """);
      assertEquals(Optional.of(600L + 1200), bay.reminder(600));
      bay.goes(
          """
          * quiet 1200
          < I am still here.
          < Step one, torque stage.
          """);
      assertEquals(Optional.of(1800L + 2400), bay.reminder(600));
      bay.after("where am i");
      assertEquals(Optional.of(1800L + 600), bay.reminder(600));
    }

    @Test
    @DisplayName("does not remind on hold, nor while the step's own time runs")
    void notThen() {
      Bay bay = Bay.working(Jobs.waiting()).after("take a break now");
      assertEquals(Optional.empty(), bay.reminder(600));
      bay.after("resume the work", "start the timer");
      assertEquals(Optional.empty(), bay.reminder(600));
      bay.after("stop the timer");
      assertEquals(Optional.of(600L), bay.reminder(600));
    }
  }

  @Nested
  @DisplayName("with steps put off")
  class PutOff {
    @Test
    @DisplayName("says once that one put off for ride height is possible when the car stands there")
    void possibleNow() {
      Bay.working(
              Jobs.car(
                  Jobs.wait("settle", 300),
                  SampleProcedures.doStep("look", false, false),
                  Jobs.fastener("bush", LoadCondition.RIDE_HEIGHT, Jobs.newtonMetres("52"))))
          .after("go to step two")
          .goes(
              """
              > put off for ride height
              < Put off for ride height. It stays open.
              < Bush title.
              < Not yet. Confirm ride height, whole car.
              > wheels carry the car
              < Whole car, wheels carry the car.
              < Read it back: whole car at ride height.
              > whole car at ride height
              < Ride height confirmed, whole car.
              < Possible now: look title.
              < Torque, five two newton metres.
              """);
    }
  }
}
