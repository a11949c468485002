package org.undercall.core.board;

import java.util.Map;
import org.undercall.core.intent.IntentKind;

/** What a press does, in the few words that stand on its button. */
final class Actions {
  private static final Map<IntentKind, String> WORDS =
      Map.ofEntries(
          Map.entry(IntentKind.CAUTIONS_UNDERSTOOD, "I understand the cautions"),
          Map.entry(IntentKind.STEP_COMPLETED, "Close this step"),
          Map.entry(IntentKind.CHECK_PASSED, "The check is good"),
          Map.entry(IntentKind.CHECK_FAILED, "The check is not good"),
          Map.entry(IntentKind.TORQUE_COMPLETED, "Close this torque"),
          Map.entry(IntentKind.ANGLE_COMPLETED, "Close this angle"),
          Map.entry(IntentKind.READ_BACK_RIGHT, "Yes, that is right"),
          Map.entry(IntentKind.READ_BACK_WRONG, "No, that was wrong"),
          Map.entry(IntentKind.CANCEL_THAT, "Cancel what I said"),
          Map.entry(IntentKind.REPEAT, "Tell me again"),
          Map.entry(IntentKind.WHAT_IS_LEFT, "What is open?"),
          Map.entry(IntentKind.WHERE_AM_I, "Where am I?"),
          Map.entry(IntentKind.SAY_MORE, "Longer replies"),
          Map.entry(IntentKind.SAY_LESS, "Shorter replies"),
          Map.entry(IntentKind.WHICH_ONE, "Which one is next?"),
          Map.entry(IntentKind.WRENCH_SETTING, "What do I set?"),
          Map.entry(IntentKind.OTHER_UNIT, "In foot pounds?"),
          Map.entry(IntentKind.WHY_THIS_VALUE, "Why this value?"),
          Map.entry(IntentKind.STEP_BACK, "One step back"),
          Map.entry(IntentKind.FITTED_SNUG, "Fitted hand tight only"),
          Map.entry(IntentKind.REOPEN, "Open this step again"),
          Map.entry(IntentKind.NOTE, "Take down a note"),
          Map.entry(IntentKind.HOLD, "Pause the work"),
          Map.entry(IntentKind.RESUME, "Go on with the work"),
          Map.entry(IntentKind.SHIFT_CHANGE, "Hand over to the next"),
          Map.entry(IntentKind.CAR_RAISED, "The car goes up"),
          Map.entry(IntentKind.CAR_LOWERED, "The car comes down"),
          Map.entry(IntentKind.JACK_MOVED, "The jack was moved"),
          Map.entry(IntentKind.DANGER, "Danger, the jack slipped"),
          Map.entry(IntentKind.NEW_HARDWARE, "A new part is fitted"),
          Map.entry(IntentKind.TIMER_START, "Start the time"),
          Map.entry(IntentKind.TIMER_LEFT, "How long to wait?"),
          Map.entry(IntentKind.TIMER_CANCEL, "Stop the timer"),
          Map.entry(IntentKind.STEP_TIME, "Time for this step?"),
          Map.entry(IntentKind.WORK_TIME, "Time for the work?"),
          Map.entry(IntentKind.END_OF_WORK, "End the session"),
          Map.entry(IntentKind.LOOSENED, "It is fully loosened"),
          Map.entry(IntentKind.SETTLED, "It is repaired"));

  private Actions() {}

  /** The words for a kind; those of the phrase itself where it says what it does. */
  static String of(IntentKind kind, String phrase) {
    String own = WORDS.getOrDefault(kind, phrase);
    return Character.toUpperCase(own.charAt(0)) + own.substring(1);
  }
}
