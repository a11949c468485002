package org.undercall.adapter.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.DueTime;
import org.undercall.core.term.Job;
import org.undercall.text.Markup;

/**
 * One page for the customer in plain words: what is to be done and when, what is open and what was
 * found. It says what the log and the procedure say, and nothing else; what has no room on one page
 * is counted and left to the report.
 */
public final class HandoverSheet {
  private static final String LINE = "______________________";
  private static final int COLUMNS = 82;
  private static final int ROOM = 32;
  private static final int ROOM_ON_LETTER = 28;

  private final Dossier dossier;
  private final Review review;
  private final PageRoom room;
  private final CustomerItems items;
  private final Markup m = new Markup();

  private HandoverSheet(Dossier dossier) {
    this.dossier = dossier;
    this.review = dossier.review();
    this.items = new CustomerItems(dossier);
    boolean a4 = dossier.given().paper() == Dossier.Paper.A4;
    this.room = new PageRoom(a4 ? ROOM : ROOM_ON_LETTER);
  }

  /** The page as HTML that needs nothing but itself, well formed as XML too. */
  public static String of(Dossier dossier) {
    return new HandoverSheet(dossier).page();
  }

  private String page() {
    PageHead.begin(
        m,
        "Your car after the work: " + dossier.procedure().about().title(),
        "Hand-over sheet for the customer",
        dossier.given().paper() == Dossier.Paper.A4 ? "A4" : "letter",
        new PageHead.Edges(
            RecordWords.mark(dossier.review().origin()).orElse(""),
            "hand-over sheet, log " + dossier.seal().sha256().substring(0, 16)));
    m.open("body", "class", "handover").open("main");
    RecordWords.mark(dossier.review().origin())
        .ifPresent(mark -> m.leaf("p", mark, "class", "no-record"));
    m.leaf("h1", "Your car after the work");
    if (dossier.invented()) {
      String values = "Demonstration, not a real car: " + dossier.procedure().about().values();
      m.leaf("p", values + ".", "class", "warning");
    }
    facts();
    verdict();
    List<CustomerItems.Part> parts = items.parts();
    todo(parts.size());
    for (int i = 0; i < parts.size(); i++) {
      list(parts.get(i), parts.size() - 1 - i);
    }
    end();
    m.close().close().closeLine();
    return m.toString();
  }

  private void facts() {
    Job job = review.head().job();
    m.open("table", "class", "facts").leaf("caption", "The car and the work").open("tbody");
    row("Car", dossier.procedure().about().vehicle(), "Registration", job.registration());
    row(
        "Work",
        dossier.procedure().about().title(),
        "Distance on the clock",
        job.odometer().map(Object::toString));
    row(
        "Day",
        review.head().last().toLocalDate().toString(),
        "Done by",
        job.technician().or(() -> dossier.given().technician()));
    m.close().closeLine();
  }

  private void row(String name, String value, String other, Optional<String> given) {
    m.open("tr").leaf("th", name, "scope", "row").leaf("td", PageRoom.cut(value));
    m.leaf("th", other, "scope", "row").leaf("td", given.map(PageRoom::cut).orElse(LINE));
    m.closeLine();
  }

  private void verdict() {
    int open = review.open().size();
    String every = "Every step was closed. ";
    String words =
        switch (review.verdict()) {
          case NOT_COMPLETE ->
              "THE WORK IS NOT COMPLETE"
                  + (open == 0
                      ? "."
                      : ": " + open + " of " + review.steps().size() + " steps open.")
                  + " Ask the workshop before the car is driven.";
          case NOT_TO_BE_DRIVEN ->
              every + "BUT THE CAR IS NOT YET TO BE DRIVEN: see what is to be done before.";
          case ASK_BEFORE_DRIVING ->
              every + "ASK THE WORKSHOP BEFORE THE CAR IS DRIVEN: see below.";
          default -> "The work is complete: every step was closed.";
        };
    m.leaf("p", words, "class", "verdict");
    m.leaf("p", tightened());
  }

  private String tightened() {
    int count =
        review.steps().stream()
            .filter(step -> step.state() == StepReview.State.CLOSED)
            .mapToInt(
                step ->
                    step.place().step() instanceof Step.Fasten f ? f.fastener().set().count() : 0)
            .sum();
    return "Bolts and nuts tightened as specified, as the technician called it: "
        + count
        + ". Each stands in the report of the work.";
  }

  /** What is to be done later; what comes before driving is named first. */
  private void todo(int after) {
    List<StepReview> due =
        review.steps().stream()
            .filter(step -> step.place().step() instanceof Step.HandOver)
            .sorted(Comparator.comparing(step -> time(step).when()))
            .toList();
    m.leaf("h2", "What is to be done, and when", "id", "todo");
    if (due.isEmpty()) {
      m.leaf("p", "The procedure of this work asks for nothing to be done later.");
      if (wheelsWereOff()) {
        m.leaf(
            "p",
            "Wheels were off. Ask the workshop whether their bolts are to be checked again, and"
                + " when.",
            "class",
            "strong");
      }
      return;
    }
    List<Integer> lines =
        due.stream()
            .map(step -> Math.max(PageRoom.lines(due(step), 30), PageRoom.lines(what(step), 45)))
            .toList();
    List<StepReview> shown = due.subList(0, room.fit(lines, after));
    Table table = Table.begin(m, "To be done later", List.of("When|30", "What|45", "Done on|25"));
    shown.forEach(step -> table.row(due(step), what(step), LINE));
    table.end();
    if (shown.size() < due.size()) {
      more(due.size() - shown.size());
    }
  }

  private static String words(StepReview step) {
    return ((Step.HandOver) step.place().step()).due();
  }

  private static DueTime time(StepReview step) {
    return DueTime.of(words(step));
  }

  private static String due(StepReview step) {
    boolean first = time(step).when() == DueTime.When.BEFORE_DRIVING;
    return (first ? "BEFORE DRIVING: " : "") + PageRoom.cut(words(step));
  }

  private static String what(StepReview step) {
    String not = step.state() == StepReview.State.CLOSED ? "" : " (not yet handed over aloud)";
    return PageRoom.cut(step.place().step().head().title())
        + CustomerItems.place(step.place().ref())
        + not;
  }

  private boolean wheelsWereOff() {
    return review.steps().stream()
        .anyMatch(
            step -> step.place().step() instanceof Step.Do work && work.wheels() == Wheels.REMOVED);
  }

  private void list(CustomerItems.Part part, int after) {
    List<Integer> lines = part.items().stream().map(item -> PageRoom.lines(item, COLUMNS)).toList();
    List<String> shown = part.items().subList(0, room.fit(lines, after));
    m.leaf("h2", part.heading()).open("ul");
    shown.forEach(item -> m.leaf("li", item));
    m.closeLine();
    if (shown.size() < part.items().size()) {
      more(part.items().size() - shown.size());
    }
  }

  private void more(int count) {
    m.leaf("p", "And " + count + " more: they stand in the report.", "class", "strong");
  }

  private void end() {
    m.open("div", "class", "keep").leaf("h2", "Please mind", "id", "mind").open("ul");
    m.leaf(
        "li",
        "If something knocks, pulls to one side or comes loose, stop where it is safe and call the"
            + " workshop (common practice, no source).");
    m.leaf("li", "The maker's handbook rules, and the law on inspections comes first.");
    m.leaf(
        "li",
        "All this is as the technician called it; the program measured nothing. Times are those of"
            + " the machine's clock.");
    m.closeLine();
    m.leaf("p", "Workshop " + LINE + LINE + "  Telephone " + LINE, "class", "blank");
    m.leaf(
        "p",
        "Handed over by " + LINE + "  Received by " + LINE + "  Day " + "____________",
        "class",
        "blank");
    m.closeLine();
  }
}
