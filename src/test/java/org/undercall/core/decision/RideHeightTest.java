package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

@DisplayName("A fastener that needs ride height")
class RideHeightTest {
  @Nested
  @DisplayName("stays open")
  class StaysOpen {
    @Test
    @DisplayName("when it is called finished before the height is confirmed")
    void refusedEarly() {
      Bay bay =
          Bay.working(Jobs.twoBushesASide())
              .after("350 millimeters", "that is correct")
              .goes(
                  """
                  > torque reached five two
                  < No. Ride height is not confirmed, left side.
                  > five two
                  < No. Ride height is not confirmed, left side.
                  > step completed
                  < No. Ride height is not confirmed, left side.
                  """);
      assertEquals("arch/left", bay.closed());
    }

    @Test
    @DisplayName("when the condition is read back without what shows it")
    void onlyReadBack() {
      Bay bay =
          Bay.working(Jobs.twoBushesASide())
              .after("350 millimeters", "that is correct")
              .goes(
                  """
                  > left side at ride height
                  < No. Ride height is not confirmed, left side.
                  > torque reached five two
                  < No. Ride height is not confirmed, left side.
                  """);
      assertEquals("arch/left", bay.closed());
    }

    @Test
    @DisplayName("when the wrong side or the wrong condition is read back")
    void wrongSide() {
      Bay bay =
          Bay.working(Jobs.twoBushesASide())
              .after("350 millimeters", "that is correct")
              .goes(
                  """
                  > wheels carry the car
                  < Left side, wheels carry the car.
                  < Read back: left side at ride height.
                  > right side at ride height
                  < That was the right side. Left side, please.
                  < Read back: left side at ride height.
                  < Or say: that was wrong.
                  > left side at full droop
                  < That was full droop. Ride height, please.
                  < Read back: left side at ride height.
                  < Or say: that was wrong.
                  > torque reached five two
                  < No. First answer the read-back, or say: that was wrong.
                  < Read back: left side at ride height.
                  """);
      assertTrue(bay.recorded(SessionEvent.LoadConfirmed.class).isEmpty());
    }

    @Test
    @DisplayName("when the statement is cancelled or called wrong")
    void dropped() {
      Bay.working(Jobs.twoBushesASide())
          .after("350 millimeters", "that is correct")
          .goes(
              """
              > wheels carry the car
              < Left side, wheels carry the car.
              < Read back: left side at ride height.
              > cancel that
              < Dropped.
              < Needs ride height, left side. Not confirmed.
              > left side at ride height
              < No. Ride height is not confirmed, left side.
              > wheels carry the car
              < Left side, wheels carry the car.
              < Read back: left side at ride height.
              > no that is wrong
              < Dropped.
              < Needs ride height, left side. Not confirmed.
              > left side at ride height
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("when the jack is moved before the read-back")
    void movedMeanwhile() {
      Bay.working(Jobs.twoBushesASide())
          .after("350 millimeters", "that is correct")
          .goes(
              """
              > wheels carry the car
              < Left side, wheels carry the car.
              < Read back: left side at ride height.
              > jack moved
              < Jack moved.
              > left side at ride height
              < No. Ride height is not confirmed, left side.
              """);
    }
  }

  @Nested
  @DisplayName("is released")
  class IsReleased {
    @Test
    @DisplayName("by wheels that carry the car, with the side read back")
    void byWheels() {
      Bay bay =
          Bay.working(Jobs.twoBushesASide())
              .after("350 millimeters", "that is correct")
              .goes(
                  """
                  > wheels carry the car
                  < Left side, wheels carry the car.
                  < Read back: left side at ride height.
                  > left side at ride height
                  < Ride height confirmed, left side.
                  < Stage one of two: torque, five, two newton metres.
                  > torque reached five two
                  < Stage one closed at five, two newton metres.
                  < Stage two of two: angle, six, zero degrees.
                  > angle turned six zero
                  < Stage two closed at six, zero degrees.
                  < Step three, left, rear title.
                  < Stage one of one: torque, six, two newton metres.
                  """);
      assertEquals("arch/left front/left", bay.closed());
    }

    @Test
    @DisplayName("by a jacked knuckle with the body lifting")
    void byKnuckle() {
      Bay.working(Jobs.twoBushesASide())
          .after("350 millimeters", "that is correct")
          .goes(
              """
              > knuckle jacked body lifting
              < Left side, knuckle jacked, body lifting.
              < Caution. A jack under one side can lift the car off its stand.
              < The anti-roll bar can hold it up. Measure, and say: arch height, with the value.
              > left side at ride height
              < No. Ride height is not confirmed, left side.
              """);
    }

    @Test
    @DisplayName("by an arch height within the tolerance of the one noted before")
    void byHeight() {
      Bay.working(Jobs.twoBushesASide())
          .after("350 millimeters", "that is correct")
          .goes(
              """
              > arch height three six one
              < Three, six, one millimetres, one, one millimetres above.
              < No. That is not ride height.
              > arch height three three nine
              < Three, three, nine millimetres, one, one millimetres below.
              < No. That is not ride height.
              > arch height three six zero
              < Three, six, zero millimetres, one, zero millimetres above.
              < Read back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left side.
              < Stage one of two: torque, five, two newton metres.
              """);
    }

    @Test
    @DisplayName("not by a height in another unit, or without one noted before")
    void notByOtherHeights() {
      Bay.working(Jobs.twoBushesASide())
          .goes(
              """
              > put off for later
              < Put off for later. It stays open.
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > arch height three five zero
              < No. No ride height was noted, left side.
              > arch height one four inches
              < No. Call the height in millimetres.
              """);
    }

    @Test
    @DisplayName("not by a height that was taken back")
    void notByHeightTakenBack() {
      Bay.working(Jobs.twoBushesASide())
          .goes(
              """
              > three nine zero
              < Three, nine, zero millimetres.
              < On its wheels, level, and bounced or rolled to settle?
              < Then say: that is correct, or call it again.
              > that is correct
              < Kept.
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > cancel that
              < Taken back. This step is open.
              < Step one, left, arch title.
              < Call the value in millimetres.
              > go to step two
              < Step two, left, front title.
              < Needs ride height, left side. Not confirmed.
              > arch height three nine zero
              < No. No ride height was noted, left side.
              """);
    }

    @Test
    @DisplayName("after the right words follow the wrong ones")
    void afterRefusedRead() {
      Bay.working(Jobs.twoBushesASide())
          .after(
              "350 millimeters",
              "that is correct",
              "wheels carry the car",
              "right side at ride height")
          .goes(
              """
              > left side at ride height
              < Ride height confirmed, left side.
              < Stage one of two: torque, five, two newton metres.
              """);
    }
  }
}
