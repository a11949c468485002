package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is said not to be so")
class DeniedTest {
  @Test
  @DisplayName("leaves the stage open, drops the called value and is understood")
  void torque() {
    Bay.atRideHeight()
        .after("five two")
        .goes(
            """
            > torque not reached
            < Torque not reached. It stays open.
            > torque reached
            < No. Call the value first: five two newton metres.
            """);
  }

  @Test
  @DisplayName("after it was closed is not said to be open, and can be taken back")
  void late() {
    Bay.atRideHeight()
        .after("five two", "torque reached")
        .goes(
            """
            > torque not reached
            < Torque not reached. It stays open.
            < Taken back. This step is open.
            < Left. front title.
            < Torque five two, then six zero degrees.
            > torque not reached
            < Torque not reached. It stays open.
            > cancel that
            < Nothing to take back.
            < For an older step say: open step, its number, again.
            """);
  }

  @Test
  @DisplayName("cancels a load that was confirmed")
  void load() {
    Bay.atRideHeight()
        .goes(
            """
            > wheels do not carry the car
            < Load not confirmed. It stays open.
            < Not so. Confirm the load again.
            > torque reached five two
            < No. First confirm ride height, left.
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
            < Forget that, then.
            < Millimetres?
            """);
  }

  @Test
  @DisplayName("drops a load that waits to be read back, and the one confirmed before it")
  void loadAgain() {
    Bay.atRideHeight()
        .after("go to step one", "wheels carry the car")
        .goes(
            """
            > left side is not at ride height
            < Forget that, then.
            < Not so. Confirm the load again.
            < This step is closed.
            """);
  }

  @Test
  @DisplayName("in a note is a note")
  void note() {
    Bay.atRideHeight()
        .after("take a note")
        .goes(
            """
            > torque not reached at first
            < Note kept, not checked.
            """);
  }

  @Test
  @DisplayName(
      "before the cautions were understood leaves the work where it was, and so does danger")
  void briefing() {
    Bay.briefing(Jobs.twoBushesASide())
        .goes(
            """
            > cautions not understood
            < Cautions not understood. It stays open.
            > jack slipped
            < Stopped. Load not confirmed. When it is safe, say: cautions understood.
            """);
  }

  @Test
  @DisplayName("called as danger in a note: the note is dropped, the load cancelled, the work held")
  void danger() {
    Bay.atRideHeight()
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
  @DisplayName("called as danger by a word alone in a note is no note either")
  void alone() {
    for (String call : List.of("stop", "wait", "help")) {
      Bay bay = Bay.atRideHeight().after("take a note", call);
      assertEquals(Phase.ON_HOLD, bay.phase(), call);
    }
    assertEquals(Phase.GATE, Bay.atRideHeight().after("take a note", "jack moved").phase());
    Bay talk = Bay.atRideHeight().after("take a note", "wait for the new bolt");
    assertEquals(Phase.TORQUE, talk.phase(), "a note that begins so is one");
  }

  @Test
  @DisplayName("cancels a load in a pause too")
  void held() {
    Bay.atRideHeight()
        .after("take a break now", "car moved", "resume the work")
        .goes(
            """
            > torque reached five two
            < No. First confirm ride height, left.
            """);
  }

  @Test
  @DisplayName("or only done, yes and okay, is told which phrase counts")
  void shortAnswer() {
    Bay.atRideHeight()
        .goes(
            """
            > done
            < That is too short to count. Say: torque reached.
            > okay
            < That is too short to count. Say: torque reached.
            """);
  }
}
