package org.undercall.adapter.report;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.review.ToolState;
import org.undercall.core.term.Kebab;

/**
 * The fasteners of a session as CSV: one row for each stage of each fastener on each side. A
 * fastener whose stages are not known, because its head marking was not read, has one row.
 */
public final class FastenersCsv {
  private static final List<String> COLUMNS =
      List.of(
          "step",
          "side",
          "phase",
          "title",
          "fastener",
          "thread",
          "count",
          "state",
          "stage",
          "kind",
          "unit",
          "specified",
          "tolerance",
          "dialled",
          "called",
          "deviation",
          "within_tolerance",
          "closed",
          "one_by_one",
          "head_marking",
          "one_time_use",
          "new_hardware",
          "load_needed",
          "load_confirmed",
          "load_proof",
          "load_height",
          "start",
          "end",
          "duration_s",
          "working_s",
          "aside_s",
          "refusals",
          "reopened",
          "not_borne_out",
          "tool",
          "tool_calibrated",
          "tool_calibration",
          "final_torque",
          "closed_by",
          "renewed_because",
          "used_again",
          "final_torque_hint",
          "witness",
          "witnessed",
          "record",
          "values",
          "basis",
          "sooner_than_possible",
          "stood_before");
  private static final BigDecimal MILLIS = new BigDecimal(1000);

  private final CsvText csv;
  private final Review review;

  private FastenersCsv(CsvText csv, Review review) {
    this.csv = csv;
    this.review = review;
  }

  /** The whole table; times in ISO form, lengths of time in seconds. */
  public static String of(Review review) {
    CsvText csv = new CsvText(COLUMNS);
    FastenersCsv rows = new FastenersCsv(csv, review);
    for (StepReview step : review.steps()) {
      if (step.place().step() instanceof Step.Fasten fasten) {
        rows.add(step, fasten.fastener(), review.head().tools());
      }
    }
    return csv.toString();
  }

  private void add(StepReview step, Fastener fastener, List<ToolState> tools) {
    List<StepReview.StageReview> stages = step.tightened().stages();
    if (stages.isEmpty()) {
      row(step, fastener, List.of("", "", "", "", "", "", "", "", "", "", ""), List.of("", "", ""));
    }
    for (int i = 0; i < stages.size(); i++) {
      StepReview.StageReview stage = stages.get(i);
      row(step, fastener, stage(i + 1, stage), tool(stage, tools));
    }
  }

  private void row(StepReview step, Fastener fastener, List<Object> stage, List<Object> tool) {
    List<Object> row = new ArrayList<>();
    row.addAll(
        List.of(
            step.place().ref().id(),
            ReviewWords.plain(step.place().ref().side()),
            step.place().phase(),
            step.place().step().head().title(),
            fastener.name(),
            fastener.thread(),
            fastener.set().count(),
            ReviewWords.plain(step.state())));
    row.addAll(stage);
    row.addAll(conditions(step.tightened(), fastener));
    row.addAll(course(step));
    row.addAll(tool);
    row.add(ReviewWords.finalTorque(step.tightened()));
    row.add(step.work().closedBy());
    row.add(ReviewWords.renewed(fastener.part()));
    row.add(
        step.tightened()
            .reused()
            .map(used -> ReviewWords.reused(used.event().by(), used.event().value())));
    row.add(step.tightened().judged().map(judged -> ReviewWords.plain(judged.hint())));
    row.add(step.work().witness().map(seen -> seen.event().witness()));
    row.add(time(step.work().witness().map(Review.Timed::at)));
    row.addAll(worth(step, stage.get(0)));
    csv.row(row.toArray());
  }

  /** What the row is worth: of a record or not, whose values, and what stood before it. */
  private List<Object> worth(StepReview step, Object stage) {
    return List.of(
        Kebab.of(review.origin().occasion()),
        review.head().about().values(),
        "as called, not measured",
        review.remarks().haste().stream()
            .filter(h -> h.step().equals(step.place().ref()) && stage.equals(h.stage()))
            .map(RecordWords::haste)
            .collect(Collectors.joining("; ")),
        step.work().earlier().stream()
            .map(e -> ReviewJson.time(e.at()) + ": " + RecordWords.earlier(e, ReviewJson::time))
            .collect(Collectors.joining(" | ")));
  }

  private static List<Object> stage(int number, StepReview.StageReview stage) {
    Stage specification = stage.specification();
    boolean torque = specification instanceof Stage.TorqueStage;
    return List.of(
        number,
        StageWords.kind(specification),
        torque ? ((Stage.TorqueStage) specification).target().unit().symbol() : "°",
        torque
            ? ((Stage.TorqueStage) specification).target().amount().toPlainString()
            : specification.amount().toPlainString(),
        stage.plusMinus().toPlainString(),
        torque ? specification.amount().toPlainString() : "",
        stage.called().map(BigDecimal::toPlainString),
        stage.deviation().map(BigDecimal::toPlainString),
        stage.called().map(called -> yes(stage.within())),
        time(stage.closed()),
        ofSet(stage));
  }

  /** The positions of a set, each with its time and what was called; blank if there are none. */
  private static String ofSet(StepReview.StageReview stage) {
    return stage.positions().stream()
        .map(
            p ->
                p.number()
                    + (p.counted() ? " counted " : " ")
                    + ReviewJson.time(p.closed())
                    + p.called().map(v -> " at " + v.toPlainString()).orElse(""))
        .collect(Collectors.joining("; "));
  }

  private static List<Object> conditions(StepReview.Tightened tightened, Fastener fastener) {
    return List.of(
        tightened.marking().map(marking -> marking.text()),
        yes(fastener.part().oneTimeUse()),
        time(tightened.newHardware()),
        ReviewWords.plain(fastener.needs()),
        time(tightened.load().map(Review.Timed::at)),
        tightened.load().map(load -> ReviewWords.plain(load.event().proof())),
        tightened.load().flatMap(load -> load.event().height()));
  }

  private static List<Object> course(StepReview step) {
    StepReview.Times times = step.times();
    return List.of(
        time(times.start()),
        time(times.end()),
        times.start().map(start -> seconds(times.whole().length())),
        seconds(times.working()),
        seconds(times.aside()),
        step.work().refusals().stream()
            .map(refusal -> EventWords.refusal(refusal.event()))
            .collect(Collectors.joining("; ")),
        step.work().reopened().size(),
        StepText.doubts(step));
  }

  /** What was named; the calibration only if it was one wrench. */
  private static List<Object> tool(StepReview.StageReview stage, List<ToolState> tools) {
    Optional<ToolState> tool = ToolWords.named(tools, stage);
    return List.of(
        String.join(", ", stage.wrenches()),
        tool.flatMap(t -> t.tool().calibrated()).map(LocalDate::toString),
        tool.map(ToolWords::state));
  }

  private static Optional<String> time(Optional<OffsetDateTime> time) {
    return time.map(ReviewJson::time);
  }

  private static String seconds(Duration duration) {
    return new BigDecimal(duration.toMillis()).divide(MILLIS).toPlainString();
  }

  private static String yes(boolean value) {
    return value ? "yes" : "no";
  }
}
