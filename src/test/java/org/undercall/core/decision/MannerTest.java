package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Angle;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Torque;

@DisplayName("How a fastener is turned")
class MannerTest {
  private static Step nut(String id, Stage... stages) {
    return SampleProcedures.fasten(
        id,
        new Fastener.Part(Hardware.NUT, false, Lubrication.DRY),
        LoadCondition.ANY,
        List.of(new Variant(Optional.empty(), List.of(stages))));
  }

  private static Bay bay(Step... steps) {
    return Bay.working(
        Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(steps)))));
  }

  private static List<String> closed(Bay bay) {
    return bay.recorded(SessionEvent.StageClosed.class).stream()
        .map(SessionEvent.StageClosed::value)
        .toList();
  }

  @Test
  @DisplayName("is said before the first stage: left-handed, and what to hold against")
  void leftHand() {
    Step step = nut("pin", SampleProcedures.torque("52"), SampleProcedures.angle("60"));
    bay(SampleProcedures.minding(step, true, Optional.empty()))
        .goes(
            """
            > say again
            < Step one. pin title.
            < Left-hand thread.
            < Counter-hold with: a key in the pin.
            < Stage one of two: torque, five two newton metres.
            > torque reached 52
            < Stage one closed at five two newton metres.
            < Six zero degrees.
            """);
  }

  @Test
  @DisplayName("backs off by an angle between two torques")
  void backOff() {
    Bay bay =
        bay(
            nut(
                "hub",
                SampleProcedures.torque("120"),
                new Stage.AngleStage(Angle.degrees("90"), new BigDecimal("10"), true),
                SampleProcedures.torque("52"),
                SampleProcedures.angle("60")));
    bay.goes(
        """
        > torque reached 120
        < Stage one closed at one two zero newton metres.
        < Back off nine zero degrees.
        > torque reached 52
        < No. The angle stage is next.
        > angle turned nine zero
        < Torque five two.
        > torque reached 52
        < Six zero degrees.
        """);
    assertEquals(List.of("120 N·m", "90°", "52 N·m"), closed(bay));
  }

  @Test
  @DisplayName("takes any torque in a range, read back, and none outside it")
  void range() {
    Bay bay =
        bay(
            nut(
                "cap",
                Stage.TorqueStage.range(Torque.newtonMetres("100"), Torque.newtonMetres("120"))));
    bay.goes(
        """
        > say again
        < Step one. cap title.
        < Torque, from one zero zero to one two zero newton metres.
        > torque reached one two five
        < I heard one two five.
        < Spec is from one zero zero to one two zero newton metres.
        < If it is past that, say: turned too far.
        > torque reached
        < No. Call the value first: from one zero zero to one two zero newton metres.
        > torque reached one zero five
        < One zero five newton metres, in the range.
        < Say: that is correct.
        > that is correct
        < Stage one closed at one zero five newton metres.
        < All steps are closed. Say: end of work.
        """);
    assertEquals(List.of("105 N·m, of 100 to 120 N·m"), closed(bay));
  }

  @Test
  @DisplayName("checks a torque once more, fastener by fastener")
  void checkPass() {
    Stage check =
        new Stage.TorqueStage(
            Torque.newtonMetres("52"),
            BigDecimal.ONE,
            Optional.empty(),
            Stage.TorqueStage.Form.CHECK_PASS);
    Step two =
        SampleProcedures.set(nut("plate", SampleProcedures.torque("52"), check), 2, List.of());
    bay(two)
        .after("five two", "wrench clicked", "wrench clicked")
        .goes(
            """
            > say again
            < Step one. plate title.
            < Stage two of two: check pass, torque, five two newton metres.
            < Next: number one.
            > two of two clicked
            < No. Call the value first: five two newton metres.
            > five two
            < Five two newton metres, matches. Say: torque reached.
            > one clicked
            < Two.
            > two clicked
            < Closed.
            < All steps are closed. Say: end of work.
            """);
  }

  @Test
  @DisplayName("cures: its timer starts when it is closed, and stops when it is opened again")
  void cures() {
    Step step = nut("pin", SampleProcedures.torque("52"));
    Bay bay =
        bay(
            SampleProcedures.minding(step, false, Optional.of(Duration.ofMinutes(30))),
            nut("hub", SampleProcedures.torque("117")));
    bay.goes(
        """
        > torque reached 52
        < Stage one closed at five two newton metres.
        < Hub title.
        < Torque one one seven.
        < Curing. Timer running, thirty minutes.
        > how much time is left
        < Thirty minutes left.
        > cancel that
        < Taken back. This step is open.
        < Pin title.
        < Counter-hold with: a key in the pin.
        < Torque five two.
        > how much time is left
        < No timer is running.
        """);
  }

  @Test
  @DisplayName("ends with a torque that is read, kept and held against its band")
  void finalTorque() {
    Stage banded =
        new Stage.AngleStage(
            Angle.degrees("60"),
            BigDecimal.ONE,
            false,
            Optional.of(
                new Stage.AngleStage.Band(Torque.newtonMetres("100"), Torque.newtonMetres("160"))));
    Bay bay =
        bay(
            nut("pin", SampleProcedures.torque("52"), banded),
            nut("hub", SampleProcedures.torque("117")));
    bay.after("torque reached 52")
        .goes(
            """
            > final torque one two zero
            < Say again.
            > angle turned six zero
            < Closed.
            < Read the torque, and say: final torque, and the value.
            < Hub title.
            < Torque one one seven.
            > final torque one two zero foot pounds
            < No. Say it in newton metres.
            > final torque one two zero
            < Final torque one two zero newton metres.
            < Say: that is correct.
            > that was wrong
            < Forget that, then.
            < Torque one one seven.
            > final torque one seven one
            < Final torque one seven one newton metres.
            < Correct?
            > that is correct
            < Recorded. Not between one zero zero and one six zero newton metres.
            < Too hard. It may be cross-threaded or dirty.
            < If so, say: it is cross threaded.
            > torque reached one one seven
            < Closed.
            < All steps are closed. Say: end of work.
            > final torque one two zero
            < No. The last thing closed was no angle.
            """);
    assertEquals(
        List.of("171"),
        bay.recorded(SessionEvent.FinalTorqueNoted.class).stream()
            .map(e -> e.value().toPlainString())
            .toList());
  }

  @Test
  @DisplayName("begins with the torque a nut needs to run down, and adds it if so stated")
  void runDown() {
    Bay bay =
        bay(
            SampleProcedures.runningDown(
                nut("hub", SampleProcedures.torque("62")), Fastener.Manner.RunDown.ADDED));
    bay.goes(
        """
        > say again
        < Step one. hub title.
        < Run the nut down to just before the seat.
        < Call the torque it takes, in newton metres.
        > torque reached six two
        < No. Call the run-down torque first, below six two newton metres.
        > six two
        < No. Call the run-down torque first, below six two newton metres.
        > six newton meters
        < Run-down torque six newton metres.
        < Say: that is correct.
        > that is correct
        < With the run-down torque of six added:
        < Torque, six eight newton metres.
        > torque reached six two
        < I heard six two.
        < Spec is six eight newton metres.
        > fully loosened
        < Loose.
        < Run the nut down to just before the seat.
        < Call the torque it takes, in newton metres.
        > it reads seven
        < Run-down torque seven newton metres.
        < Correct?
        > that was wrong
        < Forget that, then.
        < Run the nut down to just before the seat.
        < Call the torque it takes, in newton metres.
        > five newton meters
        < Run-down torque five newton metres.
        < Correct?
        > that is correct
        < With the run-down torque of five added:
        < Torque six seven.
        > cancel that
        < Taken back. This step is open.
        < Run the nut down to just before the seat.
        < Call the torque it takes, in newton metres.
        > five newton meters
        < Run-down torque five newton metres.
        < Correct?
        > that is correct
        < With the run-down torque of five added:
        < Torque six seven.
        > torque reached six seven
        < Stage one closed at six seven newton metres.
        < All steps are closed. Say: end of work.
        """);
    assertEquals(List.of("67 N·m, with run-down 5"), closed(bay));
  }

  @Test
  @DisplayName("only records the run-down torque where the specification has it")
  void included() {
    Bay bay =
        bay(
            SampleProcedures.runningDown(
                nut("hub", SampleProcedures.torque("62")), Fastener.Manner.RunDown.INCLUDED));
    bay.after("six newton meters", "that is correct", "torque reached six two");
    assertEquals(List.of("62 N·m"), closed(bay));
  }

  @Test
  @DisplayName("is run in by hand first, if so stated")
  void byHand() {
    Bay bay = bay(SampleProcedures.byHand(nut("hub", SampleProcedures.torque("62"))));
    bay.goes(
        """
        > say again
        < Step one. hub title.
        < Run it in by hand. Then say: run in by hand.
        > torque reached six two
        < No. First say: run in by hand.
        > not run in by hand
        < Not run in by hand. It stays open.
        > is it run in by hand
        < Not run in by hand. It stays open.
        > two run in by hand
        < No. First say: run in by hand.
        > run in by hand
        < Run in by hand, noted.
        < Torque, six two newton metres.
        > cancel that
        < Taken back. This step is open.
        < Run in by hand?
        > run in by hand
        < Torque six two.
        > torque reached six two
        < Stage one closed at six two newton metres.
        < All steps are closed. Say: end of work.
        """);
    assertEquals(List.of("62 N·m"), closed(bay));
  }

  @Test
  @DisplayName("of a set all are run in by hand before one is tightened, counted")
  void allByHand() {
    Step one = SampleProcedures.byHand(nut("subframe", SampleProcedures.torque("62")));
    Bay bay = bay(SampleProcedures.set(one, 3, List.of()));
    bay.goes(
        """
        > say again
        < Step one. subframe title.
        < Run in all three by hand. Then say: three run in by hand.
        > run in by hand
        < No. First say: three run in by hand.
        > two run in by hand
        < No. First say: three run in by hand.
        > two of three run in by hand
        < No. First say: three run in by hand.
        > four run in by hand
        < No. First say: three run in by hand.
        > torque reached six two
        < No. First say: three run in by hand.
        > all three not run in by hand
        < Not run in by hand. It stays open.
        > three run in by hand
        < Run in by hand, noted.
        < Three fasteners.
        < Torque, six two newton metres.
        < Next: number one.
        > not run in by hand
        < Not run in by hand. It stays open.
        < Taken back. This step is open.
        < All three run in by hand?
        > cancel that
        < Nothing to take back.
        < For an older step say: open step, its number, again.
        > all three run in by hand
        < Three fasteners.
        < Torque six two.
        < Next: number one.
        > torque reached six two
        < One done. Two left. Next: number two.
        > number two the bolt is broken
        < Say again.
        > bolt is broken
        < Number two, broken. It stays open.
        < Say: that is correct.
        > that is correct
        < Number two, broken, still open.
        < Say: new bolt fitted, or: it is repaired now, or put it off.
        > new nut fitted
        < New hardware noted.
        < Torque six two.
        < Two.
        > three of three run in by hand
        < No. It is part tightened. Loosen it, then say: fully loosened.
        > fully loosened
        < All three count as loose.
        < All three run in by hand?
        """);
    assertEquals(2, bay.recorded(SessionEvent.RunInByHand.class).size());
  }
}
