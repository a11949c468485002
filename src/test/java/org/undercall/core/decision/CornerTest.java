package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Side;

@DisplayName("A procedure with corners")
class CornerTest {
  private static Walk walk(WorkPhase... phases) {
    return Walk.of(SampleProcedures.procedure(phases));
  }

  private static WorkPhase phase(String id, Each each) {
    return new WorkPhase(id, each, List.of(SampleProcedures.doStep(id, false, false)));
  }

  private static List<String> order(Walk walk) {
    return walk.places().stream().map(place -> place.ref().toString()).toList();
  }

  /** A bush at each of the four corners, for ride height. */
  private static Bay bushes() {
    Step bush = SampleProcedures.plainOnBothSides(1).places().get(0).step();
    return Bay.working(walk(new WorkPhase("tighten", Each.CORNER, List.of(bush))));
  }

  @Test
  @DisplayName("is walked corner by corner, front before rear, left before right")
  void order() {
    assertEquals(
        List.of(
            "a/front-left",
            "b/front-left",
            "a/front-right",
            "b/front-right",
            "b/rear-left",
            "c/rear-left",
            "b/rear-right",
            "c/rear-right",
            "d"),
        order(
            walk(
                phase("a", Each.FRONT),
                phase("b", Each.CORNER),
                phase("c", Each.REAR),
                phase("d", Each.CAR))));
  }

  @Test
  @DisplayName("means all four wheels with a step for the car")
  void wheels() {
    Walk walk = walk(phase("a", Each.REAR), phase("b", Each.CAR));
    assertEquals(Set.of(Side.REAR_LEFT), walk.places().get(0).wheels());
    assertEquals(Set.copyOf(Each.CORNER.sides()), walk.places().get(2).wheels());
  }

  @Test
  @DisplayName("confirms ride height for one corner, and not for another one on that side")
  void loads() {
    Bay bay = bushes();
    bay.goes(
        """
        > wheels carry the car
        < Front left, wheels carry the car.
        < Read it back: front left at ride height.
        > left side at ride height
        < That was the left side. Front left, please.
        < Read it back: front left at ride height.
        < Or say: that was wrong.
        > rear left at ride height
        < That was the rear left. Front left, please.
        < Read it back: front left at ride height.
        < Or say: that was wrong.
        > front right at ride height
        < That was the front right. Front left, please.
        < Read it back: front left at ride height.
        < Or say: that was wrong.
        > front left at ride height
        < Ride height confirmed, front left.
        < Torque, five two newton metres.
        > torque reached 52
        < Stage one closed at five two newton metres.
        < Changing sides. Confirm ride height again on the front right.
        < Front right, bush bolt.
        < Not yet. Confirm ride height, front right.
        """);
    assertEquals(
        List.of(Side.FRONT_LEFT),
        bay.recorded(SessionEvent.LoadConfirmed.class).stream()
            .map(SessionEvent.LoadConfirmed::side)
            .toList());
  }

  @Test
  @DisplayName("loses the confirmation when another corner is begun")
  void otherCorner() {
    bushes()
        .goes(
            """
            > wheels carry the car
            < Front left, wheels carry the car.
            < Read it back: front left at ride height.
            > front left at ride height
            < Ride height confirmed, front left.
            < Torque, five two newton metres.
            > move to the rear left
            < Changing sides. Confirm ride height again on the rear left.
            < Rear left. bush title.
            < Not yet. Confirm ride height, rear left.
            """);
  }
}
