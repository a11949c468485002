package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

@DisplayName("A one-time-use bolt with a head marking")
class HardwareTest {
  @Nested
  @DisplayName("has no value")
  class Marking {
    @Test
    @DisplayName("before new hardware and its marking are called")
    void notRead() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .goes(
              """
              > torque reached five two
              < No. First fit the new part, and say so.
              > new bolt fitted
              < New hardware noted.
              < Read out the head marking.
              > torque reached five two
              < No. Read out the head marking first.
              > say again
              < Step one, left. bush title.
              < Read out the head marking.
              > where am i
              < Step one of two, tighten, left.
              < Head marking?
              """);
    }

    @Test
    @DisplayName("before a marking that differs from the other side's is asked about")
    void otherSide() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted", "head marking ten point nine", "that is correct")
          .after("move to the right side", "new bolt fitted")
          .goes(
              """
              > head marking eight point eight
              < Eight point eight.
              < The other side has ten point nine.
              < Correct?
              > that was wrong
              < Forget that, then.
              < Head marking?
              > head marking ten point nine
              < Ten point nine.
              < Correct?
              """);
    }

    @Test
    @DisplayName("for a marking that the procedure does not know")
    void unknown() {
      Bay bay =
          Bay.working(SampleProcedures.bushOnBothSides())
              .after("new bolt fitted")
              .goes(
                  """
                  > head marking twelve point nine
                  < This procedure has no torque for twelve point nine.
                  < Check the bolt.
                  > torque reached five two
                  < No. Read out the head marking first.
                  > five two newton meters
                  < No. Read out the head marking first.
                  > wheels carry the car
                  < Left, wheels carry the car.
                  < Read it back: left side at ride height.
                  > left side at ride height
                  < Ride height confirmed, left.
                  < Head marking?
                  > torque reached
                  < No. Read out the head marking first.
                  """);
      assertTrue(bay.recorded(SessionEvent.ValueCalled.class).isEmpty());
    }

    @Test
    @DisplayName("before the marking is read back")
    void notReadBack() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted")
          .goes(
              """
              > head marking eight point eight
              < Head marking eight point eight.
              < Say: that is correct.
              > torque reached five two
              < Not yet.
              < Head marking eight point eight.
              < Say: that is correct.
              < Or say: that was wrong.
              > that was wrong
              < Forget that, then.
              < Head marking?
              > torque reached five two
              < No. Read out the head marking first.
              """);
    }
  }

  @Nested
  @DisplayName("has the stages")
  class Released {
    @Test
    @DisplayName("of 8.8 when it is marked 8.8")
    void low() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted", "head marking 8.8", "that is correct", "wheels carry the car")
          .goes(
              """
              > left side at ride height
              < Ride height confirmed, left.
              < Stage one of two: torque, five two newton metres.
              > torque reached five two
              < Stage one closed at five two newton metres.
              < Six zero degrees.
              > angle turned six zero
              < Closed.
              < Changing sides. Confirm ride height again on the right.
              < Right, bush bolt.
              < New bolt?
              """);
    }

    @Test
    @DisplayName("of 10.9 when it is marked 10.9")
    void high() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted", "head marking 10.9", "that is correct", "wheels carry the car")
          .goes(
              """
              > left side at ride height
              < Ride height confirmed, left.
              < Torque, one one seven newton metres.
              > torque reached five two
              < I heard five two.
              < Spec is one one seven newton metres.
              > torque reached one one seven
              < Stage one closed at one one seven newton metres.
              < Changing sides. Confirm ride height again on the right.
              < Right, bush bolt.
              < New bolt?
              """);
    }

    @Test
    @DisplayName("of the marking that was read back last, after it is called twice")
    void corrected() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after("new bolt fitted")
          .goes(
              """
              > head marking eight point eight
              < Head marking eight point eight.
              < Say: that is correct.
              > head marking ten point nine
              < Ten point nine.
              < Correct?
              > head marking ten point nine
              < Not yet. Confirm ride height, left.
              > wheels carry the car
              < Left, wheels carry the car.
              < Read it back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left.
              < Torque, one one seven newton metres.
              """);
    }

    @Test
    @DisplayName("of a corrected marking, and the called value counts no more")
    void correctedLater() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after(
              "new bolt fitted",
              "head marking 8.8",
              "that is correct",
              "wheels carry the car",
              "left side at ride height")
          .goes(
              """
              > five two
              < Five two newton metres, matches. Say: torque reached.
              > head marking ten point nine
              < Ten point nine.
              < Correct?
              > that is correct
              < Torque one one seven.
              > torque reached
              < No. Call the value first: one one seven newton metres.
              """);
    }

    @Test
    @DisplayName("of the known marking when an unknown one is called after it")
    void unknownLater() {
      Bay.working(SampleProcedures.bushOnBothSides())
          .after(
              "new bolt fitted",
              "head marking 8.8",
              "that is correct",
              "wheels carry the car",
              "left side at ride height")
          .goes(
              """
              > head marking twelve point nine
              < This procedure has no torque for twelve point nine.
              < Check the bolt.
              > torque reached five two
              < Stage one closed at five two newton metres.
              < Six zero degrees.
              """);
    }
  }
}
