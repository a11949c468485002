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
            < Left. bush title.
            < This step is closed.
            > open this step again
            < Reopened. Loosen it and start again.
            < Left. bush title.
            < New bolt?
            > torque reached one one seven
            < No. First fit the new part, and say so.
            > new bolt fitted
            < Head marking?
            > torque reached one one seven
            < No. Read out the head marking first.
            > head marking ten point nine
            < Ten point nine.
            < Correct?
            > that is correct
            < Not yet. Confirm ride height, left.
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
            < Left. bush title.
            < Not yet. Confirm ride height, left.
            > wheels carry the car
            < Say: left side at ride height.
            > left side at ride height
            < Ride height, left.
            < Torque one one seven.
            > torque reached one one seven
            < Closed.
            < Changing sides. Confirm ride height again on the right.
            < Right, bush bolt.
            < New bolt?
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
