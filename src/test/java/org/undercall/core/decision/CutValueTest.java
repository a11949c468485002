package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;

@DisplayName("A value cut by a pause")
class CutValueTest {
  private static Bay bay(String torque) {
    Step nut =
        SampleProcedures.fasten(
            "nut",
            new Fastener.Part(Hardware.NUT, false, Lubrication.DRY),
            LoadCondition.ANY,
            List.of(new Variant(Optional.empty(), List.of(SampleProcedures.torque(torque)))));
    return Bay.working(
        Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(nut)))));
  }

  private static Intent said(Session session, String words) {
    return Interpreter.interpret(RecognisedPhrase.typed(words), Decider.heard(session), 0);
  }

  @ParameterizedTest
  @CsvSource({
    "110, one one, true",
    "110, one, true",
    "110, torque reached one one, true",
    "110, one one newton meters, false",
    "110, one one zero, false",
    "110, nine nine nine, false",
    "110, one hundred, true",
    "175, one seventy, true",
    "175, one hundred ten, false",
    "175, one seventeen, false",
    "62, six, true",
    "62, six two, false",
    "62, six three, false",
    "110, cancel that, false",
    "110, one one point five, false"
  })
  @DisplayName("may go on if it has fewer digits than what is waited for")
  void goesOn(String wanted, String words, boolean expected) {
    Session session = bay(wanted).session();
    assertEquals(expected, CutValue.mayGoOn(session, said(session, words)));
  }

  @ParameterizedTest
  @CsvSource({
    "110, one one, one one zero, true",
    "110, one one, one one five, true",
    "110, one, one one zero, true",
    "110, one, one one five, false",
    "62, six, six two, true",
    "62, six, six eight, false",
    "62, six two, six two eight, false"
  })
  @DisplayName("is one value if it has as many; after a lone digit, if it is the one waited for")
  void isOne(String wanted, String first, String whole, boolean expected) {
    Session session = bay(wanted).session();
    assertEquals(expected, CutValue.isOne(session, said(session, first), said(session, whole)));
  }

  @Test
  @DisplayName("is read back before it counts, whatever closes the stage")
  void readBack() {
    Bay bay = bay("110");
    bay.goes(
        """
        ~ torque reached one one zero
        < One one zero newton metres.
        < Say: that is correct.
        > that was wrong
        < Forget that, then.
        < Torque one one zero.
        ~ torque reached one one five
        < I heard one one five.
        < Spec is one one zero newton metres.
        ~ torque reached one one zero newton meters
        < One one zero newton metres.
        < Correct?
        > torque not reached
        < Forget that, then.
        < Torque one one zero.
        ~ one one zero
        < One one zero newton metres.
        < Correct?
        > that is correct
        < Noted. Say: torque reached.
        > torque reached
        < Stage one closed at one one zero newton metres.
        < All steps are closed. Say: end of work.
        """);
    assertEquals(1, bay.recorded(SessionEvent.ValueCalled.class).size());
  }
}
