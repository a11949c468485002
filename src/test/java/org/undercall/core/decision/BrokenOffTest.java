package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;

@DisplayName("A tightening that was broken off")
class BrokenOffTest {
  private static Bay atAngle() {
    return Bay.atRideHeight().after("torque reached 52");
  }

  /** A new bolt, tightened by torque and angle at any height. */
  private static Walk newBolt() {
    Fastener.Part part = new Fastener.Part(Hardware.BOLT, true, Lubrication.DRY);
    return Walk.of(
        SampleProcedures.procedure(
            new WorkPhase(
                "work",
                Each.CAR,
                List.of(
                    SampleProcedures.fasten(
                        "bolt",
                        part,
                        LoadCondition.ANY,
                        List.of(
                            new Variant(
                                Optional.empty(),
                                List.of(
                                    SampleProcedures.torque("52"),
                                    SampleProcedures.angle("60")))))))));
  }

  @Test
  @DisplayName("goes on with the rest of the angle when it is said how far it was turned")
  void rest() {
    Bay bay = atAngle();
    bay.goes(
        """
        > i moved the jack
        < Jack moved. The load confirmation is cancelled.
        < The tightening is broken off.
        > wheels carry the car
        < Left side, wheels carry the car.
        < Read back: left side at ride height.
        > left side at ride height
        < Ride height confirmed, left side.
        < Broken off before angle, six, zero degrees.
        < Say: turned so far, with the degrees in all, or: fully loosened.
        > turned so far two two degrees
        < Turned so far two, two degrees in all. Say: that is correct.
        > that is correct
        < Kept: two, two degrees.
        < Two, two of six, zero degrees turned before. Only the rest:
        < Stage two of two: angle, three, eight degrees.
        > angle turned six zero
        < No. Heard six, zero.
        < It is angle, three, eight degrees.
        < If it is past that, say: turned too far.
        > angle turned three eight
        < Stage two closed at six, zero degrees.
        < Step three, left, rear title.
        < Stage one of one: torque, six, two newton metres.
        """);
    assertEquals(
        "60° in all, 22 before a break",
        bay.recorded(SessionEvent.StageClosed.class).get(1).value());
  }

  @Test
  @DisplayName("is closed when all of the angle was turned before the break")
  void whole() {
    Bay bay = Bay.working(newBolt()).after("new bolt fitted", "torque reached 52");
    bay.goes(
        """
        > take a break now
        < Held. Say: resume the work.
        > resume the work
        < The tightening is broken off.
        < Step one, bolt title.
        < Broken off before angle, six, zero degrees.
        < Say: turned so far, with the degrees in all, or: fully loosened.
        > turned so far six zero
        < Turned so far six, zero degrees in all. Say: that is correct.
        > that is correct
        < Stage two closed at six, zero degrees.
        < All steps are closed. Say: end of work.
        """);
  }

  @Test
  @DisplayName("is not closed when it was turned too far, but loosened, with a new bolt")
  void tooFar() {
    Bay.working(newBolt())
        .after("new bolt fitted", "torque reached 52", "take a break now", "resume the work")
        .goes(
            """
            > turned so far eight eight
            < Turned so far eight, eight degrees in all. Say: that is correct.
            > that is correct
            < Kept: eight, eight degrees.
            < Turned too far. Loosen it, then say: fully loosened.
            > angle turned six zero
            < No. It was turned too far. Loosen it, then say: fully loosened.
            > turned so far six zero
            < No. It was turned too far. Loosen it, then say: fully loosened.
            > fully loosened
            < Loose. It was turned, so it needs a new one.
            < Fit a new bolt. Then say: new bolt fitted.
            """);
  }

  @Test
  @DisplayName("starts again with the same bolt if none of the angle was turned")
  void noneTurned() {
    Bay.working(newBolt())
        .after("new bolt fitted", "torque reached 52", "take a break now", "resume the work")
        .after("turned so far zero degrees", "that is correct")
        .goes(
            """
            > fully loosened
            < Loose.
            < Stage one of two: torque, five, two newton metres.
            """);
  }

  @Test
  @DisplayName("is not known after a restart, a step put off, or going elsewhere")
  void otherBreaks() {
    for (List<String> away :
        List.of(List.of("put off tool missing"), List.of("go to step 3", "go to step 2"))) {
      Bay bay = atAngle();
      away.forEach(bay::say);
      bay.after("go to step 2", "wheels carry the car", "left side at ride height");
      assertEquals(Phase.BEGUN, bay.phase(), away.toString());
    }
    Bay bay = Bay.working(newBolt()).after("new bolt fitted", "torque reached 52");
    bay.goes(
        """
        * off 5
        < Work taken up again.
        < The tightening is broken off.
        < Part tightened: bolt title, one stage.
        < Step one, bolt title.
        < Broken off before angle, six, zero degrees.
        < Say: turned so far, with the degrees in all, or: fully loosened.
        """);
  }

  @Test
  @DisplayName("is none when a closing that was said wrongly is taken back at once")
  void takenBack() {
    Bay.working(newBolt())
        .after("new bolt fitted", "torque reached 52", "angle turned 60")
        .goes(
            """
            > cancel that
            < Taken back. This step is open.
            < Step one, bolt title.
            < Stage two of two: angle, six, zero degrees.
            > angle turned six zero
            < Stage two closed at six, zero degrees.
            < All steps are closed. Say: end of work.
            """);
  }

  @Test
  @DisplayName("is to be loosened when \"fully loosened\" was said by mistake: no stage comes back")
  void saidLooseByMistake() {
    atAngle()
        .goes(
            """
            > fully loosened
            < Loose.
            < Stage one of two: torque, five, two newton metres.
            > cancel that
            < It counts as loose. If it is still tight, loosen it now.
            > angle turned six zero
            < No. The torque stage comes first.
            > cancel that
            < Nothing to take back.
            """);
  }

  @Test
  @DisplayName("may still be tight when its step is opened again")
  void openedAgain() {
    Bay.working(Jobs.nut(Jobs.newtonMetres("52"), Jobs.degrees("60")))
        .after("torque reached 52", "angle turned 60")
        .goes(
            """
            > open step one again
            < Open again. It may still be tight.
            < Step one, nut title.
            < Broken off before angle, six, zero degrees.
            < Say: turned so far, with the degrees in all, or: fully loosened.
            > torque reached five two
            < No. First say how far it was turned in all, or: fully loosened.
            > not fully loosened
            < Step not completed. It stays open.
            > fully loosened
            < Loose.
            < Stage one of two: torque, five, two newton metres.
            """);
  }
}
