package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How much is said")
class HowMuchIsSaidTest {
  @Test
  @DisplayName("is whole when it is new, brief after that, and whole again when asked for")
  void known() {
    Bay.working(Jobs.threeLooks())
        .goes(
            """
            > step completed
            < Step closed.
            < Two title.
            > step completed
            < Three title.
            > say again
            < Step three. three title.
            """);
  }

  @Test
  @DisplayName("is less or more from now on when that is said; more says the step at once")
  void levels() {
    Bay bay = Bay.working(Jobs.nutAndBush());
    bay.goes(
        """
        > say less
        < Short from now on.
        > say less
        < Short from now on.
        > torque reached 75
        < Closed.
        < Left, bush title.
        < Not yet. Confirm ride height, left.
        > wheels carry the car
        < Say: left side at ride height.
        > say more
        < Read it back: left side at ride height.
        > left side at ride height
        < Ride height confirmed, left.
        < Torque five two.
        > say more
        < Step two, left. bush title.
        < Torque, five two newton metres.
        > cancel that
        < Taken back. Confirm the load again.
        < Not yet. Confirm ride height, left.
        """);
  }

  @Test
  @DisplayName("is never changed by a denial of it, and closes nothing")
  void denied() {
    Bay bay = Bay.working(Jobs.threeLooks());
    bay.goes(
        """
        > do not say less
        > is that less
        < Say again.
        """);
    assertEquals("", bay.closed());
  }

  @Test
  @DisplayName("is a question once more, shorter, fifteen seconds after it was said, and only once")
  void question() {
    Bay bay = Bay.working(Jobs.nutAndBush()).after("torque reached 75", "wheels carry the car");
    assertEquals(Optional.of(17L), bay.reminder(600));
    bay.goes(
        """
        * quiet 20
        < Say: left side at ride height.
        * quiet 600
        < I am still here.
        < Step two, the read-back.
        """);
  }

  @Test
  @DisplayName("is never a question again while work is done")
  void work() {
    assertEquals(Optional.of(600L), Bay.working(Jobs.threeLooks()).reminder(600));
  }

  @Test
  @DisplayName("is whole again after fifteen minutes without a word, and brief after less")
  void pause() {
    Bay.working(Jobs.threeLooks())
        .goes(
            """
            > step completed
            < Step closed.
            < Two title.
            +899
            > step completed
            < Three title.
            """);
    Bay.working(Jobs.threeLooks())
        .goes(
            """
            > step completed
            < Step closed.
            < Two title.
            +900
            > step completed
            < Step closed.
            < Step three. three title.
            """);
  }
}
