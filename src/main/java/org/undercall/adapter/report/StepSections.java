package org.undercall.adapter.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.Earlier;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.text.Markup;

/** The timeline with its table, every step, and what was refused. */
final class StepSections {
  private static final List<String> STEP_COLUMNS =
      List.of(
          "Step|31",
          "State|9",
          "First at hand|10",
          "Closed|10",
          "Whole time|10",
          "At work|10",
          "What was recorded|20");

  private final Dossier dossier;
  private final Course course;
  private final Labels labels;

  StepSections(Dossier dossier) {
    this.dossier = dossier;
    this.course = Course.of(dossier);
    this.labels = new Labels(dossier);
  }

  void timeline(Markup m) {
    List<String> pictures = new TimelinePicture(dossier, course).pictures();
    m.open("div", "class", "keep").leaf("h2", "Timeline", "id", "timeline");
    m.leaf(
        "p",
        "Grey bars: the step was at hand. Marks that would cover each other stand side by side."
            + " The same in words: \"Event log\".");
    m.open("div", "class", "picture").made(MarkShape.legend()).closeLine();
    for (int i = 0; i < pictures.size(); i++) {
      m.open("div", "class", "picture").made(pictures.get(i)).closeLine();
      if (i == 0) {
        m.closeLine();
      }
    }
  }

  void order(Markup m) {
    m.leaf("h2", "Event log", "id", "order");
    m.leaf("p", "The timeline in words.");
    Table table =
        Table.begin(
            m,
            "What happened, in the order of time",
            List.of("When|11", "Kind|20", "Step or side|32", "What|37"));
    for (Course.Mark mark : course.marks()) {
      String about = mark.step().map(labels::step).orElse(ReviewWords.side(mark.side()));
      String when = labels.time(mark.at());
      String kind = mark.kind().letter() + " " + mark.kind().meaning();
      table.row(when, kind, about, mark.words());
    }
    table.end();
  }

  void steps(Markup m) {
    m.leaf("h2", "Every step", "id", "steps");
    Table.head(m, "Steps in the order of the procedure", STEP_COLUMNS);
    for (List<StepReview> group : dossier.review().bySideAndPhase()) {
      var place = group.get(0).place();
      m.open("tbody", "class", "keep").open("tr");
      String name = ReviewWords.side(place.ref().side()) + ", " + place.phase();
      m.leaf("th", name, "scope", "rowgroup", "colspan", "7").close();
      step(m, group.get(0));
      m.closeLine();
      if (group.size() > 1) {
        m.open("tbody");
        group.subList(1, group.size()).forEach(step -> step(m, step));
        m.closeLine();
      }
    }
    Table.end(m);
  }

  private void step(Markup m, StepReview step) {
    StepReview.Times times = step.times();
    String title = step.place().step().head().title();
    m.open("tr").leaf("td", dossier.number(step.place().ref()) + " " + title);
    m.leaf("td", ReviewWords.plain(step.state()));
    m.leaf("td", times.start().map(labels::time).orElse("–"));
    m.leaf("td", times.end().map(labels::time).orElse("–"));
    m.leaf("td", ReviewWords.length(times.whole()));
    m.leaf("td", ReviewWords.length(times.working()));
    m.leaf("td", recorded(step)).closeLine();
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

  /** What stood closed before it was opened again. */
  void earlier(Markup m) {
    List<StepReview> opened =
        dossier.review().steps().stream().filter(s -> !s.work().earlier().isEmpty()).toList();
    if (opened.isEmpty()) {
      return;
    }
    m.leaf("h2", "Closed before, and opened again", "id", "earlier");
    Table table =
        Table.begin(
            m,
            "What stood closed before it was opened again",
            List.of("Opened|10", "Step|25", "Why|25", "What stood|40"));
    for (StepReview step : opened) {
      for (Earlier earlier : step.work().earlier()) {
        table.row(
            labels.time(earlier.at()),
            labels.step(step.place().ref()),
            RecordWords.why(earlier),
            RecordWords.stood(earlier, labels::time));
      }
    }
    table.end();
  }
}
