package org.undercall.adapter.report;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Due;
import org.undercall.core.review.Earlier;
import org.undercall.core.review.Haste;
import org.undercall.core.review.Origin;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.review.Verdict;
import org.undercall.core.term.DueTime;

/**
 * What the written review says of a record as a whole: its worth, its verdict, what came before.
 */
final class RecordWords {
  /** Said where something was answered sooner than it can be done. */
  static final String HASTE =
      "Marked, not refused: the work may have been done before it was asked for. "
          + Haste.A_FASTENER.toSeconds()
          + " s a fastener and "
          + Haste.A_LOAD.toSeconds()
          + " s for a load condition: common practice, no source.";

  private static final BigDecimal MILLIS = new BigDecimal(1000);

  private RecordWords() {}

  /** What stands large on everything that is no record of work; empty for a record. */
  static Optional<String> mark(Origin origin) {
    return switch (origin.occasion()) {
      case WORK -> Optional.empty();
      case REHEARSAL -> Optional.of("REHEARSAL: typed or from a file. NO RECORD OF WORK.");
      case DEMONSTRATION ->
          Optional.of("DEMONSTRATION: synthetic voices, nobody worked. NO RECORD OF WORK.");
    };
  }

  /** How the answers came, with their shares. */
  static String answers(Origin origin) {
    return share("spoken", origin.spoken(), origin)
        + ", "
        + share("typed", origin.typed(), origin)
        + ", "
        + share("pressed", origin.pressed(), origin);
  }

  private static String share(String name, int some, Origin origin) {
    return name + " " + some + (some == 0 ? "" : " (" + origin.percent(some) + " %)");
  }

  /** The verdict in a few words, for a heading. */
  static String verdict(Verdict verdict) {
    return switch (verdict) {
      case NOT_COMPLETE -> "NOT COMPLETE";
      case NOT_TO_BE_DRIVEN -> "EVERY STEP CLOSED, NOT YET TO BE DRIVEN";
      case ASK_BEFORE_DRIVING -> "EVERY STEP CLOSED, ASK BEFORE DRIVING";
      case COMPLETE_WITH_LATER -> "Complete, more is due later";
      case COMPLETE -> "Complete";
    };
  }

  /** What the verdict of a session whose every step is closed means. */
  static String meaning(Review review) {
    String closed = "Every step is closed with all that it needs.";
    return switch (review.verdict()) {
      case NOT_TO_BE_DRIVEN ->
          closed + " Before the car is driven: " + items(review, DueTime.When.BEFORE_DRIVING) + ".";
      case ASK_BEFORE_DRIVING ->
          closed
              + " Whether this comes before the car is driven is not known: "
              + items(review, DueTime.When.OTHER)
              + ".";
      default -> closed;
    };
  }

  private static String items(Review review, DueTime.When when) {
    List<String> items = new ArrayList<>();
    for (Due due : review.due()) {
      if (due.time().when() == when) {
        items.add(title(review, due) + " (" + due.words() + ")");
      }
    }
    return String.join("; ", items);
  }

  /** The title of the step of something handed over. */
  static String title(Review review, Due due) {
    return review.steps().stream()
        .filter(step -> step.place().ref().equals(due.step()))
        .map(step -> step.place().step().head().title())
        .findFirst()
        .orElse(due.step().toString());
  }

  /** When something handed over is due: in the words of the procedure, and what they come to. */
  static String due(Due due, Review review) {
    return switch (due.time().when()) {
      case BEFORE_DRIVING -> "BEFORE DRIVING: " + due.words();
      case DAYS -> due.words() + " (" + due.day().orElseThrow() + ")";
      case DISTANCE ->
          due.words()
              + due.odometer(review.head().job())
                  .map(km -> " (at " + km + ")")
                  .orElse(" (by distance, no day)");
      case OTHER -> due.words() + " (no day known)";
    };
  }

  /** What was answered sooner than it can be done. */
  static String haste(Haste haste) {
    String what =
        switch (haste.kind()) {
          case STAGE -> "stage " + haste.stage() + " answered ";
          case WAIT -> "time over ";
          case LOAD -> "load condition confirmed ";
        };
    String from = haste.kind() == Haste.Kind.LOAD ? " after the car moved" : " after it was asked";
    return ReviewWords.step(haste.step())
        + ": "
        + what
        + seconds(haste.took())
        + from
        + ", takes at least "
        + seconds(haste.least());
  }

  private static String seconds(Duration length) {
    return new BigDecimal(length.toMillis()).divide(MILLIS).stripTrailingZeros().toPlainString()
        + " s";
  }

  /** What stood closed before a step was opened again, and why it was. */
  static String earlier(Earlier earlier, Function<OffsetDateTime, String> time) {
    return stood(earlier, time) + "; " + why(earlier);
  }

  /** What stood closed. */
  static String stood(Earlier earlier, Function<OffsetDateTime, String> time) {
    List<String> parts = new ArrayList<>();
    earlier
        .closed()
        .ifPresent(
            at ->
                parts.add(
                    "closed "
                        + time.apply(at)
                        + earlier.closedBy().map(who -> " by " + who).orElse("")));
    earlier.tightened().marking().ifPresent(m -> parts.add("head marking " + m));
    earlier.tightened().newHardware().ifPresent(at -> parts.add("new hardware " + time.apply(at)));
    List<StepReview.StageReview> stages = earlier.tightened().stages();
    for (int i = 0; i < stages.size(); i++) {
      StepReview.StageReview stage = stages.get(i);
      if (stage.closed().isPresent() || !stage.positions().isEmpty()) {
        parts.add(
            "stage "
                + (i + 1)
                + " "
                + ReviewWords.specification(stage)
                + stage.called().map(v -> ", called " + v.toPlainString()).orElse("")
                + stage.closed().map(at -> ", closed " + time.apply(at)).orElse(", part of a set"));
      }
    }
    ReviewWords.finalTorque(earlier.tightened()).ifPresent(t -> parts.add("final torque " + t));
    earlier
        .answers()
        .forEach(a -> parts.add("check " + (a.event().passed() ? "passed" : "NOT passed")));
    earlier.measured().forEach(m -> parts.add("measured " + m.event().value()));
    return String.join("; ", parts);
  }

  /** Why it was opened, with the words that were heard. */
  static String why(Earlier earlier) {
    return why(earlier.why()) + earlier.heard().map(words -> " (heard: " + words + ")").orElse("");
  }

  private static String why(SessionEvent event) {
    if (event instanceof SessionEvent.ClosingLapsed e) {
      return "no longer held, for " + ReviewWords.step(e.because());
    }
    if (event instanceof SessionEvent.StageTakenBack e) {
      return "stage " + e.stage() + " taken back";
    }
    if (event instanceof SessionEvent.TroubleSettled e) {
      return "began anew, " + ReviewWords.plain(e.remedy());
    }
    return switch (EventKind.of(event)) {
      case STEP_REOPENED -> "opened again, loose";
      case REOPENED_TIGHT -> "opened again, perhaps still tight";
      case CLOSING_TAKEN_BACK -> "closing taken back";
      case LOOSENED -> "fully loosened";
      default -> "stages made void";
    };
  }
}
