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
import org.undercall.core.review.Due;
import org.undercall.core.term.DueTime;
import org.undercall.text.Shown;

/**
 * What was handed over and is still to be done, as to-dos of iCalendar (RFC 5545).
 *
 * <p>What comes before driving is due at the end of the work, to the minute, and is of the highest
 * priority. What is due after days has that day. What is due after a distance, or at a time that is
 * not understood, has its words and no date, unless the asker gives a number of days; where the
 * odometer is known the words tell at which reading.
 */
public final class Reminders {
  private static final int HIGHEST = 1;

  private Reminders() {}

  /**
   * The calendar.
   *
   * @param days what is due after a distance or in words only is given a date so many days after
   *     the day of handing over; empty for no date
   */
  public static String of(Dossier dossier, Optional<Integer> days) {
    ICalendar calendar = new ICalendar();
    calendar.setVersion(ICalVersion.V2_0);
    calendar.setProductId("-//Undercall//Report//EN");
    Labels labels = new Labels(dossier);
    for (Due item : dossier.review().due()) {
      calendar.addTodo(todo(dossier, labels, item, days));
    }
    return Biweekly.write(calendar).go();
  }

  private static VTodo todo(Dossier dossier, Labels labels, Due item, Optional<Integer> days) {
    VTodo todo = new VTodo();
    String step = item.step().toString();
    todo.setUid(
        dossier.seal().sum().substring(0, 32) + "-" + step.replace('/', '-') + "@undercall");
    Date handedOver = Date.from(item.at().toInstant());
    todo.setDateTimeStamp(handedOver);
    todo.setCreated(handedOver);
    String mark = RecordWords.mark(dossier.review().origin()).map(w -> w + " ").orElse("");
    String words = RecordWords.title(dossier.review(), item) + ", " + item.words();
    todo.setSummary(Shown.plain(mark + words, " "));
    todo.setDescription(
        Shown.plain(
            "Due as the procedure says: "
                + item.words()
                + item.odometer(dossier.review().head().job())
                    .map(km -> ", at " + km + " by the odometer")
                    .orElse("")
                + ". Step "
                + labels.step(item.step())
                + ". Vehicle: "
                + dossier.procedure().about().vehicle()
                + ". Procedure: "
                + dossier.procedure().about().title()
                + ". Values: "
                + dossier.procedure().about().values()
                + ". The maker's repair data rules.",
            " "));
    todo.setStatus(Status.needsAction());
    if (item.time().when() == DueTime.When.BEFORE_DRIVING) {
      todo.setPriority(HIGHEST);
      todo.setDateDue(Date.from(dossier.review().head().last().toInstant()), true);
      alarm(todo);
    } else {
      item.day()
          .or(() -> days.map(count -> item.at().toLocalDate().plusDays(count)))
          .ifPresent(day -> due(todo, day));
    }
    return todo;
  }

  private static void due(VTodo todo, LocalDate day) {
    DateTimeComponents date =
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
    todo.setDateDue(new ICalDate(date, false));
    alarm(todo);
  }

  private static void alarm(VTodo todo) {
    Trigger start = new Trigger(Duration.builder().prior(true).hours(0).build(), Related.END);
    todo.addAlarm(VAlarm.display(start, "Undercall: handed over"));
  }
}
