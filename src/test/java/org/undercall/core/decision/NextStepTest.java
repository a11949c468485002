package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Missing;
import org.undercall.core.event.SessionEvent;

/** Where the work goes next, and what is recorded of a step that cannot be closed. */
class NextStepTest {
  private static final String ASIDE = "put off for later";

  @Test
  @DisplayName("A step left open before comes before one put aside further on")
  void openBefore() {
    Bay bay =
        Bay.working(Jobs.threeLooks()).after("go to step three", ASIDE).after("go to step two");
    bay.say("step completed");
    assertEquals("one", bay.at());
  }

  @Test
  @DisplayName("With none open, one put aside further on comes before one put aside earlier")
  void asideFurtherOn() {
    Bay bay = Bay.working(Jobs.threeLooks()).after(ASIDE, "go to step three", ASIDE);
    assertEquals("two", bay.at());
    bay.say("step completed");
    assertEquals("three", bay.at());
  }

  @Test
  @DisplayName("A side on which all was put aside is still gone to, and one that is closed is not")
  void side() {
    Bay bay = Bay.working(Jobs.nutAndBush()).after(ASIDE, ASIDE, "change to the left side");
    assertEquals("nut/left", bay.at());
  }

  @Test
  @DisplayName("What is missing is recorded as the condition that the fastener needs")
  void missing() {
    Bay droop = Bay.working(Jobs.droop()).after("step completed");
    Bay height =
        Bay.working(Jobs.nutAndBush()).after("torque reached seven five", "step completed");
    assertEquals(List.of(Missing.FULL_DROOP), missing(droop));
    assertEquals(List.of(Missing.RIDE_HEIGHT), missing(height));
  }

  private static List<Missing> missing(Bay bay) {
    return bay.recorded(SessionEvent.CloseRefused.class).stream()
        .map(SessionEvent.CloseRefused::missing)
        .toList();
  }

  @Test
  @DisplayName("A pause within a step is told with it, all pauses together")
  void pauses() {
    Bay.working(Jobs.threeLooks())
        .goes(
            """
            +10
            > take a break now
            < On hold. Say: resume the work.
            +30
            > resume the work
            < Step one. one title.
            > take a break now
            < On hold. Say: resume the work.
            +20
            > resume the work
            < Step one. one title.
            > how long so far
            < Step one: ten seconds at work, and fifty seconds on hold.
            """);
  }

  @Test
  @DisplayName("A reminder is recorded with the quiet before it, in seconds")
  void reminder() {
    Bay bay = Bay.working(Jobs.threeLooks());
    bay.quiet(600);
    assertEquals(600, bay.recorded(SessionEvent.Reminded.class).get(0).quietSeconds());
  }
}
