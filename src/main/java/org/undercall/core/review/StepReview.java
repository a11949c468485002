package org.undercall.core.review;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.PutOffReason;

/**
 * One step of the walk, looked at afterwards.
 *
 * @param place the step
 * @param state how it stands at the end of the log
 * @param times when, and how long
 * @param work what was answered, measured and refused
 * @param tightened what was recorded about a fastener; empty lists and values for other steps
 * @param doubts what its last closing lacks according to the events
 */
public record StepReview(
    Walk.Place place, State state, Times times, Work work, Tightened tightened, Set<Doubt> doubts) {

  /** How a step stands. */
  public enum State {
    CLOSED,
    OPEN,
    PUT_OFF,
    /** A fastener that is started, not tightened. */
    STARTED_NOT_TIGHTENED
  }

  /** Something that a closing needs and the log does not show before it. */
  public enum Doubt {
    LOAD_NOT_CONFIRMED,
    STAGE_NOT_CLOSED,
    VALUE_OUTSIDE_TOLERANCE,
    FINAL_TORQUE_OUTSIDE,
    HEAD_MARKING_NOT_READ,
    HARDWARE_NOT_NEW,
    CHECK_NOT_PASSED,
    VALUE_NOT_MEASURED,
    VALUE_OUTSIDE_LIMITS,
    WITNESS_MISSING
  }

  /**
   * When, and how long.
   *
   * @param start when it first became the step at hand; empty if it never did
   * @param end when it was closed; empty if it is not
   * @param whole from start to end, or to the end of the log
   * @param working at hand and not closed, without holds
   * @param aside put off or left snug, and not at hand
   * @param timed while its timer ran
   */
  public record Times(
      Optional<OffsetDateTime> start,
      Optional<OffsetDateTime> end,
      Span whole,
      Duration working,
      Duration aside,
      Duration timed) {}

  /**
   * What was answered, measured and refused.
   *
   * @param answers answers to the check question, in order
   * @param measured measured values, in order
   * @param refusals what was refused while it was at hand or about it
   * @param reopened when it was opened again or its closing was taken back
   * @param putOff every reason it was put off for, in order
   * @param closedBy the technician who closed it; empty if it is not closed or nobody was named
   * @param earlier what stood closed before it was opened again, in order
   * @param witness the second person who saw it since it was opened last
   * @param witnessMissing whether its work is done and it waits for a second person
   */
  public record Work(
      List<Review.Timed<SessionEvent.CheckAnswered>> answers,
      List<Review.Timed<SessionEvent.Measured>> measured,
      List<Review.Refusal> refusals,
      List<OffsetDateTime> reopened,
      List<PutOffReason> putOff,
      Optional<String> closedBy,
      List<Earlier> earlier,
      Optional<Review.Timed<SessionEvent.Witnessed>> witness,
      boolean witnessMissing) {
    public Work {
      earlier = List.copyOf(earlier);
      answers = List.copyOf(answers);
      measured = List.copyOf(measured);
      refusals = List.copyOf(refusals);
      reopened = List.copyOf(reopened);
      putOff = List.copyOf(putOff);
    }
  }

  /**
   * What was recorded about a fastener since it was last loosened.
   *
   * @param marking the head marking that was read
   * @param newHardware when new hardware was fitted
   * @param reused what was read back of a used part that was fitted again
   * @param byHand when it was run in by hand, of a set all
   * @param load the confirmation that the last closing rests on
   * @param stages the stages of the specification; empty while the marking decides and is not known
   * @param runDown the torque that a nut needed to run down
   * @param finalTorque the torque that was read after the last angle
   * @param judged what it hints at, and the band it was held against
   * @param voided how often stages were made void
   */
  public record Tightened(
      Optional<HeadMarking> marking,
      Optional<OffsetDateTime> newHardware,
      Optional<Review.Timed<SessionEvent.ReuseNoted>> reused,
      Optional<OffsetDateTime> byHand,
      Optional<Review.Timed<SessionEvent.LoadConfirmed>> load,
      List<StageReview> stages,
      Optional<BigDecimal> runDown,
      Optional<Review.Timed<SessionEvent.FinalTorqueNoted>> finalTorque,
      Optional<SessionEvent.FinalTorqueJudged> judged,
      int voided) {
    public Tightened {
      stages = List.copyOf(stages);
    }

    /** Whether there is new hardware, or a used part within its limit. */
    public boolean hardwareHolds(Fastener.Part part) {
      return newHardware.isPresent()
          || reused
              .map(Review.Timed::event)
              .filter(
                  e ->
                      part.reuse()
                          .filter(limit -> limit.by() == e.by() && limit.permits(e.value()))
                          .isPresent())
              .isPresent();
    }

    /** Whether the torque read after the last angle lies outside the band that is stated. */
    public boolean finalTorqueOutside() {
      Stage last = stages.isEmpty() ? null : stages.get(stages.size() - 1).specification();
      return finalTorque.isPresent()
          && last instanceof Stage.AngleStage angle
          && angle
              .finalTorque()
              .filter(band -> !band.holds(finalTorque.get().event().value()))
              .isPresent();
    }
  }

  /** A called value and the file with its sound. */
  record Called(BigDecimal value, Optional<String> clip) {}

  /**
   * One of a set at a stage.
   *
   * @param number its position
   * @param called the value that was called for it
   * @param closed when
   * @param counted whether it was called together with others, by their number
   */
  public record Position(
      int number, Optional<BigDecimal> called, OffsetDateTime closed, boolean counted) {}

  /**
   * A stage against its specification.
   *
   * @param specification the target and its tolerance
   * @param called the value the technician called; it was not measured by the program
   * @param clip the file with the sound of that call, as the log names it; empty if there is none
   * @param closed when the stage was closed; empty if it is open
   * @param positions of a set, those that were called, in that order; empty for a single fastener
   *     and for a set that was not called one by one, as earlier versions took it
   * @param wrenches the names of the torque wrenches that were said to be used; empty for an angle
   *     and where none was named
   */
  public record StageReview(
      Stage specification,
      Optional<BigDecimal> called,
      Optional<String> clip,
      Optional<OffsetDateTime> closed,
      List<Position> positions,
      List<String> wrenches) {
    public StageReview {
      wrenches = List.copyOf(wrenches);
      positions = List.copyOf(positions);
    }

    /** Called value less target, in the unit of the specification. */
    public Optional<BigDecimal> deviation() {
      return called.map(value -> value.subtract(specification.amount()));
    }

    /** Whether a called value lies within the tolerance; true if none was called. */
    public boolean within() {
      return deviation().map(d -> d.abs().compareTo(plusMinus()) <= 0).orElse(true);
    }

    /** The permitted deviation either way, in the unit of the specification. */
    public BigDecimal plusMinus() {
      return specification instanceof Stage.TorqueStage torque
          ? torque.plusMinus()
          : ((Stage.AngleStage) specification).plusMinus();
    }
  }

  public StepReview {
    doubts = Set.copyOf(doubts);
  }

  boolean sameGroup(StepReview other) {
    return place.ref().side() == other.place.ref().side()
        && place.phase().equals(other.place.phase());
  }
}
