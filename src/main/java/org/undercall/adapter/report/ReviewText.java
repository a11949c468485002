package org.undercall.adapter.report;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Finding;
import org.undercall.core.term.StepRef;

/** A review as plain text of at most 80 columns. */
public final class ReviewText {
  static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss xxx", Locale.ROOT);

  private final Review review;
  private final Function<StepRef, String> since;
  private final Lines lines = new Lines();

  private ReviewText(Review review, Function<StepRef, String> since) {
    this.review = review;
    this.since = since;
  }

  /** The whole text, each line ended with a line feed. */
  public static String of(Review review) {
    return of(new ReviewText(review, item -> ""));
  }

  /**
   * The same of a session that visits went on from.
   *
   * @param procedure what it was done with
   */
  public static String of(Review review, Procedure procedure, List<FollowUp> visits) {
    return of(new ReviewText(review, item -> VisitWords.since(procedure, item, visits)));
  }

  private static String of(ReviewText text) {
    text.head();
    text.section(
        "What went wrong",
        text.review.remarks().troubles(),
        n -> time(n.at()) + EventWords.trouble(n.event()) + clip(n.clip()));
    text.steps();
    text.remarks();
    text.times();
    text.verdict();
    return text.lines.toString();
  }

  private void head() {
    RecordWords.mark(review.origin()).ifPresent(mark -> lines.add(0, mark));
    var about = review.head().about();
    lines.add(0, about.title() + ", revision " + about.revision());
    lines.add(0, "Vehicle: " + about.vehicle());
    JobWords.of(review.head().job()).forEach((name, text) -> lines.add(0, name + ": " + text));
    VisitWords.of(review.head()).forEach(line -> lines.add(0, line));
    lines.add(0, "Values of the procedure: " + about.values());
    lines.add(0, ReviewWords.CALLED_NOT_MEASURED);
    lines.add(0, "Began " + DAY_AND_TIME.format(review.head().started()));
    lines.add(0, "Last entry " + DAY_AND_TIME.format(review.head().last()));
    lines.add(0, "Program version " + review.head().version());
    lines.add(0, "Answers: " + RecordWords.answers(review.origin()));
  }

  private void steps() {
    for (List<StepReview> group : review.bySideAndPhase()) {
      var place = group.get(0).place();
      lines.heading(ReviewWords.side(place.ref().side()) + ", " + place.phase());
      group.forEach(step -> StepText.add(lines, step));
    }
  }

  private void remarks() {
    Review.Remarks remarks = review.remarks();
    section("Load condition", remarks.loads(), n -> time(n.at()) + EventWords.load(n.event()));
    section(
        "Undone, broken off, out of order",
        remarks.changes(),
        n -> time(n.at()) + EventWords.change(n.event()));
    section("Before and after", BeforeAfterTable.lines(review), line -> line);
    section("Torque wrenches", review.head().tools(), ToolWords::of);
    if (!review.head().tools().isEmpty()) {
      lines.add(1, ToolWords.NOT_NAMED);
    }
    section(
        "Sooner than the work can be done",
        remarks.haste(),
        h -> time(h.at()) + RecordWords.haste(h));
    if (!remarks.haste().isEmpty()) {
      lines.add(1, RecordWords.HASTE);
    }
    section("Refused", remarks.refusals(), ReviewText::refusal);
    notes("Found faults, as heard, unchecked", Optional.of(Finding.FOUND_FAULT));
    notes("Extra work, as heard, unchecked", Optional.of(Finding.EXTRA_WORK));
    section("To order", OrderList.of(review), line -> line);
    notes("Notes, as heard, unchecked", Optional.empty());
    section(
        "Handed over, still to be done",
        review.due(),
        d ->
            time(d.at())
                + ReviewWords.step(d.step())
                + ": "
                + RecordWords.due(d, review)
                + since.apply(d.step()));
    section("Timers", remarks.timers(), t -> time(t.at()) + TimerWords.of(t.event()));
    section(
        "Open",
        review.open(),
        s -> ReviewWords.step(s.place().ref()) + ": " + ReviewWords.plain(s.state()));
    section(
        "Closed, but the log does not bear it out",
        review.doubtful(),
        s -> ReviewWords.step(s.place().ref()) + ": " + StepText.doubts(s));
    section(
        "Named in the log, not in the procedure",
        review.ending().unknownSteps(),
        ReviewWords::step);
    section(
        "The log was not whole",
        review.ending().losses(),
        l -> time(l.at()) + EventWords.loss(l.event()));
  }

  static String refusal(Review.Refusal refusal) {
    String step = refusal.step().map(s -> ReviewWords.step(s) + ": ").orElse("");
    String heard = refusal.heard().map(h -> " (heard: " + h + ")").orElse("");
    return time(refusal.at())
        + step
        + EventWords.refusal(refusal.event())
        + heard
        + clip(refusal.clip());
  }

  /** Where to hear it; nothing if there is no sound. */
  static String clip(Optional<String> file) {
    return file.map(name -> " [clip " + name + "]").orElse("");
  }

  private void notes(String heading, Optional<Finding> about) {
    section(
        heading,
        review.notes(about),
        n -> time(n.at()) + EventWords.note(n.event()) + clip(n.clip()));
  }

  private <T> void section(String heading, List<T> items, Function<T, String> text) {
    if (!items.isEmpty()) {
      lines.heading(heading + " (" + items.size() + ")");
      items.forEach(item -> lines.add(1, text.apply(item)));
    }
  }

  private void times() {
    Review.Totals totals = review.totals();
    lines.heading("Times");
    lines.add(1, "from first to last entry " + ReviewWords.length(totals.elapsed()));
    lines.add(1, "at work on a step " + ReviewWords.length(totals.working()));
    lines.add(1, "held " + ReviewWords.length(totals.held()));
    lines.add(1, "program not running " + ReviewWords.length(totals.away()));
    lines.add(1, "phrases not understood: " + totals.notUnderstood());
  }

  private void verdict() {
    lines.heading(RecordWords.verdict(review.verdict()));
    RecordWords.mark(review.origin()).ifPresent(mark -> lines.add(1, mark));
    int open = review.open().size();
    if (review.complete()) {
      lines.add(1, RecordWords.meaning(review));
      return;
    }
    review
        .unsettled()
        .forEach(n -> lines.add(1, "Not settled: " + EventWords.trouble(n.event()) + "."));
    lines.add(1, open + " of " + review.steps().size() + " steps open.");
    review.steps().stream()
        .filter(step -> step.work().witnessMissing())
        .forEach(
            step -> lines.add(1, "Witness missing: " + ReviewWords.step(step.place().ref()) + "."));
    if (!review.ending().losses().isEmpty()) {
      lines.add(1, "Something of the log is lost, and what it said is not known.");
    }
    if (!review.ending().ended()) {
      lines.add(1, "The session was not ended.");
    } else if (!review.ending().saidComplete()) {
      lines.add(1, "The session was ended as not complete.");
    } else {
      lines.add(1, "The session was ended as complete, which the log does not bear out.");
    }
  }

  private static String time(OffsetDateTime at) {
    return TIME.format(at) + " ";
  }
}
