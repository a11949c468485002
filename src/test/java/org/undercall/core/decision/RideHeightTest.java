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
                  < No. First confirm ride height, left.
                  > five two
                  < No. First confirm ride height, left.
                  > step completed
                  < No. First confirm ride height, left.
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
                  < No. First confirm ride height, left.
                  > torque reached five two
                  < No. First confirm ride height, left.
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
                  > torque reached five two
                  < Not yet.
                  < Read it back: left side at ride height.
                  < Or say: that was wrong.
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
              < Left, wheels carry the car.
              < Read it back: left side at ride height.
              > cancel that
              < Forget that, then.
              < Not yet. Confirm ride height, left.
              > left side at ride height
              < No. First confirm ride height, left.
              > wheels carry the car
              < Say: left side at ride height.
              > no that is wrong
              < Forget that, then.
              < Not yet. Confirm ride height, left.
              > left side at ride height
              < No. First confirm ride height, left.
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
              < Left, wheels carry the car.
              < Read it back: left side at ride height.
              > jack moved
              < Jack moved.
              > left side at ride height
              < No. First confirm ride height, left.
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
                  < Left, wheels carry the car.
                  < Read it back: left side at ride height.
                  > left side at ride height
                  < Ride height confirmed, left.
                  < Stage one of two: torque, five two newton metres.
                  > torque reached five two
                  < Stage one closed at five two newton metres.
                  < Six zero degrees.
                  > angle turned six zero
                  < Closed.
                  < Left. rear title.
                  < Torque six two.
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
              < Left, knuckle jacked, body lifting.
              < Caution. A jack under one side can lift the car off its stand.
              < The anti-roll bar can hold it up. Measure, then say: arch height, and the value.
              > left side at ride height
              < No. First confirm ride height, left.
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
              < Not ride height.
              < You called three six one.
              < That is one one millimetres high.
              > arch height three three nine
              < Not ride height.
              < You called three three nine.
              < That is one one millimetres low.
              > arch height three six zero
              < Three six zero is one zero millimetres high.
              < Read it back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left.
              < Stage one of two: torque, five two newton metres.
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
              < Left. front title.
              < Not yet. Confirm ride height, left.
              > arch height three five zero
              < No. No ride height was noted before the work, left.
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
              < Three nine zero millimetres.
              < On its wheels, level, and bounced or rolled to settle?
              < Say: that is correct.
              > that is correct
              < Noted.
              < Left. front title.
              < Not yet. Confirm ride height, left.
              > cancel that
              < Taken back. This step is open.
              < Left. arch title.
              < Millimetres?
              > go to step two
              < Left. front title.
              < Not yet. Confirm ride height, left.
              > arch height three nine zero
              < No. No ride height was noted before the work, left.
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
              < Ride height confirmed, left.
              < Stage one of two: torque, five two newton metres.
              """);
    }
  }
}
