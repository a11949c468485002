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
                  < Step three, left, rear title.
                  < Needs ride height, left side. Not confirmed.
                  > only snug so far
                  < Started, not tightened. It stays open.
                  < Step four, right, arch title.
                  < Call the value in millimetres.
                  > 350 millimeters
                  < Three, five, zero millimetres.
                  < On its wheels, level, and bounced or rolled to settle?
                  < Then say: that is correct, or call it again.
                  > that is correct
                  < Kept.
                  < Step five, right, front title.
                  < Needs ride height, right side. Not confirmed.
                  > put off for ride height
                  < Put off for ride height. It stays open.
                  < Step six, right, rear title.
                  < Needs ride height, right side. Not confirmed.
                  > put off for ride height
                  < Put off for ride height. It stays open.
                  < Step seven, lower title.
                  > step completed
                  < Step closed.
                  < Four steps put aside are left: left, front title; left, rear title; right, front title; right, rear title.
                  < Step two, left, front title.
                  < Needs ride height, left side. Not confirmed.
                  > wheels carry the car
                  < Left side, wheels carry the car.
                  < Read back: left side at ride height.
                  > left side at ride height
                  < Ride height confirmed, left side.
                  < Two fasteners waiting: front title; rear title.
                  < Stage one of two: torque, five, two newton metres.
                  > torque reached five two
                  < Stage one closed at five, two newton metres.
                  < Stage two of two: angle, six, zero degrees.
                  > angle turned six zero
                  < Stage two closed at six, zero degrees.
                  < Step three, left, rear title.
                  < Stage one of one: torque, six, two newton metres.
                  > torque reached six two
                  < Stage one closed at six, two newton metres.
                  < Other side. The load confirmation is cancelled.
                  < Step five, right, front title.
                  < Needs ride height, right side. Not confirmed.
                  > wheels carry the car
                  < Right side, wheels carry the car.
                  < Read back: right side at ride height.
                  > right side at ride height
                  < Ride height confirmed, right side.
                  < Two fasteners waiting: front title; rear title.
                  < Stage one of two: torque, five, two newton metres.
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
              < Step three, left, rear title.
              < Stage one of one: torque, six, two newton metres.
              > only snug so far
              < Started, not tightened. It stays open.
              < Other side. The load confirmation is cancelled.
              < Step four, right, arch title.
              < Call the value in millimetres.
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
              < Left side, wheels carry the car.
              < Read back: left side at ride height.
              > left side at ride height
              < Ride height confirmed, left side.
              < One fastener waiting: rear title.
              < Step three, left, rear title.
              < Stage one of one: torque, six, two newton metres.
              """);
    }
  }
}
