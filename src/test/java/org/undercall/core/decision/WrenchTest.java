package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
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
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

@DisplayName("The torque wrench")
class WrenchTest {
  private static Tool tool(String id, Tool.Kind kind, String least, String most, TorqueUnit unit) {
    return new Tool(
        id,
        kind,
        new Torque(new java.math.BigDecimal(least), unit),
        new Torque(new java.math.BigDecimal(most), unit),
        Optional.of(LocalDate.parse("2025-12-01")));
  }

  private static final Tool SMALL =
      tool("wrench 1", Tool.Kind.CLICKING, "10", "60", TorqueUnit.NEWTON_METRE);
  private static final Tool LARGE =
      tool("wrench 2", Tool.Kind.CLICKING, "40", "200", TorqueUnit.NEWTON_METRE);
  private static final Tool SCALE =
      tool("wrench 3", Tool.Kind.INDICATING, "40", "200", TorqueUnit.NEWTON_METRE);
  private static final Tool FOOT =
      tool("wrench 4", Tool.Kind.CLICKING, "20", "100", TorqueUnit.POUND_FORCE_FOOT);

  private static Step nut(String id, Stage... stages) {
    return SampleProcedures.fasten(
        id,
        new Fastener.Part(Hardware.NUT, false, Lubrication.DRY),
        LoadCondition.ANY,
        List.of(new Variant(Optional.empty(), List.of(stages))));
  }

  private static Stage torque(String amount, TorqueUnit unit) {
    return new Stage.TorqueStage(
        new Torque(new java.math.BigDecimal(amount), unit), new java.math.BigDecimal("3"));
  }

  private static Bay bay(List<Tool> tools, Step... steps) {
    return Bay.working(
        Walk.of(
            SampleProcedures.procedure(tools, new WorkPhase("work", Each.CAR, List.of(steps)))));
  }

  private static Bay bay(Tool... tools) {
    return bay(
        List.of(tools),
        nut("link", torque("52", TorqueUnit.NEWTON_METRE)),
        nut("hub", torque("117", TorqueUnit.NEWTON_METRE)),
        nut("cap", torque("45", TorqueUnit.NEWTON_METRE)));
  }

  @Test
  @DisplayName("is asked for once where there is a choice, and blocks nothing")
  void asked() {
    Bay bay = bay(SMALL, LARGE);
    bay.goes(
        """
        > say again
        < Step one. link title.
        < Torque, five two newton metres.
        < Which wrench? Say its number.
        > torque reached 52
        < Stage one closed at five two newton metres.
        < Hub title.
        < Torque one one seven.
        """);
    assertEquals(List.of(), bay.recorded(SessionEvent.WrenchNamed.class));
  }

  @Test
  @DisplayName("is not asked for where only one serves")
  void alone() {
    bay(LARGE)
        .goes(
            """
            > say again
            < Step one. link title.
            < Torque, five two newton metres.
            > wrench two
            < Wrench two.
            > wrench one
            < No. There is no wrench one.
            < Listed: two.
            """);
  }

  @Test
  @DisplayName("stays the same until another is named, and is asked for where it does not fit")
  void stays() {
    Bay bay = bay(SMALL, LARGE);
    bay.goes(
        """
        > using wrench one
        < Wrench one.
        > torque reached 52
        < Stage one closed at five two newton metres.
        < Hub title.
        < Torque one one seven.
        < Wrench one does not fit. Which one?
        > wrench one
        < No. Wrench one ends at six zero newton metres.
        > wrench two
        < Wrench two.
        > torque reached one one seven
        < Closed.
        < Cap title.
        < Torque four five.
        """);
    assertEquals(
        List.of("wrench 1", "wrench 2"),
        bay.recorded(SessionEvent.WrenchNamed.class).stream()
            .map(SessionEvent.WrenchNamed::wrench)
            .toList());
  }

  @Test
  @DisplayName("with a scale in another unit is refused, and so is one that begins above")
  void otherUnit() {
    bay(FOOT, LARGE, tool("wrench 5", Tool.Kind.CLICKING, "60", "300", TorqueUnit.NEWTON_METRE))
        .goes(
            """
            > wrench four
            < No. Wrench four is in foot pounds.
            > wrench five
            < No. Wrench five begins at six zero newton metres.
            """);
  }

  @Test
  @DisplayName("that is changed drops a value that was called for the other one")
  void changed() {
    bay(SMALL, LARGE)
        .goes(
            """
            > five two
            < Five two newton metres, matches. Say: torque reached.
            > wrench two
            < Wrench two.
            > torque reached
            < No. Call the value first: five two newton metres.
            > five two
            < Five two newton metres, matches. Say: torque reached.
            > torque reached
            < Stage one closed at five two newton metres.
            < Hub title.
            < Torque one one seven.
            """);
  }

  @Test
  @DisplayName("with a scale lets a reading within the tolerance stand as read")
  void reading() {
    Bay bay = bay(LARGE, SCALE);
    bay.goes(
        """
        > torque reached five four
        < I heard five four.
        < Spec is five two newton metres.
        > wrench three
        < Wrench three.
        > torque reached five four
        < Five four newton metres, two over.
        < Say: that is correct.
        > that is correct
        < Stage one closed at five four newton metres.
        < Hub title.
        < Torque one one seven.
        > one one one
        < I heard one one one.
        < Spec is one one seven newton metres.
        < Carry on turning.
        > one two five
        < I heard one two five.
        < Spec is one one seven newton metres.
        < If it is past that, say: turned too far.
        > one one five
        < One one five newton metres, two under.
        < Correct?
        > that is correct
        < Noted. Say: torque reached.
        > wrench clicked
        < Closed.
        < Cap title.
        < Torque four five.
        """);
    assertEquals(
        List.of("54 N·m, read", "115 N·m, read"),
        bay.recorded(SessionEvent.StageClosed.class).stream()
            .map(SessionEvent.StageClosed::value)
            .toList());
  }

  @Test
  @DisplayName("needs the unit with a value where the procedure mixes units")
  void mixed() {
    bay(
            List.of(LARGE, FOOT),
            nut("link", torque("52", TorqueUnit.NEWTON_METRE)),
            nut("hub", torque("62", TorqueUnit.POUND_FORCE_FOOT)))
        .goes(
            """
            > torque reached five two
            < No. Say the unit too: newton metres.
            > five two foot pounds
            < No. The spec is five two newton metres. Call it in that unit.
            > torque reached five two newton meters
            < Stage one closed at five two newton metres.
            < Hub title.
            < Torque six two foot pounds.
            """);
  }

  @Test
  @DisplayName("out of calibration is said before the first torque, and blocks until it is excused")
  void overdue() {
    Bay bay =
        Bay.briefing(
            Walk.of(
                SampleProcedures.procedure(
                    List.of(SampleProcedures.OVERDUE),
                    new WorkPhase(
                        "work",
                        Each.CAR,
                        List.of(
                            nut("link", torque("52", TorqueUnit.NEWTON_METRE)),
                            nut("hub", torque("117", TorqueUnit.NEWTON_METRE)))))));
    bay.goes(
        """
        > say again
        < Sample.
        < Values: invented.
        < Caution. Stands, never a jack alone.
        < Say: cautions understood.
        > cautions understood
        < Step one. link title.
        < Torque, five two newton metres.
        < Wrench two is out of calibration.
        < Take another, or say: calibration over, and why.
        > torque reached five two
        < No.
        < Wrench two is out of calibration.
        < Take another, or say: calibration over, and why.
        > calibration over no other wrench here
        < Wrench two, out of calibration, no other wrench here.
        < Say: that is correct.
        > torque reached five two
        < Not yet.
        < Wrench two, out of calibration, no other wrench here.
        < Say: that is correct.
        < Or say: that was wrong.
        > that was wrong
        < Forget that, then.
        < Torque five two.
        < Wrench two is out of calibration.
        < Take another, or say: calibration over, and why.
        > calibration over checked on the tester
        < Wrench two, out of calibration, checked on the tester.
        < Correct?
        > that is correct
        < Noted. Carry on.
        > torque reached five two
        < Stage one closed at five two newton metres.
        < Hub title.
        < Torque one one seven.
        """);
    assertEquals(1, bay.recorded(SessionEvent.OverdueNoted.class).size());
  }

  @Test
  @DisplayName("is to be named where one that could serve is out of calibration")
  void oneOfTwoOverdue() {
    bay(SampleProcedures.CLICKING, SampleProcedures.OVERDUE)
        .goes(
            """
            > torque reached five two
            < No. Wrench two is out of calibration.
            < Say which wrench you use.
            > calibration over as i was told
            < No. Wrench two is out of calibration.
            < Say which wrench you use.
            > wrench two
            < Wrench two.
            < Wrench two is out of calibration.
            < Take another, or say: calibration over, and why.
            > wrench one
            < Wrench one.
            > calibration over as i was told
            < Not now. Say: say again, to hear what is next.
            > torque reached five two
            < Stage one closed at five two newton metres.
            < Hub title.
            < Torque one one seven.
            """);
  }

  @Test
  @DisplayName("is what a tired person may say otherwise, and that names nothing")
  void otherwise() {
    Bay bay = bay(SMALL, LARGE);
    bay.after(
        "not wrench one", "wrench one or two", "wrench", "which wrench", "wrench one clicked");
    assertEquals(List.of(), bay.recorded(SessionEvent.WrenchNamed.class));
    assertEquals(List.of(), bay.recorded(SessionEvent.StageClosed.class));
  }

  @Test
  @DisplayName("is taken back as it was said, and nothing older is")
  void takenBack() {
    Bay bay = bay(SMALL, LARGE);
    bay.after("torque reached 52", "wrench two")
        .goes(
            """
            > cancel that
            < Taken back. No wrench named now.
            < Torque one one seven.
            > cancel that
            < Nothing to take back.
            < For an older step say: open step, its number, again.
            """);
    assertEquals(1, bay.recorded(SessionEvent.StageClosed.class).size());
    assertEquals(0, bay.recorded(SessionEvent.StageTakenBack.class).size());
  }

  @Test
  @DisplayName("that was excused is the one that is used; the excuse can be taken back")
  void excuseTakenBack() {
    bay(SampleProcedures.OVERDUE)
        .after("calibration over no other wrench here", "that is correct")
        .goes(
            """
            > cancel that
            < Taken back. No wrench named now.
            < Torque five two.
            < Wrench two is out of calibration.
            < Take another, or say: calibration over, and why.
            > torque reached five two
            < No.
            < Wrench two is out of calibration.
            < Take another, or say: calibration over, and why.
            """);
  }
}
