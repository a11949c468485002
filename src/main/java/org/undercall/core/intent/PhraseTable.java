package org.undercall.core.intent;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The one table of everything that can be heard, apart from the words of the slots.
 *
 * <p>Rules, held by tests: a wording has at least two words, except a called number, a call for a
 * stop, a no and a short answer, which close nothing and are on no word list; no wording belongs to
 * two kinds; losing or changing one word never turns a phrase into another kind that changes the
 * state, but for the number of one of a set, which is read back unless just that one is waited for,
 * and for the number of a wrench, which is said before a torque is called. A name in angle brackets
 * is a {@link Slot}.
 */
final class PhraseTable {
  /** The wordings of each kind that is spoken. */
  static final Map<IntentKind, List<String>> WORDINGS = wordings();

  private PhraseTable() {}

  private static Map<IntentKind, List<String>> wordings() {
    Map<IntentKind, List<String>> table = new EnumMap<>(IntentKind.class);
    putWork(table);
    putTightening(table);
    putLoad(table);
    putDanger(table);
    putMoving(table);
    putAsking(table);
    putTimers(table);
    return Collections.unmodifiableMap(table);
  }

  private static void putWork(Map<IntentKind, List<String>> table) {
    table.put(
        IntentKind.CAUTIONS_UNDERSTOOD,
        List.of(
            "cautions understood", "i understand the cautions", "warnings read and understood"));
    table.put(
        IntentKind.JOB_TOLD,
        List.of(
            "registration <registration>",
            "vehicle number <vin>",
            "odometer <odometer>",
            "job number <job number>",
            "technician <technician>"));
    table.put(
        IntentKind.STEP_COMPLETED,
        List.of("step completed", "this step is finished", "finished with this step"));
    table.put(
        IntentKind.CHECK_PASSED,
        List.of(
            "check passed",
            "check passed step completed",
            "checked and in order",
            "looks good to me"));
    table.put(
        IntentKind.CHECK_FAILED,
        List.of("check has failed", "this is not in order", "found a fault here"));
    table.put(
        IntentKind.FITTED_SNUG,
        List.of(
            "fitted hand tight",
            "run in by hand",
            "only snug so far",
            "<count> run in by hand",
            "<all> run in by hand"));
    table.put(
        IntentKind.NEW_HARDWARE,
        List.of(
            "new bolt fitted",
            "new nut fitted",
            "new hardware fitted",
            "<count> new bolts fitted",
            "<count> new nuts fitted",
            "<count> new bolts",
            "<count> new nuts"));
    table.put(
        IntentKind.HARDWARE_LENGTH,
        List.of("length <length>", "length is <length>", "bolt length <length>"));
    table.put(IntentKind.HARDWARE_USES, List.of("used <times>"));
    table.put(IntentKind.SEVERAL, List.of("<hardware and more>"));
    table.put(
        IntentKind.HEAD_MARKING,
        List.of("head marking <marking>", "head is marked <marking>", "bolt is marked <marking>"));
    table.put(IntentKind.WITNESS_NAMED, List.of("witness <witness name>"));
    table.put(IntentKind.WITNESSED, List.of("witnessed by <witness name>"));
    table.put(IntentKind.CANCEL_THAT, List.of("cancel that", "take that back"));
  }

  private static void putTightening(Map<IntentKind, List<String>> table) {
    table.put(IntentKind.VALUE_CALLED, List.of("<value>", "it reads <value>"));
    table.put(
        IntentKind.READING_CALLED,
        List.of(
            "<signed>",
            "it reads <signed>",
            "<degrees and minutes>",
            "it reads <degrees and minutes>"));
    table.put(
        IntentKind.TORQUE_COMPLETED,
        List.of(
            "torque reached",
            "torque reached <torque>",
            "wrench clicked",
            "wrench clicked at <torque>",
            "tightened to torque",
            "tightened to <torque>",
            "<position> clicked",
            "number <position> clicked",
            "<all> clicked"));
    table.put(
        IntentKind.ANGLE_COMPLETED,
        List.of(
            "angle turned",
            "angle turned <angle>",
            "full angle turned",
            "turned through <angle>",
            "<position> turned",
            "number <position> turned"));
    table.put(
        IntentKind.FINAL_TORQUE,
        List.of("final torque <torque>", "it pulls <torque>", "it pulls at <torque>"));
    table.put(IntentKind.LOOSENED, List.of("fully loosened", "it is fully loosened"));
    table.put(IntentKind.TURNED_SO_FAR, List.of("turned so far <angle>", "angle in total <angle>"));
    table.put(IntentKind.TROUBLE, List.of("<trouble>"));
    table.put(
        IntentKind.SETTLED,
        List.of("it is repaired now", "part is replaced now", "fault is repaired now"));
    table.put(IntentKind.OUT_OF_ORDER, List.of("out of order <cause>"));
    table.put(IntentKind.WRENCH_NAMED, List.of("wrench <position>", "using wrench <position>"));
    table.put(IntentKind.OVERDUE, List.of("calibration over <excuse>"));
    table.put(
        IntentKind.READ_BACK_RIGHT,
        List.of("that is correct", "read back correct", "you heard me right"));
    table.put(
        IntentKind.READ_BACK_WRONG,
        List.of(
            "that was wrong",
            "no that is wrong",
            "no that's wrong",
            "no that was wrong",
            "you got that wrong",
            "that's not right",
            "that is not right"));
    table.put(
        IntentKind.CORRECTED, List.of("no <value>", "no <signed>", "no <degrees and minutes>"));
  }

  private static void putLoad(Map<IntentKind, List<String>> table) {
    table.put(
        IntentKind.WHEELS_CARRY,
        List.of(
            "wheels carry the car",
            "car is on its wheels",
            "car stands on its wheels",
            "<side said> wheels carry the car"));
    table.put(
        IntentKind.KNUCKLE_JACKED,
        List.of(
            "knuckle jacked body lifting",
            "body lifts off the stand",
            "<side said> knuckle jacked body lifting"));
    table.put(IntentKind.ARCH_HEIGHT, List.of("arch height <length>", "arch height is <length>"));
    table.put(
        IntentKind.HANGS_FREE,
        List.of(
            "suspension hangs free",
            "wheels are hanging free",
            "<side said> suspension hangs free"));
    table.put(IntentKind.RIDE_HEIGHT_READ_BACK, List.of("<side> at ride height"));
    table.put(IntentKind.FULL_DROOP_READ_BACK, List.of("<side> at full droop"));
    table.put(
        IntentKind.CAR_RAISED, List.of("car is going up", "raising the car", "car was raised"));
    table.put(
        IntentKind.CAR_LOWERED,
        List.of("car is coming down", "letting the car down", "lowering the car now"));
    table.put(IntentKind.JACK_MOVED, List.of("jack moved", "i moved the jack", "i moved a stand"));
  }

  private static void putDanger(Map<IntentKind, List<String>> table) {
    table.put(
        IntentKind.DANGER,
        List.of(
            "jack slipped",
            "jack is slipping",
            "stand slipped",
            "stand is slipping",
            "car slipped",
            "car is slipping",
            "car dropped",
            "car is dropping",
            "car fell",
            "car is falling",
            "car moved",
            "car is moving",
            "it is slipping",
            "it is falling",
            "stop stop",
            "help me",
            "help help",
            "wait wait",
            "stop",
            "help",
            "wait"));
    table.put(
        IntentKind.SHORT_ANSWER,
        List.of("done", "yes", "correct", "next", "okay", "ready", "finished"));
    table.put(
        IntentKind.NO,
        List.of(
            "no",
            "nope",
            "negative",
            "wrong",
            "no no",
            "no no no",
            "no wait",
            "no left",
            "no right",
            "no left side",
            "no right side"));
  }

  private static void putMoving(Map<IntentKind, List<String>> table) {
    table.put(
        IntentKind.GO_TO_STEP,
        List.of("go to step <step>", "go back to step <step>", "jump to step <step>"));
    table.put(IntentKind.STEP_BACK, List.of("go back one step", "back to the last step"));
    table.put(IntentKind.PUT_OFF, List.of("put off <reason>", "put this off <reason>"));
    table.put(
        IntentKind.REOPEN,
        List.of("open this step again", "open step <step> again", "reopen this step"));
    table.put(
        IntentKind.SIDE_CHANGE, List.of("change to the <wheel side>", "move to the <wheel side>"));
    table.put(IntentKind.HOLD, List.of("take a break now", "wait a moment please"));
    table.put(
        IntentKind.SHIFT_CHANGE,
        List.of(
            "hand over the work", "handing over the work", "end of my shift", "shift change now"));
    table.put(IntentKind.RESUME, List.of("resume the work", "carry on working"));
    table.put(IntentKind.END_OF_WORK, List.of("end of work", "that is the end of work"));
  }

  private static void putAsking(Map<IntentKind, List<String>> table) {
    table.put(IntentKind.REPEAT, List.of("say again", "say that again", "please repeat that"));
    table.put(
        IntentKind.WHAT_IS_LEFT,
        List.of("what is left", "what is still open", "what remains open"));
    table.put(
        IntentKind.WHERE_AM_I, List.of("where am i", "what step is this", "which step is this"));
    table.put(
        IntentKind.WRENCH_SETTING,
        List.of("what is the wrench setting", "tell me the wrench setting"));
    table.put(
        IntentKind.OTHER_UNIT,
        List.of("what is that in foot pounds", "what is that in newton meters"));
    table.put(
        IntentKind.WHY_THIS_VALUE,
        List.of(
            "why this value",
            "where does this value come from",
            "what is it for",
            "why a new one"));
    table.put(IntentKind.SAY_MORE, List.of("say more", "tell me more", "say it all"));
    table.put(IntentKind.SAY_LESS, List.of("say less", "keep it short", "fewer words please"));
    table.put(IntentKind.WHICH_ONE, List.of("which one is next", "which ones are left"));
    table.put(IntentKind.BE_QUIET, List.of("stop talking", "be quiet now", "quiet please"));
    table.put(IntentKind.NOTE, List.of("take a note", "make a note"));
    table.put(IntentKind.FINDING, List.of("<finding>"));
    table.put(IntentKind.ATTENTION, List.of("attention please listen"));
  }

  private static void putTimers(Map<IntentKind, List<String>> table) {
    table.put(IntentKind.TIMER_START, List.of("start the timer", "start timing now"));
    table.put(IntentKind.TIMER_SET, List.of("start <minutes and timer>"));
    table.put(
        IntentKind.TIMER_LEFT,
        List.of(
            "how much time is left",
            "how long does it still take",
            "how long is left",
            "how long is left for the <timer>",
            "how much time is left for the <timer>",
            "how long is left for step <step>"));
    table.put(
        IntentKind.TIMER_CANCEL,
        List.of(
            "stop the timer",
            "forget the timer",
            "stop the timer for the <timer>",
            "forget the timer for the <timer>",
            "stop the timer for step <step>"));
    table.put(
        IntentKind.STEP_TIME, List.of("how long so far", "how long did this step take so far"));
    table.put(
        IntentKind.WORK_TIME, List.of("how long have i worked", "how long did i work so far"));
  }
}
