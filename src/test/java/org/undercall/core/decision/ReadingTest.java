package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

@DisplayName("An angle as it was read")
class ReadingTest {
  private static Bay atAngle() {
    return Bay.atRideHeight().after("torque reached 52");
  }

  private static List<String> closed(Bay bay) {
    return bay.recorded(SessionEvent.StageClosed.class).stream()
        .map(SessionEvent.StageClosed::value)
        .toList();
  }

  @Test
  @DisplayName("within the tolerance is read back and stands as read")
  void within() {
    Bay bay = atAngle();
    bay.goes(
        """
        > angle turned six one
        < Six one degrees, one over.
        < Correct?
        > that is correct
        < Closed.
        < Left. rear title.
        < Torque six two.
        """);
    assertEquals(List.of("52 N·m", "61°"), closed(bay));
  }

  @Test
  @DisplayName("called alone closes nothing before the angle is said to be turned")
  void alone() {
    Bay bay = atAngle();
    bay.goes(
        """
        > five nine
        < Five nine degrees, one under.
        < Correct?
        > angle turned
        < Not yet.
        < Five nine degrees, one under.
        < Say: that is correct.
        < Or say: that was wrong.
        > five nine
        < Noted. Say: angle turned.
        > angle turned
        < Closed.
        < Left. rear title.
        < Torque six two.
        """);
    assertEquals(List.of("52 N·m", "59°"), closed(bay));
  }

  @Test
  @DisplayName("outside the tolerance is refused, and says how to go on")
  void outside() {
    atAngle()
        .goes(
            """
            > angle turned five five
            < I heard five five.
            < Spec is six zero degrees.
            < Carry on turning.
            > angle turned seven five
            < I heard seven five.
            < Spec is six zero degrees.
            < If it is past that, say: turned too far.
            > angle turned six one
            < Six one degrees, one over.
            < Correct?
            > that was wrong
            < Forget that, then.
            < Six zero degrees.
            > angle turned six two
            < I heard six two.
            < Spec is six zero degrees.
            < If it is past that, say: turned too far.
            """);
  }

  @Test
  @DisplayName("is dropped with the load that it needs")
  void dropped() {
    Bay bay = atAngle();
    bay.goes(
        """
        > angle turned six one
        < Six one degrees, one over.
        < Correct?
        > i moved the jack
        < Jack moved. Confirm the load again.
        < Tightening stopped part way.
        > that is correct
        < Say again.
        """);
    assertEquals(List.of("52 N·m"), closed(bay));
  }

  @Test
  @DisplayName("counts with what was turned before a break")
  void rest() {
    Bay bay = atAngle();
    bay.after("take a break now", "resume the work", "wheels carry the car");
    bay.after("left side at ride height", "turned so far two two degrees", "that is correct");
    bay.goes(
        """
        > angle turned three nine
        < Three nine degrees, one over.
        < Correct?
        > that is correct
        < Closed.
        < Left. rear title.
        < Torque six two.
        """);
    assertEquals(List.of("52 N·m", "61° in all, 22 before a break"), closed(bay));
  }
}
