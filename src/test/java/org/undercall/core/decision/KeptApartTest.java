package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

/** What belongs to one side, or to one stage, is kept and recorded as that one's. */
class KeptApartTest {
  @Test
  @DisplayName("The height that was noted on each side is the one that is compared there")
  void heightsOfBothSides() {
    Bay.working(Jobs.twoBushesASide())
        .after("350 millimeters", "that is correct")
        .after("go to step four", "370 millimeters", "that is correct")
        .goes(
            """
            > arch height three seven five
            < Three seven five is five millimetres high.
            < Read it back: right side at ride height.
            > no that is wrong
            < Forget that, then.
            < Not yet. Confirm ride height, right.
            > go to step two
            < Left. front title.
            < Not yet. Confirm ride height, left.
            > arch height three five five
            < Three five five is five millimetres high.
            < Say: left side at ride height.
            """);
  }

  @Test
  @DisplayName("A refused value is recorded with the number of the stage it was called for")
  void refusedValues() {
    Bay bay =
        Bay.working(Jobs.twoBushesASide())
            .after("350 millimeters", "that is correct", "wheels carry the car")
            .after("left side at ride height", "torque reached five eight")
            .after("torque reached five two", "angle turned nine zero");
    List<Integer> stages =
        bay.recorded(SessionEvent.ValueRefused.class).stream()
            .map(SessionEvent.ValueRefused::stage)
            .toList();
    assertEquals(List.of(1, 2), stages);
  }

  @Test
  @DisplayName("A step that was put off is recorded when it is brought to mind")
  void recalled() {
    String aside = "put off for ride height";
    Bay bay =
        Bay.working(Jobs.twoBushesASide())
            .after("350 millimeters", "that is correct", aside, aside)
            .after("370 millimeters", "that is correct", aside, aside, "step completed");
    assertEquals(
        "[front/left, rear/left, front/right, rear/right]",
        bay.recorded(SessionEvent.StepRecalled.class).stream()
            .map(recalled -> recalled.step().toString())
            .toList()
            .toString());
  }
}
