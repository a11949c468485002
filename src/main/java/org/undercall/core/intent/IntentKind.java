package org.undercall.core.intent;

/** What a phrase can mean. The phrases for each are in {@link Phrasebook}. */
public enum IntentKind {
  CAUTIONS_UNDERSTOOD("The cautions were read out and understood."),
  JOB_TOLD(
      "The registration, identification number, odometer, job number or technician; read back."),
  STEP_COMPLETED("The step at hand is done (a do, wait, load or hand-over step)."),
  CHECK_PASSED("The answer to a check question: all is well."),
  CHECK_FAILED("The answer to a check question: it is not."),
  VALUE_CALLED("A number was called: a torque, an angle or a measured value."),
  READING_CALLED("A measured value was called with its sign, or in degrees and minutes."),
  TORQUE_COMPLETED("The torque stage at hand is done; may carry the value."),
  ANGLE_COMPLETED("The angle stage at hand is done; may carry the value."),
  FINAL_TORQUE("The torque that was read after the last angle of the fastener closed last."),
  READ_BACK_RIGHT("What the program read back is what was said."),
  READ_BACK_WRONG(
      "What the program read back is not what was said; else takes back what was recorded last."),
  CORRECTED("A no and the value that is right: drops what was read back; the value is read anew."),
  REPEAT("Say the last reply again."),
  WHAT_IS_LEFT("Say which steps are still open."),
  WHERE_AM_I("Say the step, side and stage at hand."),
  SAY_MORE("Say more from now on, and what is waited for once more."),
  SAY_LESS("Say less from now on."),
  WHICH_ONE("Which fastener of the set is next, and which are left."),
  WRENCH_NAMED("The torque wrench that is used; carries its number."),
  OVERDUE("Why a wrench is used although its calibration is over; read back."),
  WRENCH_SETTING("What is set on the wrench for the stage at hand."),
  OTHER_UNIT("The torque of the stage at hand in another unit."),
  WHY_THIS_VALUE("What the value of the stage at hand is for, or why a new part is needed."),
  GO_TO_STEP("Go to the step with a number."),
  STEP_BACK("Go back to the step before this one."),
  PUT_OFF("Leave the step open and go on; carries the reason."),
  FITTED_SNUG(
      "The fastener is run in by hand or snug, not tightened; may carry the number of a set."),
  REOPEN("Open a closed step again; a fastener counts as loosened."),
  NOTE("The next words are a note."),
  FINDING("The next words are a found fault, extra work or a part to order; may carry the side."),
  NOTE_TEXT("The words of a note."),
  HOLD("Pause the work."),
  RESUME("Go on after a pause."),
  SHIFT_CHANGE("Hand the work over to the next technician."),
  WITNESS_NAMED("A second person names himself, spelled, as one who saw it; read back."),
  WITNESSED("The second person confirms, with his name again, what was read back to him."),
  WHEELS_CARRY("The wheels stand on the ground or on ramps and carry the car."),
  KNUCKLE_JACKED("The knuckle is jacked until the body just lifts off its stand."),
  ARCH_HEIGHT("The wheel-centre-to-arch height was measured; carries the number."),
  HANGS_FREE("The suspension hangs free."),
  RIDE_HEIGHT_READ_BACK("Read-back of the ride-height condition, with the side."),
  FULL_DROOP_READ_BACK("Read-back of the full-droop condition, with the side."),
  CAR_RAISED("The car is raised."),
  CAR_LOWERED("The car is lowered."),
  JACK_MOVED("The jack or a stand was moved."),
  HEAD_MARKING("The head marking was read out; carries the property class."),
  NEW_HARDWARE("New hardware was fitted."),
  HARDWARE_LENGTH("The length of a used bolt that may be fitted again; read back."),
  HARDWARE_USES("How often a part was used that may be fitted again; read back."),
  SEVERAL("Several things in one answer; each is judged in turn, as if said alone."),
  TIMER_START("Start the step's timer."),
  TIMER_SET("Start a timer with a name; carries the name and the minutes."),
  TIMER_LEFT("How much time is left; may carry the timer's name or step."),
  TIMER_CANCEL("Stop the timer and forget it; may carry the timer's name or step."),
  TIMER_ENDED("A timer ran out or soon will. Never spoken: the loop says it."),
  STEP_TIME("How long the step at hand took so far."),
  WORK_TIME("How long the work took so far."),
  NOTHING_HEARD("Nothing was heard for long. Never spoken: the loop says it."),
  CLOCK_JUMPED("The wall clock was set, or the machine slept. Never spoken: the loop says it."),
  SIDE_CHANGE("Go to the other side; carries the side."),
  END_OF_WORK("End the session, complete or not."),
  BE_QUIET(
      "Fall silent. Listened for only while the program speaks; no decision is made about it."),
  CANCEL_THAT("Take back what was recorded last, or drop what is being read back."),
  ATTENTION("The technician turns to the program. Only an ear that must be called listens for it."),
  DENIED("Something that could close or confirm was denied, doubted or asked: it is not so."),
  DANGER("Something slips, moves or falls, or a stop is called for."),
  LOOSENED("The fastener at hand is loose again; its tightening starts anew."),
  TURNED_SO_FAR("How far an angle that was broken off is turned in all; read back."),
  OUT_OF_ORDER("Why the step is closed before those that should come first; read back."),
  TROUBLE("Something went wrong at the step at hand; read back."),
  SETTLED("What went wrong, or a check that failed, was repaired or replaced."),
  NO("A no without more: drops what was read back, or is asked what it means; closes nothing."),
  SHORT_ANSWER("A short answer, such as \"done\"; it closes nothing."),
  UNCLEAR("Something was heard that is no phrase of this phase.");

  private final String meaning;

  IntentKind(String meaning) {
    this.meaning = meaning;
  }

  /** What it means, in a sentence or two. */
  public String meaning() {
    return meaning;
  }

  /** Whether it comes from a phrase: not what the loop says itself, and not what is no phrase. */
  public boolean isHeard() {
    return switch (this) {
      case TIMER_ENDED, NOTHING_HEARD, CLOCK_JUMPED, UNCLEAR -> false;
      default -> true;
    };
  }

  /**
   * Whether it can close a stage or a step, confirm a read-back or a load condition, release a
   * specification, or end the work.
   */
  public boolean closes() {
    return switch (this) {
      case CAUTIONS_UNDERSTOOD,
          STEP_COMPLETED,
          CHECK_PASSED,
          TORQUE_COMPLETED,
          ANGLE_COMPLETED,
          READ_BACK_RIGHT,
          WHEELS_CARRY,
          KNUCKLE_JACKED,
          ARCH_HEIGHT,
          HANGS_FREE,
          RIDE_HEIGHT_READ_BACK,
          FULL_DROOP_READ_BACK,
          HEAD_MARKING,
          NEW_HARDWARE,
          HARDWARE_LENGTH,
          HARDWARE_USES,
          SEVERAL,
          FITTED_SNUG,
          LOOSENED,
          TURNED_SO_FAR,
          OUT_OF_ORDER,
          OVERDUE,
          SETTLED,
          WITNESSED,
          END_OF_WORK ->
          true;
      default -> false;
    };
  }

  /**
   * Whether it can only cancel a load that was confirmed, and hold the work: it may be believed
   * lightly, since a wrong one costs a read-back.
   */
  public boolean cancelsLoad() {
    return switch (this) {
      case CAR_RAISED, CAR_LOWERED, JACK_MOVED, DANGER -> true;
      default -> false;
    };
  }

  /**
   * Whether it can change what stands recorded about a step, a side or the load. Questions, notes,
   * timers, pauses and a number called on its own do not.
   */
  public boolean changesState() {
    return switch (this) {
      case CHECK_FAILED,
          GO_TO_STEP,
          STEP_BACK,
          PUT_OFF,
          REOPEN,
          CAR_RAISED,
          CAR_LOWERED,
          JACK_MOVED,
          SIDE_CHANGE,
          READ_BACK_WRONG,
          CANCEL_THAT ->
          true;
      default -> closes();
    };
  }

  /**
   * Whether it is an answer so short that chatter is full of it: it is on no word list and is only
   * heard freely.
   */
  public boolean isShort() {
    return this == SHORT_ANSWER || this == NO;
  }
}
