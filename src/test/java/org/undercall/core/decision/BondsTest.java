package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Bearing.Lift;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

@DisplayName("The steps of a walk")
class BondsTest {
  private static Bearing corner(Side side) {
    return new Bearing(List.of(), List.of(), Lift.LEFT_AS_IT_IS, Optional.of(side), false);
  }

  private static Bearing after(String... ids) {
    return SampleProcedures.bearing(List.of(ids), List.of(), Lift.LEFT_AS_IT_IS);
  }

  private static Step lift(String id, Lift lift) {
    return SampleProcedures.with(
        SampleProcedures.doStep(id, false, false),
        SampleProcedures.bearing(List.of(), List.of(), lift));
  }

  private static Walk car(Step... steps) {
    return Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(steps))));
  }

  private static Walk sides(Step... steps) {
    return Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.SIDE, List.of(steps))));
  }

  private static List<String> openBefore(Walk walk, int number) {
    return new Bonds(Session.start(walk))
        .openBefore(number - 1).stream().map(p -> p.ref().id()).toList();
  }

  private static Session closed(Walk walk) {
    Session session = Session.start(walk).after(new SessionEvent.CautionsUnderstood());
    for (Walk.Place place : walk.places()) {
      session = session.after(new SessionEvent.StepClosed(place.ref()));
    }
    return session;
  }

  private static List<String> ids(List<Walk.Place> places) {
    return places.stream().map(p -> p.ref().toString()).toList();
  }

  private static Walk wheels() {
    return car(
        SampleProcedures.with(SampleProcedures.wheel("on-left", Wheels.FITTED), corner(Side.LEFT)),
        SampleProcedures.with(
            SampleProcedures.wheel("on-right", Wheels.FITTED), corner(Side.RIGHT)),
        lift("down", Lift.LOWERED),
        SampleProcedures.with(SampleProcedures.wheelBolts("bolts-left"), corner(Side.LEFT)),
        SampleProcedures.wheel("on-again", Wheels.FITTED),
        lift("down-again", Lift.LOWERED));
  }

  @Test
  @DisplayName("wait for what comes before: for a wheel's bolts its own wheel and the car down")
  void before() {
    assertEquals(List.of("on-left", "down"), openBefore(wheels(), 4));
    assertEquals(List.of(), openBefore(wheels(), 1));
  }

  @Test
  @DisplayName("and for a road test every fastener and wheel before it, none after it")
  void roadTest() {
    Bearing drive = new Bearing(List.of(), List.of(), Lift.LEFT_AS_IT_IS, Optional.empty(), true);
    Walk walk =
        car(
            Jobs.fastener("nut", LoadCondition.ANY, Jobs.newtonMetres("52")),
            SampleProcedures.doStep("look", false, false),
            SampleProcedures.wheel("on", Wheels.FITTED),
            lift("down", Lift.LOWERED),
            SampleProcedures.with(SampleProcedures.doStep("drive", false, false), drive),
            Jobs.fastener("again", LoadCondition.ANY, Jobs.newtonMetres("52")));
    assertEquals(List.of("nut", "on"), openBefore(walk, 5));
  }

  @Test
  @DisplayName("fall with a wheel that is taken off: its fitting, its bolts, a load by wheels")
  void undone() {
    Walk walk =
        sides(
            SampleProcedures.wheel("off", Wheels.REMOVED),
            SampleProcedures.wheel("on", Wheels.FITTED),
            SampleProcedures.wheelBolts("bolts"),
            new Step.Load(SampleProcedures.head("down", false), LoadCondition.RIDE_HEIGHT, true),
            new Step.Load(SampleProcedures.head("jacked", false), LoadCondition.RIDE_HEIGHT),
            SampleProcedures.doStep("look", false, false));
    assertEquals(
        List.of("on/left", "bolts/left", "down/left"), ids(new Bonds(closed(walk)).undoneBy(0)));
    assertEquals(List.of(), ids(new Bonds(closed(walk)).undoneBy(5)));
  }

  @Test
  @DisplayName("fall with a car that is raised again: the step that lowered it")
  void raised() {
    Walk walk = car(lift("up", Lift.RAISED), lift("down", Lift.LOWERED), lift("up-2", Lift.RAISED));
    assertEquals(List.of("down"), ids(new Bonds(closed(walk)).undoneBy(2)));
    assertEquals(List.of(), ids(new Bonds(closed(walk)).undoneBy(1)));
  }

  @Test
  @DisplayName("fall with those they come after, one after the other")
  void falling() {
    Walk walk =
        car(
            SampleProcedures.doStep("one", false, false),
            SampleProcedures.with(SampleProcedures.doStep("two", false, false), after("one")),
            SampleProcedures.with(SampleProcedures.doStep("three", false, false), after("two")),
            SampleProcedures.doStep("four", false, false));
    assertEquals(List.of("two", "three"), ids(new Bonds(closed(walk)).fallingWith(0)));
    assertEquals(List.of(), ids(new Bonds(closed(walk)).doubtfulAfter(0)), "it is said");
    assertEquals(List.of("four"), ids(new Bonds(closed(walk)).doubtfulAfter(2)));
  }

  @Test
  @DisplayName("are doubted further on, on the same wheels, if they are work or fasteners")
  void doubtful() {
    Walk walk =
        sides(
            SampleProcedures.doStep("one", false, false),
            SampleProcedures.measure("play", false, true),
            Jobs.fastener("nut", LoadCondition.ANY, Jobs.newtonMetres("52")),
            SampleProcedures.doStep("two", false, false));
    Bonds bonds = new Bonds(closed(walk));
    assertEquals(List.of("nut/left", "two/left"), ids(bonds.doubtfulAfter(0)));
    assertEquals(List.of("nut/right", "two/right"), ids(bonds.doubtfulAfter(4)));
    assertEquals(List.of(), ids(bonds.doubtfulAfter(1)), "a measurement disturbs nothing");
    assertEquals(List.of("two/left"), ids(bonds.doubtfulAfter(2)));
  }

  @Test
  @DisplayName("that are open again leave it unknown what they did to the car")
  void car() {
    Walk walk =
        car(
            lift("up", Lift.RAISED),
            SampleProcedures.wheel("off", Wheels.REMOVED),
            SampleProcedures.wheel("on", Wheels.FITTED),
            SampleProcedures.doStep("look", false, false));
    Car up = Car.NOT_KNOWN.done(walk.places().get(0));
    assertEquals(Car.Stance.RAISED, up.stance());
    assertEquals(Car.Stance.UNKNOWN, up.undone(walk.places().get(0)).stance());
    assertEquals(Car.Stance.RAISED, up.undone(walk.places().get(3)).stance());
    Car off = up.done(walk.places().get(1));
    assertEquals(Map.of(Side.LEFT, Car.Wheel.OFF, Side.RIGHT, Car.Wheel.OFF), off.wheels());
    assertFalse(off.hasOn(Set.of(Side.LEFT)));
    assertEquals(off.wheels(), off.undone(walk.places().get(3)).wheels());
    assertEquals(off.wheels(), off.undone(walk.places().get(2)).wheels(), "it is still off");
    assertEquals(Car.Wheel.DOUBTED, off.undone(walk.places().get(1)).wheels().get(Side.LEFT));
    Car on = off.done(walk.places().get(2));
    assertTrue(on.hasOn(Set.of(Side.LEFT, Side.RIGHT)));
    assertEquals(on.wheels(), on.undone(walk.places().get(1)).wheels(), "it was put on since");
    assertEquals(Car.Wheel.DOUBTED, on.undone(walk.places().get(2)).wheels().get(Side.RIGHT));
    assertEquals(Car.Stance.RAISED, on.shown(LoadProof.SUSPENSION_HANGS_FREE).stance());
    Car jacked = on.shown(LoadProof.KNUCKLE_JACKED_BODY_LIFTING);
    assertEquals(Car.Stance.JACKED, jacked.stance());
    assertTrue(jacked.isUp());
    assertEquals(Car.Stance.UNKNOWN, jacked.moved(LoadChange.JACK_MOVED).stance());
    assertEquals(Car.Stance.ON_WHEELS, on.shown(LoadProof.WHEELS_CARRY_THE_CAR).stance());
  }

  @Test
  @DisplayName("refuse what comes too early, a measured value and a load step as well")
  void tooEarly() {
    Bay bay =
        Bay.working(
            car(
                SampleProcedures.doStep("one", false, false),
                SampleProcedures.with(SampleProcedures.measure("play", false, false), after("one")),
                SampleProcedures.with(
                    new Step.Load(SampleProcedures.head("load", false), LoadCondition.RIDE_HEIGHT),
                    after("one"))));
    bay.goes(
        """
        > go to step two
        < Play title.
        < Call the value in millimetres.
        > three hundred
        < No. First: one title.
        < Or say: out of order, and why.
        > go to step three
        < Load title.
        < Bring it to ride height, whole car, and say how.
        > step completed
        < No. First confirm ride height, whole car.
        > wheels carry the car
        < Whole car, wheels carry the car.
        < Read it back: whole car at ride height.
        > whole car at ride height
        < Ride height confirmed, whole car.
        < Ride height?
        > step completed
        < No. First: one title.
        < Or say: out of order, and why.
        """);
  }

  @Test
  @DisplayName("are not excused where nothing comes before")
  void notExcused() {
    Bay.working(Jobs.threeLooks())
        .goes(
            """
            > out of order as the maker says
            < Not now. Say: say again, to hear what is next.
            """);
    Bay excused =
        Bay.working(
                car(
                    SampleProcedures.doStep("one", false, false),
                    SampleProcedures.with(
                        SampleProcedures.doStep("two", false, false), after("one"))))
            .after("go to step two", "out of order missing on this car", "that is correct")
            .after("cancel that", "step completed");
    assertEquals("", excused.closed(), "the excuse was taken back");
    assertEquals(
        OrderReason.NOT_ON_THIS_CAR,
        excused.recorded(SessionEvent.OutOfOrderNoted.class).get(0).reason());
  }

  @Test
  @DisplayName("that noted a height take the confirmed load with them when they fall")
  void heightFalls() {
    Walk walk =
        sides(
            SampleProcedures.doStep("one", false, false),
            SampleProcedures.with(SampleProcedures.measure("arch", true, false), after("one")),
            Jobs.fastener("bush", LoadCondition.RIDE_HEIGHT, Jobs.newtonMetres("52")));
    Bay bay =
        Bay.working(walk)
            .after("step completed", "350 millimeters", "that is correct")
            .after("wheels carry the car", "left side at ride height");
    assertEquals(Phase.TORQUE, bay.phase());
    assertEquals(
        List.of(
            "Reopened.",
            "Reopened with it: left, arch title.",
            "The reference height changes. Confirm the load again.",
            "Left. one title."),
        bay.say("open step one again"));
    Bay noted =
        Bay.working(walk)
            .after("step completed", "350 millimeters", "that is correct")
            .after("wheels carry the car", "left side at ride height");
    assertTrue(
        noted
            .say("open step two again")
            .contains("The reference height changes. Confirm the load again."));
  }

  @Test
  @DisplayName("are told apart by the degrees said digit by digit, where they sound alike")
  void digits() {
    Bay bay = Bay.atRideHeight().after("torque reached 52", "take a break now", "resume the work");
    bay.after("wheels carry the car", "left side at ride height");
    assertEquals(
        List.of("I heard five zero. Call it digit by digit."), bay.say("turned so far fifty"));
    assertEquals(
        List.of("Turned five zero degrees in all.", "Correct?"),
        bay.say("turned so far five zero"));
    assertEquals(
        List.of("Turned four zero degrees in all.", "Correct?"),
        bay.say("turned so far four zero"));
    assertEquals(
        "40", bay.recorded(SessionEvent.TurnCalled.class).get(1).degrees().toPlainString());
  }

  @Test
  @DisplayName("keep a load that the same condition is said of again, and drop a doubtful height")
  void sameAgain() {
    Bay bay = Bay.atRideHeight();
    bay.after("wheels carry the car", "arch height 390");
    assertEquals(Phase.GATE, bay.phase(), "a height outside drops what waits for read-back");
    Bay same = Bay.atRideHeight().after("arch height 352");
    assertEquals(List.of(), same.recorded(SessionEvent.LoadChanged.class));
    same.after("that was wrong");
    assertEquals(Phase.TORQUE, same.phase());
  }

  @Test
  @DisplayName("can be taken back after they were denied in vain")
  void deniedThenCancelled() {
    Bay bay = Bay.working(Jobs.threeLooks());
    bay.after("step completed", "that is not correct", "cancel that");
    assertEquals(StepState.Status.OPEN, bay.status("one", Side.CAR));
  }

  @Test
  @DisplayName("are taken back in a log only as what can be")
  void order() {
    Session session = closed(Jobs.threeLooks());
    StepRef one = new StepRef("one", Side.CAR);
    assertEquals(
        Optional.empty(),
        Order.expected(session, new SessionEvent.SayingTakenBack(one, "NOTE_KEPT")));
    assertEquals(
        Optional.of("something that can be taken back"),
        Order.expected(session, new SessionEvent.SayingTakenBack(one, "WORK_HELD")));
  }
}
