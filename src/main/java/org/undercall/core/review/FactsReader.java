package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.DueTime;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.StepRef;

/** Reads a log once for the rows that are kept of it. */
final class FactsReader {
  private final OffsetDateTime first;
  private final Course course;
  private final RemarkReader remarks = new RemarkReader();
  private final Map<Facts.Refused, Long> refusals = new LinkedHashMap<>();
  private final Map<Facts.Misheard, Long> misheard = new LinkedHashMap<>();
  private final Map<Facts.Value, String> values = new LinkedHashMap<>();
  private SessionEvent.SessionStarted started = new SessionEvent.SessionStarted("", "", "", "");
  private String called = "";
  private final ToldReader told;
  private long lines;
  private long events;

  FactsReader(Optional<Walk> walk, Recorded first) {
    this.first = first.at().wall();
    this.course = new Course(walk, first);
    this.told = new ToldReader(walk);
  }

  void read(Recorded decision) {
    lines++;
    told.read(decision);
    course.pass(decision);
    for (SessionEvent event : decision.events()) {
      events++;
      course.read(event);
      remarks.read(event, decision, course.atHand()).ifPresent(this::refused);
      if (event instanceof SessionEvent.SessionStarted e) {
        started = e;
      }
      heard(event, decision.heard().map(Recorded.Heard::text).orElse(""));
      value(event);
    }
  }

  private void refused(Review.Refusal refusal) {
    SessionEvent event = refusal.event();
    String step = refusal.step().map(StepRef::toString).orElse("");
    String id = EventKind.of(event).id();
    refusals.merge(new Facts.Refused(step, id, words(event), 0), 1L, Long::sum);
  }

  private static String words(SessionEvent event) {
    if (event instanceof SessionEvent.ValueRefused) {
      return "value does not match";
    }
    if (event instanceof SessionEvent.CloseRefused e) {
      return "closing lacks " + Kebab.of(e.missing());
    }
    if (event instanceof SessionEvent.ReuseRefused) {
      return "used part beyond its limit";
    }
    if (event instanceof SessionEvent.MarkingRefused) {
      return "head marking not in the procedure";
    }
    return event instanceof SessionEvent.LoadRefused e
        ? "load not accepted, lacks " + Kebab.of(e.missing())
        : "not possible then: " + ((SessionEvent.NotNow) event).intent();
  }

  private void heard(SessionEvent event, String text) {
    if (event instanceof SessionEvent.ValueCalled
        || event instanceof SessionEvent.MeasureCalled
        || event instanceof SessionEvent.MarkingCalled
        || event instanceof SessionEvent.PositionsCalled
        || event instanceof SessionEvent.ReadingCalled
        || event instanceof SessionEvent.LoadCalled) {
      called = text;
    } else if (event instanceof SessionEvent.ValueDropped
        || event instanceof SessionEvent.ReadBackDropped) {
      misheard(called, "taken back");
    } else if (event instanceof SessionEvent.NotUnderstood e) {
      String reason = e.reason().replace('_', ' ').toLowerCase(Locale.ROOT);
      misheard(text, "not understood: " + reason);
    }
  }

  private void misheard(String heard, String what) {
    if (!heard.isEmpty()) {
      misheard.merge(new Facts.Misheard(heard, what, 0), 1L, Long::sum);
    }
  }

  private void value(SessionEvent event) {
    if (event instanceof SessionEvent.Measured e) {
      value(e.step(), "measured", e.value().toString());
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      value(e.step(), "marking", e.marking().text());
    } else if (event instanceof SessionEvent.StageClosed e) {
      value(e.step(), "stage " + e.stage(), e.value());
    }
  }

  private void value(StepRef step, String what, String value) {
    values.put(new Facts.Value(step.toString(), what, ""), value);
  }

  Facts facts(Origin origin) {
    Review.Totals totals = course.totals(0);
    List<Facts.StepRow> steps = new ArrayList<>();
    course.steps().forEach((ref, step) -> steps.add(row(ref, step)));
    return new Facts(
        new Facts.Work(
            started.title(),
            started.revision(),
            started.sha256(),
            course.complete() ? Facts.COMPLETE : Facts.OPEN,
            Kebab.of(origin.occasion()),
            Kebab.of(course.complete() ? Verdict.ofClosed(handedOver()) : Verdict.NOT_COMPLETE),
            lines,
            events),
        Facts.Times.of(first, course.now().at(), totals),
        steps,
        list(refusals, (r, n) -> new Facts.Refused(r.step(), r.id(), r.what(), n)),
        list(misheard, (m, n) -> new Facts.Misheard(m.heard(), m.what(), n)),
        list(values, (v, value) -> new Facts.Value(v.step(), v.what(), value)),
        due(steps),
        told.told(),
        found(remarks.remarks(List.of(), List.of())));
  }

  private static List<Facts.Due> found(Review.Remarks remarks) {
    List<Facts.Due> found = new ArrayList<>();
    for (Review.Timed<SessionEvent.NoteKept> note : remarks.notes()) {
      SessionEvent.NoteKept e = note.event();
      e.about()
          .ifPresent(
              about ->
                  found.add(
                      new Facts.Due(
                          e.step().toString(), Kebab.of(about).replace('-', ' '), e.text(), "")));
    }
    for (Review.Timed<SessionEvent.TroubleNoted> trouble : remarks.unsettled()) {
      SessionEvent.TroubleNoted e = trouble.event();
      String what = Kebab.of(e.trouble()).replace('-', ' ');
      String where = e.position().map(n -> "no. " + n + " ").orElse("");
      found.add(new Facts.Due(e.step().toString(), "not settled", where + what, ""));
    }
    return found;
  }

  private static <K, V, R> List<R> list(Map<K, V> map, java.util.function.BiFunction<K, V, R> row) {
    return map.entrySet().stream().map(e -> row.apply(e.getKey(), e.getValue())).toList();
  }

  private Facts.StepRow row(StepRef ref, StepCourse step) {
    String reason =
        step.putOff().isEmpty() ? "" : Kebab.of(step.putOff().get(step.putOff().size() - 1));
    StepReview.Times times = step.times(course.now());
    return new Facts.StepRow(
        ref.toString(),
        state(step),
        reason,
        times.working().toMillis(),
        step.isClosed() ? times.whole().length().toMillis() : 0,
        step.reopened().size(),
        step.begun());
  }

  private static String state(StepCourse step) {
    return switch (step.state()) {
      case CLOSED -> Facts.CLOSED;
      case OPEN -> Facts.OPEN;
      case PUT_OFF -> "put off";
      case STARTED_NOT_TIGHTENED -> "started";
    };
  }

  private List<Due> handedOver() {
    return remarks.handOvers().stream()
        .map(h -> Due.of(h.event().step(), h.at(), h.event().due()))
        .toList();
  }

  private List<Facts.Due> due(List<Facts.StepRow> steps) {
    List<Facts.Due> due = new ArrayList<>();
    for (Due item : handedOver()) {
      String when = Kebab.of(item.time().when());
      due.add(new Facts.Due(item.step().toString(), "handed over", item.words(), when));
    }
    String first = Kebab.of(DueTime.When.BEFORE_DRIVING); // What is open comes before driving.
    for (Facts.StepRow step : steps) {
      if (step.state().equals("put off")) {
        due.add(new Facts.Due(step.step(), "put off", step.reason(), first));
      } else if (step.state().equals("started")) {
        due.add(new Facts.Due(step.step(), "started, not tightened", step.reason(), first));
      }
    }
    return due;
  }
}
