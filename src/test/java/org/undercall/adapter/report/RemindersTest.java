package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VTodo;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.review.LogMaker;

@DisplayName("The to-dos of what was handed over")
class RemindersTest {
  private static ICalendar calendar(Optional<Integer> days) throws Exception {
    Dossier dossier = ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4);
    ICalendar calendar = Biweekly.parse(Reminders.of(dossier, days)).first();
    assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty());
    return calendar;
  }

  @Test
  @DisplayName("have no date that the procedure does not state")
  void noDate() throws Exception {
    ICalendar calendar = calendar(Optional.empty());
    assertEquals(2, calendar.getTodos().size());
    for (VTodo todo : calendar.getTodos()) {
      assertNull(todo.getDateDue());
      assertNull(todo.getDateStart());
    }
    VTodo first = calendar.getTodos().get(0);
    assertEquals("Re-torque the wheel bolts, after 50 km", first.getSummary().getValue());
  }

  @Test
  @DisplayName("are due a number of days after the hand-over when it is given")
  void due() throws Exception {
    for (VTodo todo : calendar(Optional.of(14)).getTodos()) {
      var date = todo.getDateDue().getValue().getRawComponents();
      var day = LogMaker.START.toLocalDate().plusDays(14);
      assertEquals(day.getDayOfMonth(), date.getDate());
      assertEquals(day.getMonthValue(), date.getMonth());
      assertEquals(1, todo.getAlarms().size());
    }
  }

  @Test
  @DisplayName("keep their names from one report of a session to the next")
  void sameNames() throws Exception {
    String first = calendar(Optional.empty()).getTodos().get(0).getUid().getValue();
    assertEquals(first, calendar(Optional.of(3)).getTodos().get(0).getUid().getValue());
  }
}
