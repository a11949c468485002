package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;

@DisplayName("A new part that was said to be missing")
class PartMissingTest {
  private static Walk walk() {
    Step bolt =
        SampleProcedures.fasten(
            "bush",
            new Fastener.Part(Hardware.BOLT, true, Lubrication.DRY),
            LoadCondition.ANY,
            List.of(new Variant(Optional.empty(), List.of(Jobs.newtonMetres("52")))));
    return Jobs.car(
        SampleProcedures.doStep("part", false, false),
        Jobs.after("part", bolt),
        SampleProcedures.doStep("look", false, false));
  }

  private static Bay missing() {
    return Bay.working(walk()).after("put off waiting for parts");
  }

  @Test
  @DisplayName("is no new hardware, whatever is said, until it is ticked off")
  void neverNew() {
    Bay bay = missing().after("go to step two");
    assertEquals("bush", bay.session().ref().id());
    for (String phrase :
        List.of(
            "new bolt fitted",
            "new hardware fitted",
            "out of order other reason",
            "that is correct",
            "new hardware fitted")) {
      bay.say(phrase);
    }
    assertTrue(bay.recorded(SessionEvent.NewHardwareFitted.class).isEmpty());
    assertEquals(Phase.HARDWARE, bay.session().phase());
    String refused = String.join(" ", bay.say("new hardware fitted"));
    assertTrue(refused.contains("No. It was said to be missing:"), refused);
  }

  @Test
  @DisplayName("counts as soon as it is ticked off, and the work goes on")
  void tickedOff() {
    Bay bay = missing();
    bay.after("go to step one", "step completed", "go to step two", "new hardware fitted");
    assertEquals(1, bay.recorded(SessionEvent.NewHardwareFitted.class).size());
    bay.after("torque reached 52");
    assertTrue(bay.session().progress().states().get(1).closed());
  }

  @Test
  @DisplayName("keeps the session from being complete")
  void notComplete() {
    Bay bay = missing();
    bay.after("put off for later", "step completed", "end of work", "that is correct");
    assertTrue(bay.recorded(SessionEvent.SessionEnded.class).stream().noneMatch(e -> e.complete()));
  }
}
