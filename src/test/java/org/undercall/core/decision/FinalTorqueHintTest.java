package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.TorqueHint;

@DisplayName("A torque after the angle")
class FinalTorqueHintTest {
  private static final Fastener.Part BOLT =
      new Fastener.Part(Hardware.BOLT, false, Lubrication.OILED);

  private static Step plain(String id, Stage... stages) {
    return SampleProcedures.fasten(
        id, BOLT, LoadCondition.ANY, List.of(new Variant(Optional.empty(), List.of(stages))));
  }

  /** M12x1.5 of 8.8, 40 mm of steel clamped, 52 N·m and 60°: invented. */
  private static Step sized(String id) {
    Step.Fasten step =
        (Step.Fasten)
            SampleProcedures.fasten(
                id,
                BOLT,
                LoadCondition.ANY,
                List.of(
                    SampleProcedures.variant(
                        "8.8",
                        List.of(SampleProcedures.torque("52"), SampleProcedures.angle("60")))));
    Fastener f = step.fastener();
    Sizes.Clamped clamped =
        new Sizes.Clamped(
            new BigDecimal("40"),
            Optional.of(new BigDecimal("20")),
            Optional.of(new BigDecimal("28")),
            Optional.empty(),
            Fastener.Joint.Material.STEEL);
    Sizes.Span friction = new Sizes.Span(new BigDecimal("0.10"), new BigDecimal("0.14"));
    Fastener.Joint joint =
        new Fastener.Joint(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            new Sizes(
                Optional.of(clamped),
                Optional.empty(),
                Optional.of(new Sizes.FrictionKnown(friction, friction))));
    return new Step.Fasten(
        step.head(),
        new Fastener(
            f.name(), f.thread(), f.drive(), f.part(), f.needs(), f.set(), f.variants(), joint));
  }

  private static Bay bay(Step... steps) {
    return Bay.working(
        Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(steps)))));
  }

  private static Bay banded() {
    return bay(
            plain(
                "pin", SampleProcedures.torque("52"), SampleProcedures.banded("60", "100", "160")),
            plain("hub", SampleProcedures.torque("117")))
        .after("torque reached 52", "angle turned 60");
  }

  @Test
  @DisplayName("below its band hints at yield or a thread, which can be said next")
  void tooSoft() {
    Bay bay = banded();
    bay.goes(
        """
        > it pulls nine zero newton meters
        < Final torque nine zero newton metres.
        < Say: that is correct.
        > that is correct
        < Recorded. Not between one zero zero and one six zero newton metres.
        < Too soft. It may have yielded, or the thread is stripping.
        < If so, say: bolt is yielding, or: thread is stripped.
        > where am i
        < Step two of two, work, whole car.
        < Torque one one seven.
        > thread is stripped
        < Pin title: thread stripped.
        < It will be opened again.
        < Correct?
        > that is correct
        < Reopened. It may still be tight.
        < Pin title.
        < Thread stripped, still open.
        < Say: new bolt fitted, or: it is repaired now, or put it off.
        """);
    assertEquals("", bay.closed());
    assertEquals(
        List.of("pin"),
        bay.recorded(SessionEvent.TroubleNoted.class).stream().map(e -> e.step().id()).toList());
  }

  @Test
  @DisplayName(
      "that was not so leaves the fastener closed, and the next word is of the one at hand")
  void wrong() {
    Bay bay = banded();
    bay.after("final torque nine zero", "that is correct");
    bay.goes(
        """
        > thread is stripped
        < Pin title: thread stripped.
        < It will be opened again.
        < Correct?
        > that was wrong
        < Forget that, then.
        < Torque one one seven.
        > thread is stripped
        < Thread stripped. It stays open.
        < Correct?
        """);
    assertEquals("pin", bay.closed());
  }

  @Test
  @DisplayName("gives no hint any more once something was called")
  void over() {
    Bay bay = banded();
    bay.after("final torque nine zero", "that is correct", "one one seven");
    bay.goes(
        """
        > it is cross threaded
        < Cross-threaded. It stays open.
        < Correct?
        """);
    assertEquals("pin", bay.closed());
  }

  @Test
  @DisplayName("is read back before it counts, and closes and opens nothing")
  void closesNothing() {
    Bay bay = banded();
    bay.after("it pulls one one zero newton meters", "torque reached 117");
    assertEquals(List.of(), bay.recorded(SessionEvent.FinalTorqueJudged.class));
    bay.after("that is correct");
    assertEquals("pin", bay.closed());
    assertEquals(
        List.of(TorqueHint.AS_EXPECTED),
        bay.recorded(SessionEvent.FinalTorqueJudged.class).stream()
            .map(SessionEvent.FinalTorqueJudged::hint)
            .toList());
  }

  @Test
  @DisplayName("is held against a computed band where the sizes of the joint are stated")
  void computed() {
    Bay bay =
        bay(sized("pin"))
            .after("head marking 8.8", "that is correct", "torque reached 52", "angle turned 60")
            .after("final torque 25", "that is correct")
            .after("final torque 95", "that is correct")
            .after("final torque 300", "that is correct");
    List<SessionEvent.FinalTorqueJudged> judged =
        bay.recorded(SessionEvent.FinalTorqueJudged.class);
    assertEquals(
        List.of(TorqueHint.TOO_SOFT, TorqueHint.AS_EXPECTED, TorqueHint.TOO_HARD),
        judged.stream().map(SessionEvent.FinalTorqueJudged::hint).toList());
    assertEquals(BandSource.COMPUTED, judged.get(0).band());
    assertEquals("pin", bay.closed());
  }

  @Test
  @DisplayName("can be followed by what went wrong when all steps are closed")
  void allClosed() {
    bay(sized("pin"))
        .after("head marking 8.8", "that is correct", "torque reached 52", "angle turned 60")
        .after("final torque 25", "that is correct")
        .goes(
            """
            > thread is stripped
            < Pin title: thread stripped.
            < It will be opened again.
            < Correct?
            """);
  }
}
