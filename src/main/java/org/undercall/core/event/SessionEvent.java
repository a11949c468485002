package org.undercall.core.event;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.HearingTrouble;
import org.undercall.core.term.Job;
import org.undercall.core.term.JobField;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.LogTrouble;
import org.undercall.core.term.Measure;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.Positions;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Remedy;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TalkLevel;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.TorqueHint;
import org.undercall.core.term.Trouble;
import org.undercall.core.term.Vin;

/**
 * Something that happened in a session. Its permanent id and its sentence stand in {@link
 * EventKind}; stages are counted from 1.
 */
public sealed interface SessionEvent {

  /**
   * A session began.
   *
   * @param odometer in kilometres
   * @param occasion what it was begun for; empty in logs of earlier versions
   */
  record SessionStarted(
      String title,
      String revision,
      String sha256,
      String version,
      Optional<String> registration,
      Optional<String> vin,
      Optional<Measure> odometer,
      Optional<String> jobNumber,
      Optional<String> technician,
      Optional<Occasion> occasion)
      implements SessionEvent {
    /** Of a job of which nothing was given. */
    public SessionStarted(String title, String revision, String sha256, String version) {
      this(title, revision, sha256, version, Job.NOT_GIVEN);
    }

    /** Of a job. */
    public SessionStarted(String title, String revision, String sha256, String version, Job job) {
      this(
          title,
          revision,
          sha256,
          version,
          job.registration(),
          job.vin().map(Vin::text),
          job.odometer(),
          job.number(),
          job.technician(),
          Optional.empty());
    }

    /** The same, begun for this. */
    public SessionStarted with(Occasion begunFor) {
      return new SessionStarted(
          title,
          revision,
          sha256,
          version,
          registration,
          vin,
          odometer,
          jobNumber,
          technician,
          Optional.of(begunFor));
    }
  }

  /**
   * The session goes on from another one of the same car, whose fasteners it tightens again.
   *
   * @param session the name of the other session's folder
   * @param log the sum of the other session's log at its last line, SHA-256 in hex
   * @param registration as that session had it; so are the others
   * @param odometer in kilometres
   */
  record VisitBegun(
      String session,
      String log,
      Optional<String> registration,
      Optional<String> vin,
      Optional<Measure> odometer)
      implements SessionEvent {}

  record SessionResumed(String version) implements SessionEvent {}

  record CautionsUnderstood() implements SessionEvent {}

  record StepEntered(StepRef step) implements SessionEvent {}

  record StepClosed(StepRef step) implements SessionEvent {}

  record WorkDone(StepRef step) implements SessionEvent {}

  record CheckAnswered(StepRef step, boolean passed) implements SessionEvent {}

  record ValueCalled(StepRef step, int stage, BigDecimal value) implements SessionEvent {}

  record ValueRefused(StepRef step, int stage, BigDecimal called, BigDecimal expected)
      implements SessionEvent {}

  record ValueDropped(StepRef step) implements SessionEvent {}

  record StageClosed(StepRef step, int stage, String value) implements SessionEvent {}

  /** Positions of a set were called at a stage: one by itself, or all that were left. */
  record PositionsClosed(StepRef step, int stage, Positions positions, String value)
      implements SessionEvent {}

  record PositionsTakenBack(StepRef step, int stage, Positions positions) implements SessionEvent {}

  /** A position out of turn, or all that are left by their number, waits to be read back. */
  record PositionsCalled(StepRef step, int stage, Positions positions) implements SessionEvent {}

  /**
   * A reading within the tolerance of a stage waits to be read back; with it the stage may close.
   */
  record ReadingCalled(StepRef step, int stage, BigDecimal value, boolean closes)
      implements SessionEvent {}

  /** Something about the job, spelled, waits to be read back. */
  record JobCalled(JobField field, String text) implements SessionEvent {}

  /** Something about the job was read back and kept; parts of a VIN follow each other. */
  record JobNoted(JobField field, String text) implements SessionEvent {}

  /** A fastener was run in by hand; of a set all, with their number. */
  record RunInByHand(StepRef step, Optional<Integer> count) implements SessionEvent {}

  /** The torque that a nut needs to run down waits to be read back. */
  record RunDownCalled(StepRef step, BigDecimal value) implements SessionEvent {}

  /** The torque that a nut needs to run down, in the unit of the specification. */
  record RunDownNoted(StepRef step, BigDecimal value) implements SessionEvent {}

  /** A torque that was read after the last angle waits to be read back. */
  record FinalTorqueCalled(StepRef step, BigDecimal value) implements SessionEvent {}

  /** A torque that was read after the last angle, in the unit of the specification. */
  record FinalTorqueNoted(StepRef step, BigDecimal value) implements SessionEvent {}

  /**
   * A torque after the last angle was held against a band. A hint, never a verdict.
   *
   * @param least the band's lower end, in the unit of the specification
   * @param most its upper end
   * @param band where it comes from
   */
  record FinalTorqueJudged(
      StepRef step, TorqueHint hint, BigDecimal least, BigDecimal most, BandSource band)
      implements SessionEvent {}

  /**
   * The wrench that is used from here on.
   *
   * @param wrench its name in the procedure
   */
  record WrenchNamed(StepRef step, String wrench) implements SessionEvent {}

  /** Why a wrench is used although its calibration is over; waits to be read back. */
  record OverdueCalled(StepRef step, String wrench, OverdueReason reason) implements SessionEvent {}

  record OverdueNoted(StepRef step, String wrench, OverdueReason reason) implements SessionEvent {}

  /** Something went wrong, and waits to be read back; of a set at a position, if it is known. */
  record TroubleCalled(StepRef step, Trouble trouble, Optional<Integer> position)
      implements SessionEvent {}

  record TroubleNoted(StepRef step, Trouble trouble, Optional<Integer> position)
      implements SessionEvent {}

  /** What went wrong, or a check that failed, was settled; a fastener starts again. */
  record TroubleSettled(StepRef step, Remedy remedy) implements SessionEvent {}

  record StagesVoided(StepRef step) implements SessionEvent {}

  record CloseRefused(StepRef step, Missing missing) implements SessionEvent {}

  record MeasureCalled(StepRef step, Measure value) implements SessionEvent {}

  record Measured(StepRef step, Measure value, boolean withinLimits) implements SessionEvent {}

  record RideHeightNoted(Side side, Measure value) implements SessionEvent {}

  record MarkingCalled(StepRef step, HeadMarking marking) implements SessionEvent {}

  record MarkingNoted(StepRef step, HeadMarking marking) implements SessionEvent {}

  record MarkingRefused(StepRef step, HeadMarking marking) implements SessionEvent {}

  /**
   * New hardware was fitted.
   *
   * @param count how many, counted aloud; empty for a single fastener
   */
  record NewHardwareFitted(StepRef step, Optional<Integer> count) implements SessionEvent {
    /** A single new fastener. */
    public NewHardwareFitted(StepRef step) {
      this(step, Optional.empty());
    }
  }

  /**
   * A used part is to be fitted again; waits to be read back.
   *
   * @param value its length in millimetres, of a set the longest; or how often it was tightened
   *     before, of a set the most
   */
  record ReuseCalled(StepRef step, ReuseBy by, BigDecimal value) implements SessionEvent {}

  record ReuseNoted(StepRef step, ReuseBy by, BigDecimal value) implements SessionEvent {}

  record ReuseRefused(StepRef step, ReuseBy by, BigDecimal value) implements SessionEvent {}

  record LoadCalled(Side side, LoadCondition condition, LoadProof proof, Optional<Measure> height)
      implements SessionEvent {}

  record LoadConfirmed(
      Side side, LoadCondition condition, LoadProof proof, Optional<Measure> height)
      implements SessionEvent {}

  record LoadRefused(Side side, Missing missing, Optional<Measure> height)
      implements SessionEvent {}

  record LoadChanged(LoadChange change) implements SessionEvent {}

  record StepPutOff(StepRef step, PutOffReason reason) implements SessionEvent {}

  record FastenerSnug(StepRef step) implements SessionEvent {}

  record StepReopened(StepRef step) implements SessionEvent {}

  /** A step was opened again whose fastener was turned through an angle and may still be tight. */
  record ReopenedTight(StepRef step) implements SessionEvent {}

  record ClosingTakenBack(StepRef step) implements SessionEvent {}

  /** A stage was taken back as soon as it was closed: it is at hand again. */
  record StageTakenBack(StepRef step, int stage) implements SessionEvent {}

  /** What was said last, of this kind, was taken back. */
  record SayingTakenBack(StepRef step, String what) implements SessionEvent {}

  /** A tightening was broken off before an angle stage was closed: how far it is turned is open. */
  record TighteningInterrupted(StepRef step) implements SessionEvent {}

  /** How far the angle of the stage at hand was turned, in degrees, waits to be read back. */
  record TurnCalled(StepRef step, BigDecimal degrees) implements SessionEvent {}

  record TurnNoted(StepRef step, BigDecimal degrees) implements SessionEvent {}

  record Loosened(StepRef step) implements SessionEvent {}

  /** A closing no longer holds, because of what was done at another step. */
  record ClosingLapsed(StepRef step, StepRef because) implements SessionEvent {}

  /** It is asked whether a closing still holds after another step was opened again. */
  record ClosingDoubted(StepRef step, StepRef because) implements SessionEvent {}

  /** The closings that were asked about still hold. */
  record ClosingsHold(StepRef because) implements SessionEvent {}

  record OutOfOrderCalled(StepRef step, OrderReason reason) implements SessionEvent {}

  /** A step may be closed before those that should come first. */
  record OutOfOrderNoted(StepRef step, OrderReason reason) implements SessionEvent {}

  /** Left and right lie further apart than the procedure permits. */
  record HeightsApart(Side side, Measure difference) implements SessionEvent {}

  record ReadBackDropped() implements SessionEvent {}

  /**
   * The next words are a note.
   *
   * @param about what it reports, if it is more than a note
   * @param side where that is, as said; else the side of the step at hand
   */
  record NoteStarted(Optional<Finding> about, Optional<Side> side) implements SessionEvent {
    /** A note that is no more than that. */
    public NoteStarted() {
      this(Optional.empty(), Optional.empty());
    }
  }

  /**
   * A note, as heard.
   *
   * @param about what it reports, if it is more than a note
   * @param side where that is; empty for a plain note
   */
  record NoteKept(StepRef step, String text, Optional<Finding> about, Optional<Side> side)
      implements SessionEvent {
    /** A note that is no more than that. */
    public NoteKept(StepRef step, String text) {
      this(step, text, Optional.empty(), Optional.empty());
    }
  }

  record NoteDropped() implements SessionEvent {}

  record WorkHeld() implements SessionEvent {}

  record WorkResumed() implements SessionEvent {}

  /** The work was handed over at a step; who takes it is not known yet. */
  record WorkHandedOver(StepRef step) implements SessionEvent {}

  /** From here on another technician works. */
  record WorkTakenOver(String technician) implements SessionEvent {}

  /** The work of a step is done, and waits for its witness; one that had one is open again. */
  record WitnessAsked(StepRef step) implements SessionEvent {}

  /** Who saw it was named, and waits to be read back. */
  record WitnessCalled(StepRef step, String witness) implements SessionEvent {}

  /**
   * A second person saw what was done.
   *
   * @param seen what was read back to him
   */
  record Witnessed(StepRef step, String witness, String seen) implements SessionEvent {}

  /** Whenever this technician works, the work is an apprentice's. */
  record ApprenticeWorks(String apprentice) implements SessionEvent {}

  /**
   * The names that a witness can have.
   *
   * @param names with a comma and a blank between them
   */
  record WitnessesKnown(String names) implements SessionEvent {}

  record TimerStarted(StepRef step, long seconds, Instant due) implements SessionEvent {}

  record TimerEnded(StepRef step) implements SessionEvent {}

  record TimerCancelled(StepRef step) implements SessionEvent {}

  record HandedOver(StepRef step, String due) implements SessionEvent {}

  record EndCalled(int open) implements SessionEvent {}

  record SessionEnded(boolean complete, int open) implements SessionEvent {}

  record Asked(String question) implements SessionEvent {}

  record NotNow(String intent, String phase) implements SessionEvent {}

  /**
   * Something was no phrase.
   *
   * @param inARow how many phrases in a row were asked for again, this one included, counted up to
   *     three; empty if it was left alone
   */
  record NotUnderstood(String reason, Optional<Integer> inARow) implements SessionEvent {
    /** Something that was left alone. */
    public NotUnderstood(String reason) {
      this(reason, Optional.empty());
    }
  }

  /**
   * How much is said from now on.
   *
   * @param cautionsHeard whether the technician heard cautions before on this day
   * @param cautions the numbers of the cautions heard whole and confirmed before on this day
   * @param known what is known from earlier sessions: names with a blank between them
   */
  record TalkSet(
      TalkLevel level, boolean cautionsHeard, Optional<Positions> cautions, Optional<String> known)
      implements SessionEvent {
    /** Of somebody of whom nothing is known. */
    public TalkSet(TalkLevel level) {
      this(level, false, Optional.empty(), Optional.empty());
    }
  }

  /** The reason was said; until a time it is not said again. */
  record HearingRemarked(HearingTrouble trouble, Instant quietUntil) implements SessionEvent {}

  record NamedTimerStarted(TimerName name, StepRef step, long seconds, Instant due)
      implements SessionEvent {}

  record NamedTimerEnded(TimerName name) implements SessionEvent {}

  record NamedTimerCancelled(TimerName name) implements SessionEvent {}

  record TimerWarned(StepRef step) implements SessionEvent {}

  record NamedTimerWarned(TimerName name) implements SessionEvent {}

  record ClockJumped(long millis) implements SessionEvent {}

  record Reminded(long quietSeconds) implements SessionEvent {}

  record StepRecalled(StepRef step) implements SessionEvent {}

  /** The log was not whole when it was opened again; how many lines are gone, if known. */
  record LogDoubted(LogTrouble trouble, Optional<Integer> lines) implements SessionEvent {}
}
