package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Confirming a load condition")
class WaitingFastenersTest {
  @Nested
  @DisplayName("offers")
  class PutOff {
    @Test
    @DisplayName("together, on its side, the fasteners that were put off or left snug for it")
    void together() {
      Bay bay =
          Bay.working(Jobs.twoBushesASide())
              .after("350 millimeters", "that is correct")
              .goes(
                  """
                  > put off for ride height
                  < Put off for ride height. It stays open.
                  < Left. rear title.
                  < Not yet. Confirm ride height, left.
                  > only snug so far
                  < Started, not tightened. It stays open.
                  < Right, arch title.
                  < Millimetres?
                  > 350 millimeters
                  < Three five zero.
                  < On its wheels, level, settled?
                  > that is correct
                  < Right. front title.
                  < Not yet. Confirm ride height, right.
                  > put off for ride height
                  < Put off for ride height. It stays open.
                  < Right. rear title.
                  < Not yet. Confirm ride height, right.
                  > put off for ride height
                  < Put off for ride height. It stays open.
                  < Lower title.
                  > step completed
                  < Step closed.
                  < Four steps were put aside: left, front title; left, rear title; right, front title; right, rear title.
                  < Left. front title.
                  < Not yet. Confirm ride height, left.
                  > wheels carry the car
                  < Left, wheels carry the car.
                  < Read it back: left side at ride height.
                  > left side at ride height
                  < Ride height confirmed, left.
                  < Two fasteners waiting: front title; rear title.
                  < Stage one of two: torque, five two newton metres.
                  > torque reached five two
                  < Stage one closed at five two newton metres.
                  < Six zero degrees.
                  > angle turned six zero
                  < Closed.
                  < Left. rear title.
                  < Torque six two.
                  > torque reached six two
                  < Closed.
                  < Changing sides. Confirm ride height again on the right.
                  < Right, front bolt.
                  < Not yet. Confirm ride height, right.
                  > wheels carry the car
                  < Say: right side at ride height.
                  > right side at ride height
                  < Ride height, right.
                  < Two fasteners waiting: front title; rear title.
                  < Torque five two.
                  """);
      assertEquals("arch/left front/left rear/left arch/right lower", bay.closed());
    }

    @Test
    @DisplayName("no fastener straight again that is put off although the height is confirmed")
    void notStraightBack() {
      Bay.working(Jobs.twoBushesASide())
          .after(
              "350 millimeters",
              "that is correct",
              "wheels carry the car",
              "left side at ride height")
          .goes(
              """
              > put off waiting for parts
              < Put off waiting for parts. It stays open.
              < Left. rear title.
              < Torque six two.
              > only snug so far
              < Started, not tightened. It stays open.
              < Changing sides. Confirm ride height again on the right.
              < Right, arch title.
              < Millimetres?
              """);
    }

    @Test
    @DisplayName("the waiting one when a closed step is at hand")
    void fromClosed() {
      Bay.working(Jobs.twoBushesASide())
          .after(
              "350 millimeters",
              "that is correct",
              "wheels carry the car",
              "left side at ride height",
              "torque reached 52",
              "angle turned 60",
              "put off for ride height",
              "go to step two")
          .goes(
              """
              > wheels carry the car
              < Say: left side at ride height.
              > left side at ride height
              < Ride height, left.
              < One fastener waiting: rear title.
              < Left. rear title.
              < Torque six two.
              """);
    }
  }
}
