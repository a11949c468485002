package org.undercall.adapter.report;

import java.util.Locale;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Measure;

/** The words of what is told of single events in the written review. */
final class EventWords {
  private EventWords() {}

  /** Why something was refused. */
  static String refusal(SessionEvent event) {
    if (event instanceof SessionEvent.ValueRefused e) {
      return "value of stage "
          + e.stage()
          + ": called "
          + e.called().toPlainString()
          + ", specified "
          + e.expected().toPlainString();
    }
    if (event instanceof SessionEvent.CloseRefused e) {
      return "closing: missing " + missing(e.missing());
    }
    if (event instanceof SessionEvent.MarkingRefused e) {
      return "head marking " + e.marking() + " is not in the procedure";
    }
    if (event instanceof SessionEvent.ReuseRefused e) {
      return "used part refused: " + ReviewWords.reused(e.by(), e.value());
    }
    if (event instanceof SessionEvent.LoadRefused e) {
      return "load condition, "
          + ReviewWords.side(e.side())
          + height(e.height())
          + ": missing "
          + missing(e.missing());
    }
    return event instanceof SessionEvent.NotNow e
        ? "not possible then: " + e.intent().toLowerCase(Locale.ROOT).replace('_', ' ')
        : event.toString();
  }

  private static String missing(Missing missing) {
    return switch (missing) {
      case CAUTIONS_UNDERSTOOD -> "the answer to the cautions";
      case VALUE_CALLED -> "a called value";
      case DIGIT_BY_DIGIT -> "the value digit by digit";
      case TORQUE_STAGE -> "the torque before the angle";
      case ANGLE_STAGE -> "the angle of this stage";
      case CHECK_ANSWER -> "an answer to the check";
      case READ_BACK -> "an answer to the read-back";
      case LOAD_READ_BACK -> "the load condition read back";
      case TIME -> "the rest of the time";
      case HEIGHT_NOTED_BEFORE -> "a height noted before the work";
      case HEIGHT_WITHIN_TOLERANCE -> "a height within the tolerance";
      case HEIGHT_MEASURED -> "a measured height";
      case STEPS_BEFORE -> "steps that come before";
      case REMEDY -> "a way out of what went wrong";
      case SIDE -> "the side at hand";
      case COUNT -> "the number of all";
      case ONE_BY_ONE -> "each called by itself";
      case POSITION -> "a position that is open";
      case OTHER_UNIT -> "the unit of the procedure";
      case SIGN -> "plus or minus";
      case NOT_BELOW_ZERO -> "a value that is not below zero";
      case UNIT -> "the unit";
      case WRENCH -> "a wrench that fits";
      case CALIBRATION -> "a calibration that holds";
      case WITNESS -> "a witness";
      case OTHER_PERSON -> "a witness who did not work on it";
      case KNOWN_NAME -> "a name of one person on the list of witnesses";
      case AFFIRMATION -> "a plain yes";
      default -> ReviewWords.plain(missing);
    };
  }

  /** What happened to the load. */
  static String load(SessionEvent event) {
    if (event instanceof SessionEvent.LoadConfirmed e) {
      return ReviewWords.side(e.side()) + ": " + confirmed(e);
    }
    if (event instanceof SessionEvent.LoadChanged e) {
      return "confirmations cancelled: " + ReviewWords.plain(e.change());
    }
    if (event instanceof SessionEvent.HeightsApart e) {
      return "left and right differ by " + e.difference() + ", more than the procedure permits";
    }
    return event instanceof SessionEvent.RideHeightNoted e
        ? ReviewWords.side(e.side()) + ": height before the work " + e.value()
        : event.toString();
  }

  /** A note as heard, with its step and the side that was said. */
  static String note(SessionEvent.NoteKept e) {
    return note(e, ReviewWords.step(e.step()));
  }

  /** The same with the step named in another way. */
  static String note(SessionEvent.NoteKept e, String step) {
    String where =
        e.side().filter(s -> s != e.step().side()).map(s -> ", " + ReviewWords.side(s)).orElse("");
    return step + where + ": " + e.text();
  }

  /** What went wrong, or how it was settled. */
  static String trouble(SessionEvent event) {
    if (event instanceof SessionEvent.TroubleNoted e) {
      String where = e.position().map(n -> "no. " + n + " ").orElse("");
      return ReviewWords.step(e.step()) + ": " + where + ReviewWords.plain(e.trouble());
    }
    return event instanceof SessionEvent.TroubleSettled e
        ? ReviewWords.step(e.step()) + ": settled, " + ReviewWords.plain(e.remedy())
        : ReviewWords.step(((SessionEvent.SayingTakenBack) event).step()) + ": taken back";
  }

  /** What was undone, taken back, broken off, done out of order or with an overdue wrench. */
  static String change(SessionEvent event) {
    if (event instanceof SessionEvent.StepReopened e) {
      return ReviewWords.step(e.step()) + ": opened again";
    }
    if (event instanceof SessionEvent.ReopenedTight e) {
      return ReviewWords.step(e.step()) + ": opened again, perhaps still tight";
    }
    if (event instanceof SessionEvent.ClosingLapsed e) {
      return ReviewWords.step(e.step()) + ": no longer holds, for " + ReviewWords.step(e.because());
    }
    if (event instanceof SessionEvent.ClosingsHold e) {
      return ReviewWords.step(e.because()) + ": what was closed further on was said to hold";
    }
    if (event instanceof SessionEvent.ClosingTakenBack e) {
      return ReviewWords.step(e.step()) + ": closing taken back";
    }
    if (event instanceof SessionEvent.StageTakenBack e) {
      return ReviewWords.step(e.step()) + ": stage " + e.stage() + " taken back";
    }
    if (event instanceof SessionEvent.SayingTakenBack e) {
      String what = e.what().toLowerCase(Locale.ROOT).replace('_', ' ');
      return ReviewWords.step(e.step()) + ": taken back: " + what;
    }
    if (event instanceof SessionEvent.TighteningInterrupted e) {
      return ReviewWords.step(e.step()) + ": tightening broken off";
    }
    if (event instanceof SessionEvent.TurnNoted e) {
      return ReviewWords.step(e.step())
          + ": turned so far "
          + e.degrees().toPlainString()
          + "° in all";
    }
    if (event instanceof SessionEvent.Loosened e) {
      return ReviewWords.step(e.step()) + ": fully loosened";
    }
    if (event instanceof SessionEvent.OverdueNoted e) {
      return ReviewWords.step(e.step())
          + ": "
          + e.wrench()
          + " used with its calibration over, "
          + ReviewWords.plain(e.reason());
    }
    return event instanceof SessionEvent.OutOfOrderNoted e
        ? ReviewWords.step(e.step()) + ": out of order, " + ReviewWords.plain(e.reason())
        : event.toString();
  }

  static String confirmed(SessionEvent.LoadConfirmed e) {
    return ReviewWords.plain(e.condition())
        + " confirmed, "
        + ReviewWords.plain(e.proof())
        + height(e.height());
  }

  /** What was wrong with the log when it was opened. */
  static String loss(SessionEvent.LogDoubted e) {
    String lines = e.lines().map(n -> " (" + n + ")").orElse("");
    return switch (e.trouble()) {
      case LINES_GONE -> "lines were gone from its end" + lines;
      case SUM_DIFFERS -> "it was not the log that its checksum was kept for";
      case SUM_MISSING -> "its checksum was absent or not readable";
    };
  }

  private static String height(Optional<Measure> height) {
    return height.map(h -> ", " + h).orElse("");
  }
}
