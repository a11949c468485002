package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.term.Side;

@DisplayName("\"Cancel that\" means what was said last")
class TakenBackTest {
  @Test
  @DisplayName("also a note")
  void note() {
    Bay bay = Bay.atRideHeight();
    bay.after("take a note", "boot looks dry")
        .goes(
            """
            > cancel that
            < Note taken back.
            > cancel that
            < Nothing to take back.
            < For an older step say: open step, its number, again.
            """);
  }

  @Test
  @DisplayName("and of a refused value says that nothing was taken")
  void refused() {
    Bay bay = Bay.atRideHeight().after("torque reached 52");
    bay.goes(
        """
        > angle turned nine zero
        < I heard nine zero.
        < Spec is six zero degrees.
        < If it is past that, say: turned too far.
        > cancel that
        < Nothing to take back.
        < For an older step say: open step, its number, again.
        """);
    assertEquals(Phase.ANGLE, bay.phase(), "the torque stage stays closed");
  }

  @Test
  @DisplayName("never an older step")
  void older() {
    Bay bay = Bay.working(Jobs.threeLooks());
    bay.after("step completed", "go to step 3", "cancel that");
    assertEquals(StepState.Status.CLOSED, bay.status("one", Side.CAR));
  }

  @Test
  @DisplayName("not what was said before a jack was moved or a timer started")
  void somethingElse() {
    for (String other : List.of("jack moved", "start ten minutes for the sealant")) {
      Bay bay = Bay.working(Jobs.threeLooks());
      bay.after("step completed", other, "cancel that");
      assertEquals(StepState.Status.CLOSED, bay.status("one", Side.CAR), other);
    }
  }

  @Test
  @DisplayName("and a question in between changes nothing")
  void question() {
    Bay bay = Bay.working(Jobs.threeLooks());
    bay.after("step completed", "what is left", "cancel that");
    assertEquals(StepState.Status.OPEN, bay.status("one", Side.CAR));
  }

  @Test
  @DisplayName("of a step that was put off or left snug makes it the step at hand again")
  void putOff() {
    Bay bay = Bay.working(Jobs.nutAndBush());
    bay.after("only snug so far", "cancel that");
    assertEquals("nut/left", bay.at());
    assertEquals(StepState.Status.OPEN, bay.status("nut", Side.LEFT));
  }

  @Test
  @DisplayName("of new hardware and of a head marking")
  void hardware() {
    Bay bay = Bay.working(SampleProcedures.bushOnBothSides());
    bay.after("new bolt fitted", "cancel that");
    assertEquals(Phase.HARDWARE, bay.phase());
    bay.after("new bolt fitted", "head marking 10.9", "that is correct", "cancel that");
    assertEquals(Phase.MARKING, bay.phase());
  }
}
