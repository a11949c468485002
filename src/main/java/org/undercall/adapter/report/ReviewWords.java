package org.undercall.adapter.report;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercall.core.event.Missing;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.review.Span;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.Measure;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** The words of the written review, shared by all its forms. */
final class ReviewWords {
  /** Said of every torque and angle in a review. */
  static final String CALLED_NOT_MEASURED =
      "Values as called by the technician, not measured by this program.";

  private static final long MILLIS = 1000;
  private static final long SECONDS = 60;
  private static final long MINUTES = 60;

  private ReviewWords() {}

  /** {@code RIDE_HEIGHT} as {@code ride height}. */
  static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static String side(Side side) {
    return side.place();
  }

  static String step(StepRef ref) {
    return ref.side() == Side.CAR ? ref.id() : ref.id() + ", " + plain(ref.side());
  }

  /** Hours, minutes and seconds, rounded to whole seconds. */
  static String length(Duration duration) {
    long seconds = (duration.toMillis() + MILLIS / 2) / MILLIS;
    long minutes = seconds / SECONDS;
    String rest = seconds % SECONDS + " s";
    if (minutes == 0) {
      return rest;
    }
    return minutes < MINUTES
        ? minutes + " min " + rest
        : minutes / MINUTES + " h " + minutes % MINUTES + " min " + rest;
  }

  static String length(Span span) {
    return length(span.length()) + (span.acrossRestart() ? " (by wall clock over a restart)" : "");
  }

  /** A specification with its tolerance, for example {@code 110 N·m ±5}. */
  static String specification(StepReview.StageReview stage) {
    Stage stated = stage.specification();
    String what =
        switch (StageWords.kind(stated)) {
          case "torque", "angle" ->
              StageWords.target(stated) + " ±" + stage.plusMinus().toPlainString();
          case "torque range" -> StageWords.specified(stated);
          default ->
              StageWords.kind(stated)
                  + " "
                  + StageWords.target(stated)
                  + " ±"
                  + stage.plusMinus().toPlainString();
        };
    return what + dialled(stated);
  }

  private static String dialled(Stage stage) {
    boolean adaptor = stage instanceof Stage.TorqueStage t && t.dialled().isPresent();
    return adaptor ? ", wrench set to " + ((Stage.TorqueStage) stage).setting() : "";
  }

  /**
   * The positions of a set that were called, each with its time; which are open, unless none is.
   *
   * @param time how a time is written
   * @return empty for a single fastener, and for a set that was not called one by one
   */
  static String ofSet(
      StepReview.StageReview stage, int count, Function<OffsetDateTime, String> time) {
    if (stage.positions().isEmpty()) {
      return "";
    }
    boolean counted = stage.positions().stream().anyMatch(StepReview.Position::counted);
    Set<Integer> called =
        stage.positions().stream()
            .map(StepReview.Position::number)
            .collect(Collectors.toCollection(HashSet::new));
    String open =
        IntStream.rangeClosed(1, count)
            .filter(n -> !called.contains(n))
            .mapToObj(String::valueOf)
            .collect(Collectors.joining(", "));
    return stage.positions().stream()
            .map(p -> "no. " + p.number() + " " + time.apply(p.closed()) + read(p, stage))
            .collect(Collectors.joining(", ", "; ", counted ? ", counted" : ""))
        + (open.isEmpty() ? "" : "; OPEN: no. " + open);
  }

  /** What was read at one of a set, if it is not the value of the specification. */
  private static String read(StepReview.Position position, StepReview.StageReview stage) {
    return position
        .called()
        .filter(value -> value.compareTo(stage.specification().amount()) != 0)
        .map(value -> " at " + value.toPlainString())
        .orElse("");
  }

  static String doubt(StepReview.Doubt doubt) {
    return switch (doubt) {
      case LOAD_NOT_CONFIRMED -> "the load condition was not confirmed";
      case STAGE_NOT_CLOSED -> "a stage was not closed";
      case VALUE_OUTSIDE_TOLERANCE -> "a called value is outside the tolerance";
      case FINAL_TORQUE_OUTSIDE -> "the torque after the last angle is outside its band";
      case HEAD_MARKING_NOT_READ -> "the head marking was not read";
      case HARDWARE_NOT_NEW -> "new hardware was not confirmed";
      case CHECK_NOT_PASSED -> "the check was not passed";
      case VALUE_NOT_MEASURED -> "no measured value was kept";
      case VALUE_OUTSIDE_LIMITS -> "the measured value is outside its limits";
    };
  }

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
      return "used part refused: " + reused(e.by(), e.value());
    }
    if (event instanceof SessionEvent.LoadRefused e) {
      return "load condition, "
          + side(e.side())
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
      case UNIT -> "the unit";
      case WRENCH -> "a wrench that fits";
      case CALIBRATION -> "a calibration that holds";
      case AFFIRMATION -> "a plain yes";
      default -> plain(missing);
    };
  }

  /** What happened to the load. */
  static String load(SessionEvent event) {
    if (event instanceof SessionEvent.LoadConfirmed e) {
      return side(e.side()) + ": " + confirmed(e);
    }
    if (event instanceof SessionEvent.LoadChanged e) {
      return "confirmations cancelled: " + plain(e.change());
    }
    if (event instanceof SessionEvent.HeightsApart e) {
      return "left and right differ by " + e.difference() + ", more than the procedure permits";
    }
    return event instanceof SessionEvent.RideHeightNoted e
        ? side(e.side()) + ": height before the work " + e.value()
        : event.toString();
  }

  /** The torque that was read after the last angle, and what it hints at. */
  static Optional<String> finalTorque(StepReview.Tightened tightened) {
    return tightened
        .finalTorque()
        .map(
            read ->
                read.event().value().toPlainString()
                    + " "
                    + unit(tightened)
                    + (tightened.finalTorqueOutside() ? " OUTSIDE its band" : "")
                    + tightened.judged().map(ReviewWords::hint).orElse(""));
  }

  /** The band of a torque and what a reading hints at. */
  private static String hint(SessionEvent.FinalTorqueJudged judged) {
    String band = judged.band() == BandSource.COMPUTED ? "computed band " : "band ";
    return " ("
        + band
        + judged.least().toPlainString()
        + " to "
        + judged.most().toPlainString()
        + ", hint: "
        + plain(judged.hint())
        + ")";
  }

  /** Why a part is renewed, and until when it may be used again. */
  static String renewed(Fastener.Part part) {
    Stream<String> reasons = part.renew().stream().map(ReviewWords::plain);
    Stream<String> limit =
        part.reuse().stream()
            .map(
                r ->
                    r.by() == ReuseBy.LENGTH
                        ? "used again up to " + r.most().toPlainString() + " mm"
                        : "used " + r.most().toPlainString() + " times");
    return Stream.concat(reasons, limit).collect(Collectors.joining(", "));
  }

  /** What was read back of a used part. */
  static String reused(ReuseBy by, BigDecimal value) {
    return by == ReuseBy.LENGTH
        ? "length " + value.toPlainString() + " mm"
        : "tightened " + value.toPlainString() + " times before";
  }

  /** The torque that a nut needed to run down. */
  static Optional<String> runDown(StepReview.Tightened tightened) {
    return tightened.runDown().map(value -> value.toPlainString() + " " + unit(tightened));
  }

  /** The unit of a fastener's torques. */
  static String unit(StepReview.Tightened tightened) {
    return tightened.stages().stream()
        .map(StepReview.StageReview::specification)
        .filter(Stage.TorqueStage.class::isInstance)
        .map(stage -> ((Stage.TorqueStage) stage).target().unit().symbol())
        .findFirst()
        .orElse("");
  }

  /** A note as heard, with its step and the side that was said. */
  static String note(SessionEvent.NoteKept e) {
    String where = e.side().filter(s -> s != e.step().side()).map(s -> ", " + side(s)).orElse("");
    return step(e.step()) + where + ": " + e.text();
  }

  /** What went wrong, or how it was settled. */
  static String trouble(SessionEvent event) {
    if (event instanceof SessionEvent.TroubleNoted e) {
      String where = e.position().map(n -> "no. " + n + " ").orElse("");
      return step(e.step()) + ": " + where + plain(e.trouble());
    }
    return event instanceof SessionEvent.TroubleSettled e
        ? step(e.step()) + ": settled, " + plain(e.remedy())
        : step(((SessionEvent.SayingTakenBack) event).step()) + ": taken back";
  }

  /** What was undone, taken back, broken off, done out of order or with an overdue wrench. */
  static String change(SessionEvent event) {
    if (event instanceof SessionEvent.StepReopened e) {
      return step(e.step()) + ": opened again";
    }
    if (event instanceof SessionEvent.ReopenedTight e) {
      return step(e.step()) + ": opened again, perhaps still tight";
    }
    if (event instanceof SessionEvent.ClosingLapsed e) {
      return step(e.step()) + ": no longer holds, for " + step(e.because());
    }
    if (event instanceof SessionEvent.ClosingsHold e) {
      return step(e.because()) + ": what was closed further on was said to hold";
    }
    if (event instanceof SessionEvent.ClosingTakenBack e) {
      return step(e.step()) + ": closing taken back";
    }
    if (event instanceof SessionEvent.StageTakenBack e) {
      return step(e.step()) + ": stage " + e.stage() + " taken back";
    }
    if (event instanceof SessionEvent.SayingTakenBack e) {
      String what = e.what().toLowerCase(Locale.ROOT).replace('_', ' ');
      return step(e.step()) + ": taken back: " + what;
    }
    if (event instanceof SessionEvent.TighteningInterrupted e) {
      return step(e.step()) + ": tightening broken off";
    }
    if (event instanceof SessionEvent.TurnNoted e) {
      return step(e.step()) + ": turned so far " + e.degrees().toPlainString() + "° in all";
    }
    if (event instanceof SessionEvent.Loosened e) {
      return step(e.step()) + ": fully loosened";
    }
    if (event instanceof SessionEvent.OverdueNoted e) {
      return step(e.step())
          + ": "
          + e.wrench()
          + " used with its calibration over, "
          + plain(e.reason());
    }
    return event instanceof SessionEvent.OutOfOrderNoted e
        ? step(e.step()) + ": out of order, " + plain(e.reason())
        : event.toString();
  }

  static String confirmed(SessionEvent.LoadConfirmed e) {
    return plain(e.condition()) + " confirmed, " + plain(e.proof()) + height(e.height());
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
