package org.undercall.adapter.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Due;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Haste;
import org.undercall.core.review.Review;
import org.undercall.core.review.Span;
import org.undercall.core.review.ToolState;
import org.undercall.core.term.Kebab;

/**
 * A review as JSON, with the same content as the text: times in ISO form, lengths of time in whole
 * milliseconds (members ending in {@code Millis}).
 */
public final class ReviewJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private ReviewJson() {}

  /** The whole review as one object, indented, ended with a line feed. */
  public static String of(Review review) {
    return of(review, List.of());
  }

  /** The same of a session that visits went on from. */
  public static String of(Review review, List<FollowUp> visits) {
    ObjectNode root = MAPPER.createObjectNode();
    worth(root, review);
    head(root, review.head());
    ArrayNode steps = root.putArray("steps");
    review.steps().forEach(step -> StepJson.put(steps.addObject(), step));
    remarks(root, review);
    BeforeAfterTable.put(root.putArray("beforeAndAfter"), review);
    ArrayNode later = root.putArray("visits");
    visits.forEach(visit -> visit(later.addObject(), visit));
    Review.Totals totals = review.totals();
    ObjectNode times = root.putObject("totals");
    span(times, "elapsed", totals.elapsed());
    times.put("workingMillis", totals.working().toMillis());
    times.put("heldMillis", totals.held().toMillis());
    times.put("awayMillis", totals.away().toMillis());
    times.put("notUnderstood", totals.notUnderstood());
    root.put("ended", review.ending().ended());
    root.put("saidComplete", review.ending().saidComplete());
    root.put("complete", review.complete());
    root.put("verdict", Kebab.of(review.verdict()));
    try {
      return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree always has a text", e);
    }
  }

  private static void worth(ObjectNode root, Review review) {
    root.put("occasion", Kebab.of(review.origin().occasion()));
    root.put("record", review.origin().isRecord());
    RecordWords.mark(review.origin()).ifPresent(mark -> root.put("mark", mark));
    root.put("invented", review.invented());
    root.putObject("answers")
        .put("spoken", review.origin().spoken())
        .put("typed", review.origin().typed())
        .put("pressed", review.origin().pressed());
  }

  private static void visit(ObjectNode node, FollowUp visit) {
    node.put("session", visit.session()).put("began", time(visit.began()));
    node.put("done", visit.done()).put("rehearsed", visit.rehearsed());
    node.put("sameLog", visit.sameLog());
    visit.odometer().ifPresent(km -> node.put("odometer", km.toString()));
    ArrayNode moved = node.putArray("moved");
    visit.moved().forEach(step -> moved.add(step.toString()));
  }

  private static void head(ObjectNode root, Review.Head head) {
    root.put("title", head.about().title());
    root.put("revision", head.about().revision());
    root.put("vehicle", head.about().vehicle());
    root.put("values", head.about().values());
    root.put("caution", ReviewWords.CALLED_NOT_MEASURED);
    root.put("began", time(head.started()));
    root.put("lastEntry", time(head.last()));
    root.put("version", head.version());
    ObjectNode job = root.putObject("job");
    head.job().registration().ifPresent(text -> job.put("registration", text));
    head.job().vin().ifPresent(vin -> job.put("vin", vin.text()));
    head.job().odometer().ifPresent(km -> job.put("odometer", km.toString()));
    head.visit()
        .ifPresent(
            visit -> {
              ObjectNode before = root.putObject("goesOnFrom");
              before.put("session", visit.session()).put("log", visit.log());
              visit.odometer().ifPresent(km -> before.put("odometer", km.toString()));
            });
    head.job().number().ifPresent(text -> job.put("number", text));
    head.job().technician().ifPresent(text -> job.put("technician", text));
    ArrayNode tools = root.putArray("tools");
    head.tools()
        .forEach(
            t ->
                calibrated(tools.addObject(), t)
                    .put("id", t.tool().id())
                    .put("least", t.tool().least().toString())
                    .put("most", t.tool().most().toString())
                    .put("calibration", ToolWords.state(t))
                    .put("kind", ReviewWords.plain(t.tool().kind()))
                    .put("uses", t.uses())
                    .put("notKnownToBeWithIt", t.possible()));
  }

  private static ObjectNode about(ObjectNode node, SessionEvent.NoteKept note) {
    note.about().ifPresent(about -> node.put("about", ReviewWords.plain(about)));
    note.side().ifPresent(side -> node.put("side", ReviewWords.plain(side)));
    return node;
  }

  private static ObjectNode calibrated(ObjectNode tool, ToolState state) {
    state.tool().calibrated().ifPresent(day -> tool.put("calibrated", day.toString()));
    state.calibration().ifPresent(held -> tool.put("due", held.due().toString()));
    return tool;
  }

  private static void remarks(ObjectNode root, Review review) {
    Review.Remarks remarks = review.remarks();
    ArrayNode loads = root.putArray("loads");
    remarks.loads().forEach(n -> timed(loads, n).put("what", EventWords.load(n.event())));
    ArrayNode changes = root.putArray("changes");
    remarks.changes().forEach(n -> timed(changes, n).put("what", EventWords.change(n.event())));
    ArrayNode troubles = root.putArray("troubles");
    remarks.troubles().forEach(n -> timed(troubles, n).put("what", EventWords.trouble(n.event())));
    ArrayNode refusals = root.putArray("refusals");
    remarks.refusals().forEach(refusal -> refusal(refusals.addObject(), refusal));
    ArrayNode notes = root.putArray("notes");
    remarks
        .notes()
        .forEach(
            n ->
                about(timed(notes, n), n.event())
                    .put("step", n.event().step().toString())
                    .put("text", n.event().text())
                    .put("checked", false));
    ArrayNode order = root.putArray("toOrder");
    OrderList.of(review).forEach(order::add);
    ArrayNode handOvers = root.putArray("handedOver");
    for (Due due : review.due()) {
      ObjectNode one = handOvers.addObject().put("at", time(due.at()));
      one.put("step", due.step().toString()).put("due", due.words());
      one.put("when", Kebab.of(due.time().when()));
      due.day().ifPresent(day -> one.put("day", day.toString()));
      due.odometer(review.head().job()).ifPresent(km -> one.put("odometer", km.toString()));
    }
    ArrayNode haste = root.putArray("haste");
    remarks.haste().forEach(h -> haste(haste.addObject(), h));
    ArrayNode timers = root.putArray("timers");
    remarks.timers().forEach(t -> timed(timers, t).put("what", TimerWords.of(t.event())));
    ArrayNode open = root.putArray("open");
    review.open().forEach(step -> open.add(step.place().ref().toString()));
    ArrayNode unknown = root.putArray("notInProcedure");
    review.ending().unknownSteps().forEach(ref -> unknown.add(ref.toString()));
    ArrayNode losses = root.putArray("logNotWhole");
    review.ending().losses().forEach(l -> timed(losses, l).put("what", EventWords.loss(l.event())));
  }

  private static void haste(ObjectNode node, Haste haste) {
    node.put("at", time(haste.at())).put("step", haste.step().toString());
    node.put("kind", Kebab.of(haste.kind()));
    if (haste.stage() > 0) {
      node.put("stage", haste.stage());
    }
    node.put("tookMillis", haste.took().toMillis()).put("leastMillis", haste.least().toMillis());
  }

  static void refusal(ObjectNode node, Review.Refusal refusal) {
    node.put("at", time(refusal.at()));
    refusal.step().ifPresent(step -> node.put("step", step.toString()));
    node.put("what", EventWords.refusal(refusal.event()));
    refusal.heard().ifPresent(heard -> node.put("heard", heard));
    refusal.clip().ifPresent(clip -> node.put("clip", clip));
  }

  static ObjectNode timed(ArrayNode list, Review.Timed<?> timed) {
    ObjectNode node = list.addObject().put("at", time(timed.at()));
    timed.clip().ifPresent(clip -> node.put("clip", clip));
    return node;
  }

  static void span(ObjectNode node, String name, Span span) {
    node.put(name + "Millis", span.length().toMillis());
    node.put("acrossRestart", span.acrossRestart());
  }

  static String time(OffsetDateTime time) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
  }
}
