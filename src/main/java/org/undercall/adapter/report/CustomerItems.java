package org.undercall.adapter.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Finding;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/**
 * What a customer is told of the work: what is open, went wrong, was found, done and is to order.
 */
final class CustomerItems {
  private final Dossier dossier;
  private final Review review;

  CustomerItems(Dossier dossier) {
    this.dossier = dossier;
    this.review = dossier.review();
  }

  /** A list with its heading. */
  record Part(String heading, List<String> items) {}

  /** All lists that hold something. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("Not finished", open()));
    parts.add(
        new Part(
            "Went wrong and is not settled",
            review.unsettled().stream()
                .map(t -> title(t.event().step()) + ": " + ReviewWords.plain(t.event().trouble()))
                .toList()));
    parts.add(new Part("Found, as the technician said or measured it", found()));
    parts.add(new Part("Done besides, as the technician said it", notes(Finding.EXTRA_WORK)));
    parts.add(new Part("Parts to be ordered, as the technician said it", order()));
    return parts.stream().filter(part -> !part.items().isEmpty()).toList();
  }

  private List<String> open() {
    return review.open().stream()
        .filter(step -> !(step.place().step() instanceof Step.HandOver))
        .map(step -> title(step.place().ref()) + state(step))
        .toList();
  }

  private static String state(StepReview step) {
    return switch (step.state()) {
      case PUT_OFF -> ": put off";
      case STARTED_NOT_TIGHTENED -> ": NOT TIGHTENED";
      default -> step.place().step() instanceof Step.Fasten ? ": NOT TIGHTENED" : "";
    };
  }

  private List<String> found() {
    List<String> found = new ArrayList<>(notes(Finding.FOUND_FAULT));
    for (StepReview step : review.steps()) {
      var measured = step.work().measured();
      if (!measured.isEmpty() && !measured.get(measured.size() - 1).event().withinLimits()) {
        var value = measured.get(measured.size() - 1).event().value();
        found.add(title(step.place().ref()) + ": " + value + ", outside limits");
      }
      var answers = step.work().answers();
      if (!answers.isEmpty() && !answers.get(answers.size() - 1).event().passed()) {
        found.add(title(step.place().ref()) + ": the check was not passed");
      }
    }
    return found;
  }

  private List<String> notes(Finding about) {
    return review.notes(Optional.of(about)).stream()
        .map(
            note ->
                "“" + PageRoom.cut(note.event().text()) + "”, at: " + title(note.event().step()))
        .toList();
  }

  private List<String> order() {
    return review.notes(Optional.of(Finding.PART_TO_ORDER)).stream()
        .map(note -> "“" + PageRoom.cut(note.event().text()) + "”")
        .toList();
  }

  private String title(StepRef ref) {
    int number = dossier.number(ref);
    return number == 0
        ? ReviewWords.step(ref)
        : PageRoom.cut(review.steps().get(number - 1).place().step().head().title()) + place(ref);
  }

  /** The side, if it is not done once for the car. */
  static String place(StepRef ref) {
    String side = ReviewWords.side(ref.side());
    return ref.side() == Side.CAR ? "" : ", " + side;
  }
}
