package org.undercall.core.intent;

/** What a phrase can mean. The phrases for each are in {@link Phrasebook}. */
public enum IntentKind {
  /** The cautions were read out and understood. */
  CAUTIONS_UNDERSTOOD,
  /** The step at hand is done (a do, wait, load or hand-over step). */
  STEP_COMPLETED,
  /** The answer to a check question: all is well. */
  CHECK_PASSED,
  /** The answer to a check question: it is not. */
  CHECK_FAILED,
  /** A number was called: a torque, an angle or a measured value. */
  VALUE_CALLED,
  /** The torque stage at hand is done; may carry the value. */
  TORQUE_COMPLETED,
  /** The angle stage at hand is done; may carry the value. */
  ANGLE_COMPLETED,
  /** What the program read back is what was said. */
  READ_BACK_RIGHT,
  /** What the program read back is not what was said. */
  READ_BACK_WRONG,
  /** Say the last reply again. */
  REPEAT,
  /** Say which steps are still open. */
  WHAT_IS_LEFT,
  /** Say the step, side and stage at hand. */
  WHERE_AM_I,
  /** What is set on the wrench for the stage at hand. */
  WRENCH_SETTING,
  /** The torque of the stage at hand in another unit. */
  OTHER_UNIT,
  /** What the value of the stage at hand is for. */
  WHY_THIS_VALUE,
  /** Go to the step with a number. */
  GO_TO_STEP,
  /** Go back to the step before this one. */
  STEP_BACK,
  /** Leave the step open and go on; carries the reason. */
  PUT_OFF,
  /** The fastener is run in by hand or snug, not tightened. */
  FITTED_SNUG,
  /** Open a closed step again; a fastener counts as loosened. */
  REOPEN,
  /** The next words are a note. */
  NOTE,
  /** The words of a note. */
  NOTE_TEXT,
  /** Pause the work. */
  HOLD,
  /** Go on after a pause. */
  RESUME,
  /** The wheels stand on the ground or on ramps and carry the car. */
  WHEELS_CARRY,
  /** The knuckle is jacked until the body just lifts off its stand. */
  KNUCKLE_JACKED,
  /** The wheel-centre-to-arch height was measured; carries the number. */
  ARCH_HEIGHT,
  /** The suspension hangs free. */
  HANGS_FREE,
  /** Read-back of the ride-height condition, with the side. */
  RIDE_HEIGHT_READ_BACK,
  /** Read-back of the full-droop condition, with the side. */
  FULL_DROOP_READ_BACK,
  /** The car is raised. */
  CAR_RAISED,
  /** The car is lowered. */
  CAR_LOWERED,
  /** The jack or a stand was moved. */
  JACK_MOVED,
  /** The head marking was read out; carries the property class. */
  HEAD_MARKING,
  /** New hardware was fitted. */
  NEW_HARDWARE,
  /** Start the step's timer. */
  TIMER_START,
  /** Start a timer with a name; carries the name and the minutes. */
  TIMER_SET,
  /** How much time is left; may carry the timer's name or step. */
  TIMER_LEFT,
  /** Stop the timer and forget it; may carry the timer's name or step. */
  TIMER_CANCEL,
  /** A timer ran out or soon will. Never spoken: the loop says it. */
  TIMER_ENDED,
  /** How long the step at hand took so far. */
  STEP_TIME,
  /** How long the work took so far. */
  WORK_TIME,
  /** Nothing was heard for long. Never spoken: the loop says it. */
  NOTHING_HEARD,
  /** The wall clock was set, or the machine slept. Never spoken: the loop says it. */
  CLOCK_JUMPED,
  /** Go to the other side; carries the side. */
  SIDE_CHANGE,
  /** End the session, complete or not. */
  END_OF_WORK,
  /** Fall silent. Listened for only while the program speaks; no decision is made about it. */
  BE_QUIET,
  /** Take back what was recorded last, or drop what is being read back. */
  CANCEL_THAT,
  /** The technician turns to the program. Only an ear that must be called listens for it. */
  ATTENTION,
  /** Something was heard that is no phrase of this phase. */
  UNCLEAR;

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
          END_OF_WORK ->
          true;
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
          FITTED_SNUG,
          REOPEN,
          CAR_RAISED,
          CAR_LOWERED,
          JACK_MOVED,
          SIDE_CHANGE,
          CANCEL_THAT ->
          true;
      default -> closes();
    };
  }
}
