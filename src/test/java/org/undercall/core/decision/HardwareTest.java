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
              < No. New hardware is not confirmed.
              > new bolt fitted
              < New hardware noted.
              < Read out the head marking.
              > torque reached five two
              < No. The head marking is missing.
              > say again
              < Step one, left, bush title.
              < Read out the head marking.
              > where am i
              < Step one of two, tighten, left side.
              < Read out the head marking.
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
              < Head marking eight, point, eight.
              < The other side has ten, point, nine.
              < Is that so? Say: that is correct.
              > that was wrong
              < Dropped.
              < Read out the head marking.
              > head marking ten point nine
              < Head marking ten, point, nine. Say: that is correct.
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
                  < Head marking twelve, point, nine is not in this procedure. No value.
                  > torque reached five two
                  < No. The head marking is missing.
                  > five two newton meters
                  < No. The head marking is missing.
                  > wheels carry the car
                  < Left side, wheels carry the car.
                  < Read back: left side at ride height.
                  > left side at ride height
                  < Ride height confirmed, left side.
                  < Read out the head marking.
                  > torque reached
                  < No. The head marking is missing.
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
              < Head marking eight, point, eight. Say: that is correct.
              > torque reached five two
              < No. First answer the read-back, or say: that was wrong.
              < Head marking eight, point, eight. Say: that is correct.
              > that was wrong
              < Dropped.
              < Read out the head marking.
              > torque reached five two
              < No. The head marking is missing.
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
              < Ride height confirmed, left side.
              < Stage one of two: torque, five, two newton metres.
              > torque reached five two
              < Stage one closed at five, two newton metres.
              < Stage two of two: angle, six, zero degrees.
              > angle turned six zero
              < Stage two closed at six, zero degrees.
              < Other side. The load confirmation is cancelled.
              < Step two, right, bush title.
              < Fit a new bolt. Then say: new bolt fitted.
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
              < Ride height confirmed, left side.
              < Stage one of one: torque, one, one, seven newton metres.
              > torque reached five two
              < No. Heard five, two.
              < It is torque, one, one, seven newton metres.
              > torque reached one one seven
              < Stage one closed at one, one, seven newton metres.
              < Other side. The load confirmation is cancelled.
              < Step two, right, bush title.
              < Fit a new bolt. Then say: new bolt fitted.
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
              < Head marking eight, point, eight. Say: that is correct.
              > head marking ten point nine
              < Head marking ten, point, nine. Say: that is correct.
              > head marking ten point nine
              < Head marking ten, point, nine kept.
              < Needs ride height, left side. Not confirmed.
              > wheels carry the car
              < Left side, wheels carry the car.
              < Read back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left side.
              < Stage one of one: torque, one, one, seven newton metres.
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
              < Five, two newton metres, matches. Say: torque reached.
              > head marking ten point nine
              < Head marking ten, point, nine. Say: that is correct.
              > that is correct
              < Head marking ten, point, nine kept.
              < Stage one of one: torque, one, one, seven newton metres.
              > torque reached
              < No. Call the value first: one, one, seven newton metres.
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
              < Head marking twelve, point, nine is not in this procedure. No value.
              > torque reached five two
              < Stage one closed at five, two newton metres.
              < Stage two of two: angle, six, zero degrees.
              """);
    }
  }
}
