package org.undercall.adapter.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.text.Markup;

/** The timeline with its table, every step, and what was refused. */
final class StepSections {
  private final Dossier dossier;
  private final Course course;
  private final Labels labels;

  StepSections(Dossier dossier) {
    this.dossier = dossier;
    this.course = Course.of(dossier);
    this.labels = new Labels(dossier);
  }

  void timeline(Markup m) {
    m.leaf("h2", "Timeline", "id", "timeline");
    m.leaf(
        "p",
        "Grey bars: the step was at hand. Marks that would cover each other stand side by side."
            + " The same in words: \"Event log\".");
    m.open("div", "class", "picture").made(MarkShape.legend()).closeLine();
    for (String picture : new TimelinePicture(dossier, course).pictures()) {
      m.open("div", "class", "picture").made(picture).closeLine();
    }
  }

  void order(Markup m) {
    m.leaf("h2", "Event log", "id", "order");
    m.leaf("p", "The timeline in words.");
    Table table =
        Table.begin(
            m,
            "What happened, in the order of time",
            List.of("When|10", "Mark|5", "Kind|15", "Step or side|30", "What|40"));
    for (Course.Mark mark : course.marks()) {
      String about = mark.step().map(labels::step).orElse(ReviewWords.side(mark.side()));
      String when = labels.time(mark.at());
      table.row(when, mark.kind().letter(), mark.kind().meaning(), about, mark.words());
    }
    table.end();
  }

  void steps(Markup m) {
    m.leaf("h2", "Every step", "id", "steps");
    Table table =
        Table.begin(
            m,
            "Steps in the order of the procedure",
            List.of(
                "Step|26",
                "Phase|9",
                "State|10",
                "First at hand|8",
                "Closed|8",
                "Whole time|9",
                "At work|8",
                "What was recorded|22"));
    for (StepReview step : dossier.review().steps()) {
      StepReview.Times times = step.times();
      table.row(
          labels.step(step.place().ref()),
          step.place().phase(),
          ReviewWords.plain(step.state()),
          times.start().map(labels::time).orElse("–"),
          times.end().map(labels::time).orElse("–"),
          ReviewWords.length(times.whole()),
          ReviewWords.length(times.working()),
          recorded(step));
    }
    table.end();
  }

  private String recorded(StepReview step) {
    List<String> parts = new ArrayList<>();
    if (step.place().step() instanceof Step.Do work) {
      work.check().ifPresent(parts::add);
    }
    for (var answer : step.work().answers()) {
      parts.add(answer.event().passed() ? "passed" : "NOT passed");
    }
    for (var measured : step.work().measured()) {
      String within = measured.event().withinLimits() ? "within limits" : "OUTSIDE its limits";
      parts.add("measured " + measured.event().value() + ", " + within);
    }
    if (!step.work().putOff().isEmpty()) {
      parts.add(
          "put off: "
              + step.work().putOff().stream()
                  .map(ReviewWords::plain)
                  .collect(Collectors.joining(", ")));
    }
    step.work().closedBy().ifPresent(who -> parts.add("closed by " + who));
    step.work()
        .witness()
        .ifPresent(
            seen -> parts.add("witness " + seen.event().witness() + " " + labels.time(seen.at())));
    if (step.work().witnessMissing()) {
      parts.add("WITNESS MISSING");
    }
    for (var again : step.work().reopened()) {
      parts.add("opened again " + labels.time(again));
    }
    if (step.tightened().voided() > 0) {
      parts.add("stages made void: " + step.tightened().voided());
    }
    if (!step.work().refusals().isEmpty()) {
      parts.add("refusals: " + step.work().refusals().size());
    }
    return String.join("; ", parts);
  }

  /** What went wrong, before everything else. */
  static void troubles(Markup m, Dossier dossier) {
    List<Review.Timed<SessionEvent>> troubles = dossier.review().remarks().troubles();
    if (troubles.isEmpty()) {
      return;
    }
    Labels labels = new Labels(dossier);
    m.leaf("h2", "What went wrong", "id", "troubles");
    Table table =
        Table.begin(m, "What went wrong, and how it was settled", List.of("When|10", "What|90"));
    troubles.forEach(c -> table.row(labels.time(c.at()), EventWords.trouble(c.event())));
    table.end();
    int open = dossier.review().unsettled().size();
    m.leaf("p", open == 0 ? "All of it was settled." : open + " NOT SETTLED.", "class", "strong");
  }

  void changes(Markup m) {
    List<Review.Timed<SessionEvent>> changes = dossier.review().remarks().changes();
    if (changes.isEmpty()) {
      return;
    }
    m.leaf("h2", "Undone, broken off, out of order", "id", "changes");
    Table table =
        Table.begin(
            m, "What was undone, broken off or done out of order", List.of("When|10", "What|90"));
    changes.forEach(c -> table.row(labels.time(c.at()), EventWords.change(c.event())));
    table.end();
  }

  void refusals(Markup m) {
    List<Review.Refusal> refusals = dossier.review().remarks().refusals();
    m.leaf("h2", "Refused", "id", "refused");
    if (refusals.isEmpty()) {
      m.leaf("p", "Nothing was refused.");
      return;
    }
    Table table =
        Table.begin(
            m, "What was refused, and why", List.of("When|10", "Step|30", "Why|35", "Heard|25"));
    for (Review.Refusal refusal : refusals) {
      table.row(
          labels.time(refusal.at()),
          refusal.step().map(labels::step).orElse("–"),
          EventWords.refusal(refusal.event()),
          refusal.heard().orElse("–"));
    }
    table.end();
  }
}
