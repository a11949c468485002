package org.undercall.command.fleet;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.adapter.fleet.IndexRow;
import org.undercall.core.review.Facts;
import org.undercall.core.review.Verdict;
import org.undercall.core.term.DueTime;
import org.undercall.core.term.Kebab;

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
          "damage",
          "record",
          "verdict");

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
                .sorted(
                    Comparator.comparing((Facts.Due d) -> !isFirst(d))
                        .thenComparing(Facts.Due::step)
                        .thenComparing(Facts.Due::what))
                .map(d -> before(d) + d.step() + ": " + d.what() + " " + d.detail())
                .collect(Collectors.joining("; ")));
  }

  /** Whether it comes before driving. */
  private static boolean isFirst(Facts.Due due) {
    return due.kind().equals(Kebab.of(DueTime.When.BEFORE_DRIVING));
  }

  /** What was handed over to be done before driving says so in any case. */
  private static String before(Facts.Due due) {
    return isFirst(due) && due.what().equals("handed over") ? "BEFORE DRIVING " : "";
  }

  /** How a session stands, for the eye: what comes before driving is not complete. */
  static String shown(String state, String verdict) {
    return verdict.equals(Kebab.of(Verdict.NOT_TO_BE_DRIVEN))
            || verdict.equals(Kebab.of(Verdict.ASK_BEFORE_DRIVING))
        ? Facts.CLOSED
        : state;
  }

  /** What stands out of a session; blank if nothing does. */
  static String marks(String occasion, String verdict) {
    String worth =
        occasion.isEmpty() || occasion.equals(Facts.WORK)
            ? ""
            : occasion.toUpperCase(Locale.ROOT) + ", NO RECORD OF WORK. ";
    String driving =
        verdict.equals(Kebab.of(Verdict.NOT_TO_BE_DRIVEN))
            ? "NOT YET TO BE DRIVEN."
            : verdict.equals(Kebab.of(Verdict.ASK_BEFORE_DRIVING)) ? "ASK BEFORE DRIVING." : "";
    return (worth + driving).strip();
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
        some(damage),
        some(work.occasion()),
        some(work.verdict()));
  }

  private static Optional<Object> some(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }
}
