package org.undercall.adapter.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Finding;
import org.undercall.core.term.Job;
import org.undercall.text.Markup;

/** The first page: what job, when, how long, whether it is complete, what is left to do. */
final class SummarySection {
  private final Dossier dossier;
  private final Review review;
  private final Labels labels;

  SummarySection(Dossier dossier) {
    this.dossier = dossier;
    this.review = dossier.review();
    this.labels = new Labels(dossier);
  }

  void add(Markup m) {
    var about = dossier.procedure().about();
    m.leaf("h1", "Report of work: " + about.title());
    if (dossier.invented()) {
      String values = "Demonstration. Values of this procedure: " + about.values() + ".";
      m.leaf("p", values, "class", "warning");
    }
    m.leaf("h2", "Summary", "id", "summary");
    verdict(m);
    m.open("table", "class", "facts").leaf("caption", "The job").open("tbody");
    fact(m, "Vehicle", about.vehicle());
    dossier.given().customer().ifPresent(name -> fact(m, "Customer", name));
    JobWords.of(job()).forEach((name, text) -> fact(m, name, text));
    VisitWords.of(review.head()).forEach(line -> fact(m, line));
    fact(m, "Procedure", about.title() + ", revision " + about.revision() + ", " + about.author());
    fact(m, "Values of the procedure", about.values());
    fact(m, "Began", Labels.dayAndTime(review.head().started()));
    fact(m, "Last entry", Labels.dayAndTime(review.head().last()));
    fact(m, "How long", times());
    fact(m, "Refusals", "" + review.remarks().refusals().size());
    fact(m, "Phrases not understood", "" + review.totals().notUnderstood());
    fact(m, "Notes", "" + review.notes(Optional.empty()).size());
    m.close().closeLine();
    list(
        m,
        "Went wrong and not settled",
        review.unsettled().stream().map(n -> EventWords.trouble(n.event())).toList());
    list(m, "Found faults, as heard", notes(Finding.FOUND_FAULT));
    list(m, "Extra work, as heard", notes(Finding.EXTRA_WORK));
    list(m, "To order", OrderList.of(review));
    list(m, "Open", review.open().stream().map(this::open).toList());
    list(m, "Closed, but the log does not bear it out", doubts());
    list(m, "Handed over, still to be done", handOvers());
  }

  private void verdict(Markup m) {
    int open = review.open().size();
    String text;
    if (review.complete()) {
      text = "COMPLETE. Every step is closed with all that it needs.";
    } else {
      String ended =
          review.ending().ended() ? "The session was ended." : "The session was not ended.";
      int wrong = review.unsettled().size();
      String first = wrong == 0 ? "" : wrong + " gone wrong and not settled. ";
      text =
          "NOT COMPLETE. "
              + first
              + open
              + " of "
              + review.steps().size()
              + " steps open. "
              + ended;
    }
    m.leaf("p", text, "class", "verdict");
  }

  /** As the log has it; a technician that it does not name may be given for the report. */
  private Job job() {
    Job kept = review.head().job();
    Optional<String> who = kept.technician().or(() -> dossier.given().technician());
    return new Job(kept.registration(), kept.vin(), kept.odometer(), kept.number(), who);
  }

  private String times() {
    Review.Totals totals = review.totals();
    return ReviewWords.length(totals.elapsed())
        + ", of this at work on a step "
        + ReviewWords.length(totals.working())
        + ", held "
        + ReviewWords.length(totals.held())
        + ", program not running "
        + ReviewWords.length(totals.away());
  }

  private String open(StepReview step) {
    return labels.step(step.place().ref()) + " – " + ReviewWords.plain(step.state());
  }

  private List<String> doubts() {
    return review.doubtful().stream()
        .map(step -> labels.step(step.place().ref()) + " – " + StepText.doubts(step))
        .collect(Collectors.toList());
  }

  private List<String> notes(Finding about) {
    return review.notes(Optional.of(about)).stream()
        .map(note -> EventWords.note(note.event()))
        .toList();
  }

  private List<String> handOvers() {
    return review.remarks().handOvers().stream()
        .map(
            h ->
                labels.step(h.event().step())
                    + " – "
                    + h.event().due()
                    + VisitWords.since(dossier.procedure(), h.event().step(), dossier.visits()))
        .collect(Collectors.toList());
  }

  private static void list(Markup m, String heading, List<String> items) {
    if (!items.isEmpty()) {
      m.leaf("h3", heading + " (" + items.size() + ")").open("ul");
      items.forEach(item -> m.leaf("li", item));
      m.closeLine();
    }
  }

  /** A line such as "Driven since: 50 km". */
  private static void fact(Markup m, String line) {
    int colon = line.indexOf(": ");
    fact(m, line.substring(0, colon), line.substring(colon + 2));
  }

  private static void fact(Markup m, String name, String value) {
    m.open("tr").leaf("th", name, "scope", "row").leaf("td", value).closeLine();
  }
}
