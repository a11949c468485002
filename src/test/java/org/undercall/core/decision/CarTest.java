package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;

@DisplayName("The car")
class CarTest {
  private static final Bearing ROAD_TEST =
      new Bearing(List.of(), List.of(), Bearing.Lift.LEFT_AS_IT_IS, Optional.empty(), true);

  private static Step lift(String id, Bearing.Lift lift) {
    return SampleProcedures.with(
        SampleProcedures.doStep(id, false, true),
        SampleProcedures.bearing(List.of(), List.of(), lift));
  }

  /** For the car: up, wheel off, a bush bolt, wheel on, down, wheel bolts, road test. */
  private static Walk job() {
    return walk(
        lift("up", Bearing.Lift.RAISED),
        SampleProcedures.wheel("wheel-off", Wheels.REMOVED),
        Jobs.fastener("bush", LoadCondition.ANY, Jobs.newtonMetres("52"), Jobs.degrees("60")),
        SampleProcedures.wheel("wheel-on", Wheels.FITTED),
        lift("down", Bearing.Lift.LOWERED),
        SampleProcedures.wheelBolts("wheel-bolts"),
        SampleProcedures.with(SampleProcedures.doStep("drive", false, false), ROAD_TEST));
  }

  private static Walk walk(Step... steps) {
    return Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(steps))));
  }

  /** Everything is done but the end. */
  private static Bay done() {
    return Bay.working(job())
        .after(
            "step completed",
            "step completed",
            "torque reached 52",
            "angle turned 60",
            "step completed",
            "step completed",
            "torque reached 52",
            "step completed");
  }

  @Nested
  @DisplayName("is not complete")
  class NotComplete {
    @Test
    @DisplayName("with wheels taken off again after their bolts were closed")
    void wheelsOffAgain() {
      Bay bay = done();
      assertEquals(Phase.ALL_CLOSED, bay.phase());
      bay.goes(
          """
          > open step two again
          < Reopened.
          < Wheel-off title.
          > step completed
          < Reopened with it: wheel-on title; down title; wheel-bolts title; and one more.
          < Wheel-on title.
          > end of work
          < Four steps open. End anyway?
          < Say: that is correct.
          """);
      assertFalse(bay.closed().contains("wheel-bolts"), bay.closed());
    }

    @Test
    @DisplayName("with a fastener opened again after the road test")
    void fastenerOpenedAgain() {
      Bay bay = done().after("open step 3 again");
      assertEquals(StepState.Status.OPEN, bay.status("drive", Side.CAR));
      assertEquals(StepState.Status.OPEN, bay.status("bush", Side.CAR));
    }
  }

  @Nested
  @DisplayName("is asked about when a step is opened again and nothing says what falls with it")
  class AskedAbout {
    private static Bay looked() {
      return Bay.working(Jobs.threeLooks())
          .after("step completed", "step completed", "step completed");
    }

    @Test
    @DisplayName("and what still holds stays closed")
    void holds() {
      Bay bay = looked();
      bay.goes(
          """
          > open step one again
          < Reopened.
          < One title.
          < Closed after it: two title; three title.
          < Is that still good?
          < Say: that is correct.
          > step completed
          < Not yet.
          < Closed after it: two title; three title.
          < Is that still good?
          < Say: that is correct.
          < Or say: that was wrong.
          > that is correct
          < They stay closed.
          """);
      assertEquals("two three", bay.closed());
    }

    @Test
    @DisplayName("and what does not hold, or is denied, or is not answered in danger, is open")
    void falls() {
      for (String answer : List.of("that was wrong", "that is not correct", "stop stop")) {
        Bay bay = looked().after("open step one again", answer);
        assertEquals("", bay.closed(), answer);
      }
    }
  }

  @Nested
  @DisplayName("is not driven")
  class NotDriven {
    @Test
    @DisplayName("with steps open and the wheels off")
    void wheelsOff() {
      Bay.working(job())
          .after("step completed", "step completed")
          .goes(
              """
              > go to step seven
              < Drive title.
              > step completed
              < No. The wheel is off.
              > out of order as the maker says
              < No. The wheel is off.
              """);
    }

    @Test
    @DisplayName("with a fastener open, unless somebody says why")
    void fastenerOpen() {
      Bay bay = Bay.working(job());
      bay.after("step completed", "step completed", "put off waiting for parts")
          .after("step completed", "step completed", "torque reached 52")
          .goes(
              """
              > step completed
              < No. First: bush title.
              < Or say: out of order, and why.
              > out of order as the maker says
              < Out of order, as the maker says.
              < Say: that is correct.
              > that is correct
              < Noted, out of order.
              > step completed
              < One step was put aside.
              < Bush title.
              < Torque five two, then six zero degrees.
              """);
      assertEquals(1, bay.recorded(SessionEvent.OutOfOrderNoted.class).size());
    }
  }

  @Nested
  @DisplayName("is not carried by a wheel")
  class NotCarried {
    @Test
    @DisplayName("that is off")
    void off() {
      Bay.working(
              walk(
                  SampleProcedures.wheel("wheel-off", Wheels.REMOVED),
                  Jobs.fastener("bush", LoadCondition.RIDE_HEIGHT, Jobs.newtonMetres("52"))))
          .after("step completed")
          .goes(
              """
              > wheels carry the car
              < No. The wheel is off.
              > torque reached five two
              < No. First confirm ride height, whole car.
              """);
    }

    @Test
    @DisplayName("whose bolts were tightened in the air")
    void inTheAir() {
      Bay.working(
              walk(
                  lift("up", Bearing.Lift.RAISED),
                  SampleProcedures.wheelBolts("wheel-bolts"),
                  lift("down", Bearing.Lift.LOWERED)))
          .after("step completed")
          .goes(
              """
              > torque reached five two
              < No. The car is raised. Lower it, and say: car is coming down.
              > car is coming down
              < Car lowered.
              > torque reached five two
              < Stage one closed at five two newton metres.
              < Down title.
              """);
    }
  }

  @Nested
  @DisplayName("has a height before the work")
  class Height {
    private static Walk heights() {
      return Walk.of(
          SampleProcedures.procedure(
              new WorkPhase(
                  "work",
                  Each.SIDE,
                  List.of(
                      SampleProcedures.measure("arch", true, false),
                      Jobs.fastener("bush", LoadCondition.RIDE_HEIGHT, Jobs.newtonMetres("52"))))));
    }

    @Test
    @DisplayName("that is not noted anew once the car was lifted")
    void locked() {
      Bay bay = Bay.working(heights());
      bay.after("350 millimeters", "that is correct", "car is going up", "open step 1 again")
          .goes(
              """
              > three three zero
              < Three three zero.
              < The car was lifted: no reference any more.
              < Correct?
              > that is correct
              < That is no reference: the car was lifted.
              < Left. bush title.
              < Not yet. Confirm ride height, left.
              > arch height three three two
              < No. No ride height was noted before the work, left.
              """);
      assertEquals(1, bay.recorded(SessionEvent.RideHeightNoted.class).size());
    }

    @Test
    @DisplayName("that is compared with the other side's, where the procedure says how far")
    void apart() throws Exception {
      Walk walk =
          Walk.of(
              ProcedureFile.load(Path.of("shared", "procedures", "front-control-arms.json"))
                  .procedure());
      Bay bay = Bay.working(walk);
      bay.after("382", "that is correct", "410")
          .goes(
              """
              > that is correct
              < Left and right differ by two eight millimetres, more than two zero. Find the cause.
              < Lift the car onto its stands.
              """);
      assertEquals(1, bay.recorded(SessionEvent.HeightsApart.class).size());
      Bay alike = Bay.working(walk).after("382", "that is correct", "402", "that is correct");
      assertEquals(List.of(), alike.recorded(SessionEvent.HeightsApart.class));
    }

    @Test
    @DisplayName("that is never taken from a wheel that hangs")
    void hanging() {
      Bay.working(heights())
          .after("suspension hangs free", "left side at full droop")
          .goes(
              """
              > three seven five
              < Three seven five millimetres.
              < The car was lifted: no reference any more.
              < Say: that is correct.
              """);
    }

    @Test
    @DisplayName("and a height outside it ends a confirmation, however that was given")
    void outside() {
      Bay.working(heights())
          .after("350 millimeters", "that is correct")
          .after("wheels carry the car", "left side at ride height")
          .goes(
              """
              > arch height three nine zero
              < Not ride height.
              < You called three nine zero.
              < That is four zero millimetres high.
              < Height out of tolerance. Confirm the load again.
              > torque reached five two
              < No. First confirm ride height, left.
              """);
    }
  }

  @Nested
  @DisplayName("has a load that was confirmed and is not believed any more")
  class Doubted {
    @Test
    @DisplayName("when the suspension is said to hang free")
    void hangsFree() {
      Bay.atRideHeight()
          .goes(
              """
              > suspension hangs free
              < That is a different height. Confirm the load again.
              < Say: left side at full droop.
              > that was wrong
              < Forget that, then.
              < Not yet. Confirm ride height, left.
              """);
    }

    @Test
    @DisplayName("after an hour")
    void old() {
      Bay.atRideHeight()
          .sleep(3601)
          .goes(
              """
              > torque reached five two
              < That was confirmed long ago. Confirm the load again.
              < No. First confirm ride height, left.
              """);
    }

    @Test
    @DisplayName("but is until then")
    void young() {
      Bay bay = Bay.atRideHeight().sleep(3500);
      bay.after("torque reached 52");
      assertEquals(Phase.ANGLE, bay.phase());
    }

    @Test
    @DisplayName("when it is taken back at once")
    void takenBack() {
      Bay.atRideHeight()
          .goes(
              """
              > cancel that
              < Taken back. Confirm the load again.
              < Not yet. Confirm ride height, left.
              """);
    }
  }
}
