package org.undercall.core.decision;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is said not to be so")
class DeniedTest {
  private static Bay atRideHeight() {
    return Bay.working(Jobs.twoBushesASide())
        .after(
            "350 millimeters",
            "that is correct",
            "wheels carry the car",
            "left side at ride height");
  }

  @Test
  @DisplayName("leaves the stage open, drops the called value and is understood")
  void torque() {
    atRideHeight()
        .after("five two")
        .goes(
            """
            > torque not reached
            < Torque not reached. It stays open.
            > torque reached
            < No. Call the value first: five, two newton metres.
            """);
  }

  @Test
  @DisplayName("cancels a load that was confirmed")
  void load() {
    atRideHeight()
        .goes(
            """
            > wheels do not carry the car
            < Load not confirmed. It stays open.
            < Not so. The load confirmation is cancelled.
            > torque reached five two
            < No. Ride height is not confirmed, left side.
            """);
  }

  @Test
  @DisplayName("drops what was read back")
  void readBack() {
    Bay.working(Jobs.twoBushesASide())
        .after("350 millimeters")
        .goes(
            """
            > that is not correct
            < Dropped.
            < Call the value in millimetres.
            """);
  }

  @Test
  @DisplayName("in a note is a note, but danger is danger: the load is cancelled, the work held")
  void danger() {
    atRideHeight()
        .after("take a note")
        .goes(
            """
            > then the jack slipped a bit
            < Stopped. Load not confirmed. When it is safe, say: resume the work.
            > torque reached five two
            < Say again.
            """);
  }

  @Test
  @DisplayName("cancels a load in a pause too")
  void held() {
    atRideHeight()
        .after("take a break now", "car moved", "resume the work")
        .goes(
            """
            > torque reached five two
            < No. Ride height is not confirmed, left side.
            """);
  }

  @Test
  @DisplayName("or only done, yes and okay, is told which phrase counts")
  void shortAnswer() {
    atRideHeight()
        .goes(
            """
            > done
            < That is too short to count. Say: torque reached.
            > okay
            < That is too short to count. Say: torque reached.
            """);
  }
}
