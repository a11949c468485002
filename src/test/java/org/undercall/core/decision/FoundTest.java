package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

@DisplayName("What is found on the way")
class FoundTest {
  private static List<String> kept(Bay bay) {
    return bay.recorded(SessionEvent.NoteKept.class).stream()
        .map(
            e ->
                e.about().map(Enum::name).orElse("-")
                    + " "
                    + e.side().map(Enum::name).orElse("-")
                    + " "
                    + e.text())
        .toList();
  }

  @Test
  @DisplayName("is kept with its kind and side, and listed at the end")
  void listed() {
    Bay bay = Bay.atRideHeight();
    bay.goes(
        """
        > found fault
        < Found fault, left side. Speak.
        > boot of the tie rod is torn
        < Found fault kept, not checked.
        > found fault right side
        < Found fault, right side. Speak.
        > damper is wet
        < Found fault kept, not checked.
        > extra work
        < Extra work, left side. Speak.
        > cleaned the brake pipe bracket
        < Extra work kept, not checked.
        > part to order whole car
        < Part to order, whole car. Speak.
        > two hub caps
        < Part to order kept, not checked.
        > take a note
        < Speak your note.
        > the customer waits
        < Note kept, not checked.
        > end of work
        < Six steps open. End anyway?
        < Correct?
        > that is correct
        < Work ended, not complete. Six steps open.
        < Listed: two found faults; extra work, one item; one part to order.
        """);
    assertEquals(
        List.of(
            "FOUND_FAULT LEFT boot of the tie rod is torn",
            "FOUND_FAULT RIGHT damper is wet",
            "EXTRA_WORK LEFT cleaned the brake pipe bracket",
            "PART_TO_ORDER CAR two hub caps",
            "- - the customer waits"),
        kept(bay));
  }

  @Test
  @DisplayName("is dropped or taken back like a note, and then not listed")
  void takenBack() {
    Bay bay = Bay.atRideHeight();
    bay.goes(
        """
        > found fault
        < Found fault, left side. Speak.
        > cancel that
        < Forget that, then.
        > extra work
        < Extra work, left side. Speak.
        > cleaned the bracket
        < Extra work kept, not checked.
        > cancel that
        < Note taken back.
        > end of work
        < Six steps open. End anyway?
        < Correct?
        > that is correct
        < Work ended, not complete. Six steps open.
        """);
  }

  @Test
  @DisplayName("is broken off by a call of danger, and never closes anything")
  void danger() {
    Bay bay = Bay.atRideHeight();
    bay.after("found fault", "jack slipped", "resume the work", "found fault", "torque reached 52");
    assertEquals(List.of("FOUND_FAULT LEFT torque reached five two"), kept(bay));
    assertEquals(1, bay.recorded(SessionEvent.NoteDropped.class).size());
    assertEquals(List.of(), bay.recorded(SessionEvent.StageClosed.class));
    assertEquals(List.of(), bay.recorded(SessionEvent.ReadBackDropped.class));
  }
}
