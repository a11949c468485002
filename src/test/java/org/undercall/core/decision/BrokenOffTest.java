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
        < Jack moved. Confirm the load again.
        < Tightening stopped part way.
        > wheels carry the car
        < Say: left side at ride height.
        > left side at ride height
        < Ride height, left.
        < Stopped before angle, six zero degrees.
        < Say: turned so far, and the degrees in all, or: fully loosened.
        > turned so far two two degrees
        < Turned two two degrees in all.
        < Correct?
        > that is correct
        < Noted: two two degrees.
        < Two two of six zero degrees is turned. Only the rest:
        < Three eight degrees.
        > angle turned six zero
        < I heard six zero.
        < Spec is three eight degrees.
        < If it is past that, say: turned too far.
        > angle turned three eight
        < Closed.
        < Left. rear title.
        < Torque six two.
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
        < On hold. Say: resume the work.
        > resume the work
        < Tightening stopped part way.
        < Step one. bolt title.
        < Stopped before angle, six zero degrees.
        < Say: turned so far, and the degrees in all, or: fully loosened.
        > turned so far six zero
        < Turned six zero degrees in all.
        < Say: that is correct.
        > that is correct
        < Closed.
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
            < Turned eight eight degrees in all.
            < Say: that is correct.
            > that is correct
            < Noted: eight eight degrees.
            < Turned too far. Loosen it, then say: fully loosened.
            > angle turned six zero
            < No. It was turned too far. Loosen it, then say: fully loosened.
            > turned so far six zero
            < No. It was turned too far. Loosen it, then say: fully loosened.
            > fully loosened
            < Loose. It was turned: fit a new one.
            < New bolt?
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
            < Torque five two, then six zero degrees.
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
        < Back to work.
        < Tightening stopped part way.
        < Part tightened: bolt title, one stage.
        < Step one. bolt title.
        < Stopped before angle, six zero degrees.
        < Say: turned so far, and the degrees in all, or: fully loosened.
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
            < Bolt title.
            < Six zero degrees.
            > angle turned six zero
            < Closed.
            < All closed. End of work?
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
            < Torque five two, then six zero degrees.
            > cancel that
            < It counts as loose. If it is still tight, loosen it now.
            > angle turned six zero
            < No. The torque stage comes first.
            > cancel that
            < Nothing to take back.
            < For an older step say: open step, its number, again.
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
            < Reopened. It may still be tight.
            < Nut title.
            < Stopped before angle, six zero degrees.
            < Say: turned so far, and the degrees in all, or: fully loosened.
            > torque reached five two
            < No. Say: turned so far, and the degrees in all, or: fully loosened.
            > not fully loosened
            < Step not completed. It stays open.
            > fully loosened
            < Loose.
            < Torque five two, then six zero degrees.
            """);
  }
}
