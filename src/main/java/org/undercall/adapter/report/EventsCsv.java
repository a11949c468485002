package org.undercall.adapter.report;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Review;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** The events of a session as CSV: one row an event; a decision without events has one row. */
public final class EventsCsv {
  private static final List<String> COLUMNS =
      List.of(
          "seq",
          "at",
          "mono_ms",
          "how",
          "heard",
          "intent",
          "confidence",
          "event_id",
          "event",
          "step",
          "side",
          "fields",
          "said",
          "record",
          "values");

  private EventsCsv() {}

  /**
   * The whole table.
   *
   * @param review the session, looked at
   * @param log every decision
   * @param fields the fields of an event as a JSON object
   */
  public static String of(
      Review review, List<Recorded> log, Function<SessionEvent, String> fields) {
    CsvText csv = new CsvText(COLUMNS);
    List<String> worth =
        List.of(Kebab.of(review.origin().occasion()), review.head().about().values());
    for (Recorded decision : log) {
      if (decision.events().isEmpty()) {
        row(csv, decision, Optional.empty(), "", worth);
      }
      for (SessionEvent event : decision.events()) {
        row(csv, decision, Optional.of(event), fields.apply(event), worth);
      }
    }
    return csv.toString();
  }

  private static void row(
      CsvText csv,
      Recorded decision,
      Optional<SessionEvent> event,
      String fields,
      List<String> worth) {
    Optional<EventKind> kind = event.map(EventKind::of);
    Optional<Recorded.Heard> heard = decision.heard();
    Optional<StepRef> step = event.flatMap(e -> field(e, StepRef.class));
    csv.row(
        decision.seq(),
        ReviewJson.time(decision.at().wall()),
        decision.at().monotonicMillis(),
        heard.map(Recorded.Heard::how),
        heard.map(Recorded.Heard::text),
        heard.map(Recorded.Heard::intent),
        heard.map(Recorded.Heard::confidence),
        kind.map(EventKind::id),
        kind.map(k -> Kebab.of(k)),
        step.map(StepRef::id),
        step.map(StepRef::side)
            .or(() -> event.flatMap(e -> field(e, Side.class)))
            .map(ReviewWords::plain),
        fields,
        decision.said(),
        worth.get(0),
        worth.get(1));
  }

  /** The first field of a type; empty if the event has none. */
  private static <T> Optional<T> field(SessionEvent event, Class<T> type) {
    return Arrays.stream(event.getClass().getRecordComponents())
        .filter(component -> component.getType() == type)
        .map(component -> type.cast(value(component, event)))
        .findFirst();
  }

  private static Object value(RecordComponent component, SessionEvent event) {
    try {
      return component.getAccessor().invoke(event);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("every event is a public record: " + event, e);
    }
  }
}
