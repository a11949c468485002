package org.undercall.command.fleet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.adapter.fleet.IndexRow;
import org.undercall.core.review.Facts;

/**
 * A session in the list.
 *
 * @param session the name of its folder
 * @param vehicle what was worked on; blank if that is not known
 * @param damage what is wrong with it; blank if it is whole
 * @param work with which procedure
 * @param times when; none for a damaged session
 * @param due what is still to be done, in words; empty if that is nothing
 */
record Listed(
    String session,
    String vehicle,
    String damage,
    Facts.Work work,
    Facts.Times times,
    Optional<String> due) {
  static final List<String> COLUMNS =
      List.of(
          "session",
          "state",
          "procedure",
          "revision",
          "vehicle",
          "started",
          "last",
          "working_ms",
          "events",
          "due",
          "damage");

  /** The one begun last first, damaged ones last. */
  static final Comparator<Listed> LAST_FIRST =
      Comparator.comparing((Listed one) -> one.isDamaged() ? 1 : 0)
          .thenComparing(one -> -one.times().firstMs())
          .thenComparing(Listed::session, Comparator.reverseOrder());

  private static final int DAY = 10;

  static Listed of(IndexRow row) {
    Facts facts = row.facts();
    return new Listed(
        row.session(),
        row.vehicle(),
        row.damage(),
        facts.work(),
        facts.times(),
        words(facts.due()));
  }

  private static Optional<String> words(List<Facts.Due> due) {
    return due.isEmpty()
        ? Optional.empty()
        : Optional.of(
            due.stream()
                .sorted(Comparator.comparing(Facts.Due::step).thenComparing(Facts.Due::what))
                .map(d -> d.step() + ": " + d.what() + " " + d.detail())
                .collect(Collectors.joining("; ")));
  }

  boolean isDamaged() {
    return state().equals(Facts.DAMAGED);
  }

  String state() {
    return work.state();
  }

  String title() {
    return work.title();
  }

  /** The day it began; for a damaged session that in the name of its folder. */
  String day() {
    String began = times.firstAt().isEmpty() ? session : times.firstAt();
    return began.substring(0, Math.min(DAY, began.length()));
  }

  /** Its cells; of a damaged session only what its log seems to be about. */
  List<Optional<Object>> cells() {
    boolean told = work.events() > 0;
    return List.of(
        Optional.of(session),
        Optional.of(state()),
        some(title()),
        some(work.revision()),
        some(vehicle),
        told ? Optional.of(times.firstAt()) : Optional.empty(),
        told ? Optional.of(times.lastAt()) : Optional.empty(),
        isDamaged() ? Optional.empty() : Optional.of(times.workingMs()),
        told ? Optional.of(work.events()) : Optional.empty(),
        due.map(Object.class::cast),
        some(damage));
  }

  private static Optional<Object> some(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }
}
