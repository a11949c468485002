package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
  @DisplayName("have no date for a distance, and the end of the work for what comes before driving")
  void noDate() throws Exception {
    ICalendar calendar = calendar(Optional.empty());
    assertEquals(2, calendar.getTodos().size());
    VTodo first = calendar.getTodos().get(0);
    assertEquals(
        "Check the wheel alignment, before the van is driven away", first.getSummary().getValue());
    Dossier dossier = ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4);
    assertEquals(
        java.util.Date.from(dossier.review().head().last().toInstant()),
        first.getDateDue().getValue());
    assertEquals(1, first.getPriority().getValue());
    VTodo second = calendar.getTodos().get(1);
    assertEquals("Re-torque the wheel bolts, after 50 km", second.getSummary().getValue());
    assertNull(second.getDateDue());
    assertNull(second.getDateStart());
  }

  @Test
  @DisplayName("have a number of days that is given only where they have no date of their own")
  void due() throws Exception {
    VTodo first = calendar(Optional.of(14)).getTodos().get(0);
    VTodo second = calendar(Optional.of(14)).getTodos().get(1);
    var day = LogMaker.START.toLocalDate();
    assertTrue(first.getDateDue().getValue().hasTime());
    assertFalse(second.getDateDue().getValue().hasTime());
    var date = second.getDateDue().getValue().getRawComponents();
    assertEquals(day.plusDays(14).getDayOfMonth(), date.getDate());
    assertEquals(day.plusDays(14).getMonthValue(), date.getMonth());
    assertEquals(1, second.getAlarms().size());
  }

  @Test
  @DisplayName("keep their names from one report of a session to the next")
  void sameNames() throws Exception {
    String first = calendar(Optional.empty()).getTodos().get(0).getUid().getValue();
    assertEquals(first, calendar(Optional.of(3)).getTodos().get(0).getUid().getValue());
  }
}
