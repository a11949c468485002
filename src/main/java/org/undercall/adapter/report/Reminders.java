package org.undercall.adapter.report;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VTodo;
import biweekly.parameter.Related;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.time.LocalDate;
import java.util.Date;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Review;
import org.undercall.text.Shown;

/**
 * What was handed over and is still to be done, as to-dos of iCalendar (RFC 5545).
 *
 * <p>A procedure states in words when an item is due, often as a distance. So a to-do has those
 * words and no date, unless the asker gives a number of days.
 */
public final class Reminders {
  private Reminders() {}

  /**
   * The calendar.
   *
   * @param days the to-dos are due so many days after the day of handing over; empty for no date
   */
  public static String of(Dossier dossier, Optional<Integer> days) {
    ICalendar calendar = new ICalendar();
    calendar.setVersion(ICalVersion.V2_0);
    calendar.setProductId("-//Undercall//Report//EN");
    Labels labels = new Labels(dossier);
    for (Review.Timed<SessionEvent.HandedOver> item : dossier.review().remarks().handOvers()) {
      calendar.addTodo(todo(dossier, labels, item, days));
    }
    return Biweekly.write(calendar).go();
  }

  private static VTodo todo(
      Dossier dossier,
      Labels labels,
      Review.Timed<SessionEvent.HandedOver> item,
      Optional<Integer> days) {
    VTodo todo = new VTodo();
    String step = item.event().step().toString();
    todo.setUid(
        dossier.seal().sum().substring(0, 32) + "-" + step.replace('/', '-') + "@undercall");
    Date handedOver = Date.from(item.at().toInstant());
    todo.setDateTimeStamp(handedOver);
    todo.setCreated(handedOver);
    todo.setSummary(Shown.plain(title(dossier, item) + ", " + item.event().due(), " "));
    todo.setDescription(
        Shown.plain(
            "Due as the procedure says: "
                + item.event().due()
                + ". Step "
                + labels.step(item.event().step())
                + ". Vehicle: "
                + dossier.procedure().about().vehicle()
                + ". Procedure: "
                + dossier.procedure().about().title()
                + ". Values: "
                + dossier.procedure().about().values()
                + ". The maker's repair data rules.",
            " "));
    todo.setStatus(Status.needsAction());
    days.ifPresent(count -> due(todo, item.at().toLocalDate().plusDays(count)));
    return todo;
  }

  private static void due(VTodo todo, LocalDate day) {
    DateTimeComponents date =
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
    todo.setDateDue(new ICalDate(date, false));
    Trigger start = new Trigger(Duration.builder().prior(true).hours(0).build(), Related.END);
    todo.addAlarm(VAlarm.display(start, "Undercall: handed over"));
  }

  private static String title(Dossier dossier, Review.Timed<SessionEvent.HandedOver> item) {
    int number = dossier.number(item.event().step());
    return number == 0
        ? item.event().step().toString()
        : dossier.review().steps().get(number - 1).place().step().head().title();
  }
}
