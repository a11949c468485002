package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A one-time-use bolt")
class ReopenedTest {
  @Nested
  @DisplayName("opened again")
  class Reopened {
    @Test
    @DisplayName("counts as loosened and needs newer hardware and its marking")
    void loosened() {
      Bay bay =
          Bay.working(SampleProcedures.bushOnBothSides())
              .after(
                  "new bolt fitted",
                  "head marking 10.9",
                  "that is correct",
                  "wheels carry the car",
                  "left side at ride height",
                  "torque reached 117")
              .goes(
                  """
            > go to step one
            < Step one, left, bush title.
            < This step is closed.
            > open this step again
            < Open again. It counts as loosened.
            < Step one, left, bush title.
            < Fit a new bolt. Then say: new bolt fitted.
            > torque reached one one seven
            < No. New hardware is not confirmed.
            > new bolt fitted
            < New hardware noted.
            < Read out the head marking.
            > torque reached one one seven
            < No. The head marking is missing.
            > head marking ten point nine
            < Head marking ten, point, nine. Say: that is correct.
            > that is correct
            < Head marking ten, point, nine kept.
            < Needs ride height, left side. Not confirmed.
            """);
      assertEquals("", bay.closed());
    }

    @Test
    @DisplayName("taken back only has its record corrected the record: hardware and marking stay")
    void takenBack() {
      Bay bay =
          Bay.working(SampleProcedures.bushOnBothSides())
              .after(
                  "new bolt fitted",
                  "head marking 10.9",
                  "that is correct",
                  "wheels carry the car",
                  "left side at ride height",
                  "torque reached 117")
              .goes(
                  """
            > cancel that
            < Taken back. This step is open.
            < Step one, left, bush title.
            < Needs ride height, left side. Not confirmed.
            > wheels carry the car
            < Left side, wheels carry the car.
            < Read back: left side at ride height.
            > left side at ride height
            < Ride height confirmed, left side.
            < Stage one of one: torque, one, one, seven newton metres.
            > torque reached one one seven
            < Stage one closed at one, one, seven newton metres.
            < Other side. The load confirmation is cancelled.
            < Step two, right, bush title.
            < Fit a new bolt. Then say: new bolt fitted.
            """);
      assertEquals("bush/left", bay.closed());
    }

    @Test
    @DisplayName("is refused when it is not closed, or does not exist")
    void notClosed() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .goes(
              """
            > open step two again
            < No. That step is not closed.
            > open step nine again
            < No. There is no such step.
            """);
    }
  }
}
