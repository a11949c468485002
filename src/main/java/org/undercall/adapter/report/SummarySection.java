package org.undercall.adapter.report;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.procedure.Caution;
import org.undercall.core.review.Haste;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Finding;
import org.undercall.core.term.Job;
import org.undercall.core.term.Side;
import org.undercall.text.Markup;

/**
 * The first page, for a reader who reads no other: what job, when and who, whether it is complete,
 * what is left to do, what was found, and every torque, left beside right.
 */
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
    RecordWords.mark(review.origin()).ifPresent(mark -> m.leaf("p", mark, "class", "no-record"));
    m.leaf("h1", "Report of work: " + about.title());
    if (dossier.invented()) {
      String values = "Demonstration. Values of this procedure: " + about.values() + ".";
      m.leaf("p", values, "class", "warning");
    }
    m.leaf("h2", "Summary", "id", "summary");
    verdict(m);
    pairs(m, facts());
    list(
        m,
        "Went wrong and not settled",
        review.unsettled().stream().map(n -> EventWords.trouble(n.event())).toList());
    list(m, "Open", open());
    list(m, "Closed, but the log does not bear it out", doubts());
    list(m, "Found faults, as heard", notes(Finding.FOUND_FAULT));
    list(m, "Extra work, as heard", notes(Finding.EXTRA_WORK));
    list(m, "To order", OrderList.of(review));
    list(m, "Handed over, still to be done", handOvers());
    list(m, "Sooner than the work can be done", haste());
    cautions(m);
    new TorquesBySide(dossier).add(m);
  }

  private Map<String, String> facts() {
    var about = dossier.procedure().about();
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Vehicle", about.vehicle());
    facts.put(
        "Procedure", about.title() + ", revision " + about.revision() + ", " + about.author());
    dossier.given().customer().ifPresent(name -> facts.put("Customer", name));
    facts.putAll(JobWords.of(job()));
    for (String line : VisitWords.of(review.head())) {
      int colon = line.indexOf(": ");
      facts.put(line.substring(0, colon), line.substring(colon + 2));
    }
    facts.put("Began", Labels.dayAndTime(review.head().started()));
    facts.put("Last entry", Labels.dayAndTime(review.head().last()));
    facts.put("How long", times());
    facts.put("Values of the procedure", about.values());
    facts.put("Answers", RecordWords.answers(dossier.review().origin()));
    facts.put(
        "Said besides",
        "refusals "
            + review.remarks().refusals().size()
            + ", phrases not understood "
            + review.totals().notUnderstood()
            + ", notes "
            + review.notes(Optional.empty()).size());
    facts.put("Signed", SignedWords.of(dossier.seal()));
    return facts;
  }

  private void cautions(Markup m) {
    m.leaf("h3", "Cautions", "id", "cautions");
    Stream<String> own = dossier.procedure().cautions().stream().map(Caution::text);
    String all =
        Stream.concat(EndSections.CAUTIONS.stream(), own)
            .distinct()
            .collect(Collectors.joining(" "));
    m.leaf("p", all);
  }

  private void verdict(Markup m) {
    int open = review.open().size();
    String text;
    if (review.complete()) {
      String words = RecordWords.verdict(review.verdict()).toUpperCase(Locale.ROOT);
      text = words + ". " + RecordWords.meaning(review);
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
    String mark = RecordWords.mark(review.origin()).map(words -> words + " ").orElse("");
    m.leaf("p", mark + text, "class", "verdict");
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

  /** What is open, a line for each side. */
  private List<String> open() {
    Map<Side, List<StepReview>> sides =
        review.open().stream()
            .collect(
                Collectors.groupingBy(
                    step -> step.place().ref().side(),
                    () -> new EnumMap<>(Side.class),
                    Collectors.toList()));
    return sides.entrySet().stream()
        .map(
            side ->
                ReviewWords.side(side.getKey())
                    + ": "
                    + side.getValue().stream().map(this::open).collect(Collectors.joining("; ")))
        .toList();
  }

  private String open(StepReview step) {
    String state =
        step.state() == StepReview.State.OPEN ? "" : " – " + ReviewWords.plain(step.state());
    return dossier.number(step.place().ref()) + " " + step.place().step().head().title() + state;
  }

  private List<String> doubts() {
    return review.doubtful().stream()
        .map(step -> labels.step(step.place().ref()) + " – " + StepText.doubts(step))
        .collect(Collectors.toList());
  }

  private List<String> notes(Finding about) {
    return review.notes(Optional.of(about)).stream()
        .map(note -> EventWords.note(note.event(), labels.step(note.event().step())))
        .toList();
  }

  private List<String> handOvers() {
    return review.due().stream()
        .map(
            d ->
                labels.step(d.step())
                    + " – "
                    + RecordWords.due(d, review)
                    + VisitWords.since(dossier.procedure(), d.step(), dossier.visits()))
        .toList();
  }

  private List<String> haste() {
    List<Haste> haste = review.remarks().haste();
    Stream<String> all = haste.stream().map(h -> labels.time(h.at()) + " " + RecordWords.haste(h));
    return haste.isEmpty() ? List.of() : Stream.concat(all, Stream.of(RecordWords.HASTE)).toList();
  }

  private static void list(Markup m, String heading, List<String> items) {
    if (!items.isEmpty()) {
      m.leaf("h3", heading + " (" + items.size() + ")").open("ul");
      items.forEach(item -> m.leaf("li", item));
      m.closeLine();
    }
  }

  /** Names with their values, two in a row. */
  private static void pairs(Markup m, Map<String, String> facts) {
    m.open("table", "class", "facts").leaf("caption", "The job").open("tbody");
    boolean second = false;
    for (Map.Entry<String, String> fact : facts.entrySet()) {
      if (!second) {
        m.open("tr");
      }
      m.leaf("th", fact.getKey(), "scope", "row").leaf("td", fact.getValue());
      if (second) {
        m.closeLine();
      }
      second = !second;
    }
    if (second) {
      m.open("td", "colspan", "2").close().closeLine();
    }
    m.close().closeLine();
  }
}
