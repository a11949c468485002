package org.undercall.adapter.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Again;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Review;
import org.undercall.core.term.Measure;
import org.undercall.core.term.StepRef;

/** The words for a session that goes on from another one, on both sides. */
final class VisitWords {
  private VisitWords() {}

  /** What a visit goes on from, and how far the car went since; nothing of other sessions. */
  static List<String> of(Review.Head head) {
    return head.visit()
        .map(
            visit ->
                List.of(
                    "Goes on from session: " + visit.session(),
                    "Log of that session: " + visit.log(),
                    distance(visit, head.job().odometer())))
        .orElse(List.of());
  }

  private static String distance(SessionEvent.VisitBegun visit, Optional<Measure> now) {
    if (visit.odometer().isEmpty() || now.isEmpty()) {
      return "Driven since: not known, an odometer was not told";
    }
    BigDecimal driven = now.get().amount().subtract(visit.odometer().get().amount());
    return driven.signum() < 0
        ? "Driven since: ODOMETER LOWER than then, " + visit.odometer().get() + ", the same car?"
        : "Driven since: " + driven.toPlainString() + " km";
  }

  /**
   * What became of an item that was handed over; empty if no visit was made for it, or if it is
   * none to tighten again.
   */
  static String since(Procedure procedure, StepRef item, List<FollowUp> visits) {
    boolean again =
        Again.items(procedure).stream()
            .map(Step.HandOver::head)
            .anyMatch(h -> h.id().equals(item.id()));
    return again && !visits.isEmpty()
        ? visits.stream().map(VisitWords::since).collect(Collectors.joining("; ", "; ", ""))
        : "";
  }

  private static String since(FollowUp visit) {
    List<String> words = new ArrayList<>();
    String day = visit.began().toLocalDate().toString();
    if (visit.done()) {
      words.add("DONE " + day + " by session " + visit.session());
    } else {
      String why = visit.rehearsed() ? "no record of work" : "not complete";
      words.add("not done by session " + visit.session() + " of " + day + ", " + why);
    }
    visit.odometer().ifPresent(km -> words.add("at " + km));
    if (!visit.moved().isEmpty()) {
      words.add(
          "MOVED: "
              + visit.moved().stream().map(ReviewWords::step).collect(Collectors.joining(", ")));
    } else if (visit.done()) {
      words.add("nothing had moved");
    }
    if (!visit.sameLog()) {
      words.add("made for another state of this log");
    }
    return String.join(", ", words);
  }
}
