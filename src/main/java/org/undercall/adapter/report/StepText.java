package org.undercall.adapter.report;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;

/** One step of a review as a block of lines. */
final class StepText {
  private StepText() {}

  static void add(Lines lines, StepReview step) {
    var head = step.place().step().head();
    lines.add(
        1,
        ReviewWords.plain(step.state()).toUpperCase(java.util.Locale.ROOT) + ": " + head.title());
    addTimes(lines, step.times());
    addFastener(lines, step);
    for (var answer : step.work().answers()) {
      lines.add(2, "check " + (answer.event().passed() ? "passed" : "NOT passed") + at(answer));
    }
    for (var measured : step.work().measured()) {
      String within = measured.event().withinLimits() ? "within limits" : "OUTSIDE its limits";
      lines.add(
          2,
          "measured "
              + measured.event().value()
              + ", "
              + within
              + at(measured)
              + ReviewText.clip(measured.clip()));
    }
    addTrouble(lines, step);
  }

  private static void addTimes(Lines lines, StepReview.Times times) {
    if (times.start().isEmpty()) {
      lines.add(2, "not begun");
      return;
    }
    String end = times.end().map(ReviewText.TIME::format).orElse("still open");
    String from = ReviewText.TIME.format(times.start().get());
    lines.add(2, from + " to " + end + ", " + ReviewWords.length(times.whole()));
    lines.add(
        2,
        "at work "
            + ReviewWords.length(times.working())
            + part("put aside", times.aside())
            + part("timer", times.timed()));
  }

  private static String part(String name, Duration length) {
    return length.isZero() ? "" : ", " + name + " " + ReviewWords.length(length);
  }

  private static void addFastener(Lines lines, StepReview step) {
    StepReview.Tightened tightened = step.tightened();
    tightened.marking().ifPresent(m -> lines.add(2, "head marking " + m));
    tightened
        .newHardware()
        .ifPresent(n -> lines.add(2, "new hardware " + ReviewText.TIME.format(n)));
    tightened
        .reused()
        .ifPresent(
            used ->
                lines.add(
                    2,
                    "used part again, "
                        + ReviewWords.reused(used.event().by(), used.event().value())
                        + at(used)));
    tightened.byHand().ifPresent(n -> lines.add(2, "run in by hand " + ReviewText.TIME.format(n)));
    tightened.load().ifPresent(l -> lines.add(2, EventWords.confirmed(l.event()) + at(l)));
    int number = 1;
    for (StepReview.StageReview stage : tightened.stages()) {
      lines.add(2, "stage " + number + ": " + stage(stage, step));
      number++;
    }
    ReviewWords.runDown(tightened).ifPresent(read -> lines.add(2, "run-down torque " + read));
    ReviewWords.finalTorque(tightened).ifPresent(read -> lines.add(2, "final torque " + read));
    if (tightened.voided() > 0) {
      lines.add(2, "stages made void: " + tightened.voided());
    }
  }

  private static String stage(StepReview.StageReview stage, StepReview step) {
    String called =
        stage
            .called()
            .map(v -> ", called " + v.toPlainString() + (stage.within() ? "" : " OUTSIDE"))
            .orElse(", no value called");
    String closed =
        stage.closed().map(c -> ", closed " + ReviewText.TIME.format(c)).orElse(", open");
    int count = ((Step.Fasten) step.place().step()).fastener().set().count();
    return ReviewWords.specification(stage)
        + called
        + closed
        + (stage.wrenches().isEmpty() ? "" : ", " + String.join(", ", stage.wrenches()))
        + ReviewWords.ofSet(stage, count, ReviewText.TIME::format)
        + ReviewText.clip(stage.clip());
  }

  private static void addTrouble(Lines lines, StepReview step) {
    StepReview.Work work = step.work();
    if (!work.putOff().isEmpty()) {
      lines.add(2, "put off: " + joined(work.putOff().stream().map(ReviewWords::plain).toList()));
    }
    work.closedBy().ifPresent(who -> lines.add(2, "closed by " + who));
    work.witness()
        .ifPresent(
            seen ->
                lines.add(
                    2,
                    "witness " + seen.event().witness() + ": " + seen.event().seen() + at(seen)));
    if (work.witnessMissing()) {
      lines.add(2, "WITNESS MISSING");
    }
    if (!work.reopened().isEmpty()) {
      lines.add(
          2,
          "opened again " + joined(work.reopened().stream().map(ReviewText.TIME::format).toList()));
    }
    work.earlier()
        .forEach(
            e ->
                lines.add(
                    2,
                    "before "
                        + ReviewText.TIME.format(e.at())
                        + ": "
                        + RecordWords.earlier(e, ReviewText.TIME::format)));
    if (!work.refusals().isEmpty()) {
      lines.add(2, "refusals: " + work.refusals().size());
    }
    if (!step.doubts().isEmpty()) {
      lines.add(2, "NOT BORNE OUT: " + doubts(step));
    }
  }

  static String doubts(StepReview step) {
    return step.doubts().stream()
        .sorted()
        .map(ReviewWords::doubt)
        .collect(Collectors.joining("; "));
  }

  private static String joined(List<String> parts) {
    return String.join(", ", parts);
  }

  private static String at(Review.Timed<?> timed) {
    return " " + ReviewText.TIME.format(timed.at());
  }
}
