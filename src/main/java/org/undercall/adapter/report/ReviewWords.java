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
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.review.Span;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.BandSource;
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
      case WITNESS_MISSING -> "no second person confirmed that he saw it";
    };
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
}
