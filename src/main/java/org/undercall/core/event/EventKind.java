package org.undercall.core.event;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The event dictionary: a permanent id and one sentence for each event. An id is never used for
 * anything else, even when its event is no longer written.
 */
public enum EventKind {
  SESSION_STARTED("EV01", SessionEvent.SessionStarted.class, "A session began with a procedure."),
  SESSION_RESUMED(
      "EV02", SessionEvent.SessionResumed.class, "The program took the session up again."),
  CAUTIONS_UNDERSTOOD(
      "EV03", SessionEvent.CautionsUnderstood.class, "The cautions were read and understood."),
  STEP_ENTERED("EV04", SessionEvent.StepEntered.class, "A step became the step at hand."),
  STEP_CLOSED("EV05", SessionEvent.StepClosed.class, "A step was closed with all it needs."),
  WORK_DONE("EV06", SessionEvent.WorkDone.class, "The work of a step with a check is done."),
  CHECK_ANSWERED("EV07", SessionEvent.CheckAnswered.class, "The check question was answered."),
  VALUE_CALLED("EV08", SessionEvent.ValueCalled.class, "A called value matched the stage."),
  VALUE_REFUSED("EV09", SessionEvent.ValueRefused.class, "A called value did not match the stage."),
  VALUE_DROPPED("EV10", SessionEvent.ValueDropped.class, "A called value was taken back."),
  STAGE_CLOSED("EV11", SessionEvent.StageClosed.class, "A torque or angle stage was closed."),
  STAGES_VOIDED(
      "EV12",
      SessionEvent.StagesVoided.class,
      "Stages of an unfinished tightening no longer count."),
  CLOSE_REFUSED(
      "EV13", SessionEvent.CloseRefused.class, "Closing was refused for what is missing."),
  MEASURE_CALLED("EV14", SessionEvent.MeasureCalled.class, "A measured value waits for read-back."),
  MEASURED("EV15", SessionEvent.Measured.class, "A measured value was read back and kept."),
  RIDE_HEIGHT_NOTED(
      "EV16", SessionEvent.RideHeightNoted.class, "The ride height before the work was noted."),
  MARKING_CALLED("EV17", SessionEvent.MarkingCalled.class, "A head marking waits for read-back."),
  MARKING_NOTED("EV18", SessionEvent.MarkingNoted.class, "A head marking was read back and kept."),
  MARKING_REFUSED(
      "EV19", SessionEvent.MarkingRefused.class, "A head marking is not in the procedure."),
  NEW_HARDWARE_FITTED("EV20", SessionEvent.NewHardwareFitted.class, "New hardware was fitted."),
  LOAD_CALLED("EV21", SessionEvent.LoadCalled.class, "A load condition waits for read-back."),
  LOAD_CONFIRMED("EV22", SessionEvent.LoadConfirmed.class, "A load condition was read back."),
  LOAD_REFUSED("EV23", SessionEvent.LoadRefused.class, "A load condition was not accepted."),
  LOAD_CHANGED(
      "EV24",
      SessionEvent.LoadChanged.class,
      "The load may have changed: confirmations cancelled."),
  STEP_PUT_OFF("EV25", SessionEvent.StepPutOff.class, "A step was put off and stays open."),
  FASTENER_SNUG(
      "EV26", SessionEvent.FastenerSnug.class, "A fastener was started and is not tightened."),
  STEP_REOPENED(
      "EV27", SessionEvent.StepReopened.class, "A step was opened again; a fastener is loose."),
  CLOSING_TAKEN_BACK(
      "EV28", SessionEvent.ClosingTakenBack.class, "The last closing was taken back."),
  READ_BACK_DROPPED(
      "EV29", SessionEvent.ReadBackDropped.class, "What waited for read-back was dropped."),
  NOTE_STARTED("EV30", SessionEvent.NoteStarted.class, "The next words are a note."),
  NOTE_KEPT("EV31", SessionEvent.NoteKept.class, "A note was kept as heard, unchecked."),
  NOTE_DROPPED("EV32", SessionEvent.NoteDropped.class, "The note was dropped."),
  WORK_HELD("EV33", SessionEvent.WorkHeld.class, "The work was held."),
  WORK_RESUMED("EV34", SessionEvent.WorkResumed.class, "The work went on."),
  TIMER_STARTED("EV35", SessionEvent.TimerStarted.class, "A timer was started."),
  TIMER_ENDED("EV36", SessionEvent.TimerEnded.class, "A timer ran out."),
  TIMER_CANCELLED("EV37", SessionEvent.TimerCancelled.class, "A timer was cancelled."),
  HANDED_OVER("EV38", SessionEvent.HandedOver.class, "An item was handed over, still to be done."),
  END_CALLED("EV39", SessionEvent.EndCalled.class, "The end with open steps waits for read-back."),
  SESSION_ENDED("EV40", SessionEvent.SessionEnded.class, "The session was ended."),
  ASKED("EV41", SessionEvent.Asked.class, "A question was answered."),
  NOT_NOW("EV42", SessionEvent.NotNow.class, "An intent has no place in this phase."),
  NOT_UNDERSTOOD("EV43", SessionEvent.NotUnderstood.class, "Something heard was no phrase."),
  HEARING_REMARKED(
      "EV44", SessionEvent.HearingRemarked.class, "The program said why it is hard to understand."),
  NAMED_TIMER_STARTED(
      "EV50", SessionEvent.NamedTimerStarted.class, "A timer with a name was started by voice."),
  NAMED_TIMER_ENDED("EV51", SessionEvent.NamedTimerEnded.class, "A timer with a name ran out."),
  NAMED_TIMER_CANCELLED(
      "EV52", SessionEvent.NamedTimerCancelled.class, "A timer with a name was cancelled."),
  TIMER_WARNED("EV53", SessionEvent.TimerWarned.class, "A step's timer soon runs out."),
  NAMED_TIMER_WARNED(
      "EV54", SessionEvent.NamedTimerWarned.class, "A timer with a name soon runs out."),
  CLOCK_JUMPED(
      "EV55",
      SessionEvent.ClockJumped.class,
      "The wall clock was set, forward or back: running timers are due as much later or earlier."),
  REMINDED("EV56", SessionEvent.Reminded.class, "Nothing was heard for long: a reminder."),
  STEP_RECALLED(
      "EV57", SessionEvent.StepRecalled.class, "A step put off was brought to mind again."),
  TIGHTENING_INTERRUPTED(
      "EV61",
      SessionEvent.TighteningInterrupted.class,
      "A tightening was broken off: how far its angle is turned is open."),
  TURN_CALLED("EV62", SessionEvent.TurnCalled.class, "An angle turned so far waits for read-back."),
  TURN_NOTED(
      "EV63", SessionEvent.TurnNoted.class, "An angle turned so far was read back and kept."),
  LOOSENED("EV64", SessionEvent.Loosened.class, "A fastener was loosened fully."),
  STAGE_TAKEN_BACK(
      "EV65", SessionEvent.StageTakenBack.class, "The closing of a stage was taken back at once."),
  CLOSING_LAPSED(
      "EV66",
      SessionEvent.ClosingLapsed.class,
      "A closing no longer holds, for what was done at another step."),
  CLOSING_DOUBTED(
      "EV67",
      SessionEvent.ClosingDoubted.class,
      "It is asked whether a closing still holds after another step was opened again."),
  CLOSINGS_HOLD("EV68", SessionEvent.ClosingsHold.class, "Closings that were asked about hold."),
  OUT_OF_ORDER_CALLED(
      "EV69", SessionEvent.OutOfOrderCalled.class, "A reason to close out of order is read back."),
  OUT_OF_ORDER_NOTED(
      "EV70",
      SessionEvent.OutOfOrderNoted.class,
      "A step may be closed before those that come first."),
  SAYING_TAKEN_BACK(
      "EV71", SessionEvent.SayingTakenBack.class, "What was said last was taken back."),
  HEIGHTS_APART(
      "EV72",
      SessionEvent.HeightsApart.class,
      "Left and right lie further apart than is permitted."),
  REOPENED_TIGHT(
      "EV73",
      SessionEvent.ReopenedTight.class,
      "A step was opened again; its fastener may still be tight."),
  POSITIONS_CLOSED(
      "EV74",
      SessionEvent.PositionsClosed.class,
      "Positions of a set were called at a stage: one by itself, or all that were left."),
  POSITIONS_TAKEN_BACK(
      "EV75",
      SessionEvent.PositionsTakenBack.class,
      "Positions of a set are open again at the stage at hand."),
  POSITIONS_CALLED(
      "EV76",
      SessionEvent.PositionsCalled.class,
      "A position out of turn, or all that are left, waits for read-back."),
  READING_CALLED(
      "EV77",
      SessionEvent.ReadingCalled.class,
      "A reading within the tolerance, not the nominal value, waits for read-back."),
  TROUBLE_CALLED(
      "EV78", SessionEvent.TroubleCalled.class, "Something that went wrong waits for read-back."),
  TROUBLE_NOTED(
      "EV79",
      SessionEvent.TroubleNoted.class,
      "Something went wrong: the step waits until it is settled."),
  TROUBLE_SETTLED(
      "EV80",
      SessionEvent.TroubleSettled.class,
      "What went wrong, or a check that failed, was settled."),
  WRENCH_NAMED("EV81", SessionEvent.WrenchNamed.class, "The wrench that is used was named."),
  OVERDUE_CALLED(
      "EV82",
      SessionEvent.OverdueCalled.class,
      "The use of a wrench whose calibration is over waits for read-back."),
  OVERDUE_NOTED(
      "EV83",
      SessionEvent.OverdueNoted.class,
      "A wrench is used although its calibration is over, for a reason."),
  JOB_CALLED("EV84", SessionEvent.JobCalled.class, "Something about the job waits for read-back."),
  JOB_NOTED("EV85", SessionEvent.JobNoted.class, "Something about the job was read back and kept."),
  FINAL_TORQUE_CALLED(
      "EV86",
      SessionEvent.FinalTorqueCalled.class,
      "A torque read after the last angle waits for read-back."),
  FINAL_TORQUE_NOTED(
      "EV87",
      SessionEvent.FinalTorqueNoted.class,
      "A torque read after the last angle was read back and kept."),
  RUN_DOWN_CALLED(
      "EV88", SessionEvent.RunDownCalled.class, "A run-down torque waits for read-back."),
  RUN_DOWN_NOTED(
      "EV89", SessionEvent.RunDownNoted.class, "A run-down torque was read back and kept."),
  RUN_IN_BY_HAND(
      "EV90", SessionEvent.RunInByHand.class, "A fastener, or all of a set, was run in by hand."),
  TALK_SET("EV95", SessionEvent.TalkSet.class, "How much is said was set."),
  WORK_HANDED_OVER(
      "EV91",
      SessionEvent.WorkHandedOver.class,
      "The work was handed over: the next technician names himself."),
  WORK_TAKEN_OVER(
      "EV92",
      SessionEvent.WorkTakenOver.class,
      "Another technician took the work over and understood the cautions."),
  REUSE_CALLED(
      "EV96",
      SessionEvent.ReuseCalled.class,
      "A used part was measured, or its uses counted, and waits for read-back."),
  REUSE_NOTED(
      "EV97",
      SessionEvent.ReuseNoted.class,
      "A used part within its limit was read back and is fitted again."),
  REUSE_REFUSED(
      "EV98",
      SessionEvent.ReuseRefused.class,
      "A used part was refused: too long, used too often, or not credible."),
  FINAL_TORQUE_JUDGED(
      "EV99",
      SessionEvent.FinalTorqueJudged.class,
      "A torque read after the last angle was held against a band: a hint, never a verdict."),
  VISIT_BEGUN(
      "EV104",
      SessionEvent.VisitBegun.class,
      "The session goes on from another one of the same car, to tighten again."),
  WITNESS_ASKED(
      "EV108",
      SessionEvent.WitnessAsked.class,
      "The work of a step is done; it stays open until a second person saw it."),
  WITNESS_CALLED(
      "EV109", SessionEvent.WitnessCalled.class, "A witness was named and waits for read-back."),
  WITNESSED("EV110", SessionEvent.Witnessed.class, "A second person confirmed what was read back."),
  APPRENTICE_WORKS(
      "EV111",
      SessionEvent.ApprenticeWorks.class,
      "The work of this technician is an apprentice's."),
  WITNESSES_KNOWN(
      "EV112", SessionEvent.WitnessesKnown.class, "The names that a witness can have were given."),
  LOG_DOUBTED(
      "EV60",
      SessionEvent.LogDoubted.class,
      "The log was not whole when it was opened again: what its lost lines said is not known.");

  private static final Map<Class<?>, EventKind> BY_TYPE =
      Arrays.stream(values()).collect(Collectors.toMap(EventKind::type, Function.identity()));
  private static final Map<String, EventKind> BY_ID =
      Arrays.stream(values()).collect(Collectors.toMap(EventKind::id, Function.identity()));

  private final String id;
  private final Class<? extends SessionEvent> type;
  private final String sentence;

  EventKind(String id, Class<? extends SessionEvent> type, String sentence) {
    this.id = id;
    this.type = type;
    this.sentence = sentence;
  }

  /** The kind of an event. */
  public static EventKind of(SessionEvent event) {
    return BY_TYPE.get(event.getClass());
  }

  /** The kind with an id; empty if there is none. */
  public static Optional<EventKind> withId(String id) {
    return Optional.ofNullable(BY_ID.get(id));
  }

  /** The permanent id, for example {@code EV05}. */
  public String id() {
    return id;
  }

  /** The record that carries the fields. */
  public Class<? extends SessionEvent> type() {
    return type;
  }

  /** What happened, in one sentence. */
  public String sentence() {
    return sentence;
  }
}
