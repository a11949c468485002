package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Claim;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.HearingTrouble;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.LogTrouble;
import org.undercall.core.term.Measure;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Remedy;
import org.undercall.core.term.Side;
import org.undercall.core.term.Trouble;

/** What the program says about something that was done or asked. */
public final class Say {
  private Say() {}

  /** A step was closed. */
  public static Reply stepClosed() {
    return Reply.once(Lesson.CLOSED, "Step closed.", "");
  }

  /** A check failed and the step stays open. */
  public static Reply checkFailed() {
    return Reply.of("Check failed. The step stays open.");
  }

  /** A reading within the tolerance was kept. */
  public static Reply readingKept(Stage stage) {
    return Reply.of("Noted. Say: " + closing(stage) + ".");
  }

  /** Something was kept as it was read back. */
  public static Reply kept() {
    return Reply.once(Lesson.NOTED, "Noted.", "");
  }

  private static String closing(Stage stage) {
    return stage instanceof Stage.TorqueStage ? "torque reached" : "angle turned";
  }

  /** A wrench was named. */
  public static Reply wrench(int number) {
    return Reply.of("Wrench " + Words.count(number) + ".");
  }

  /** What was said of the wrench was taken back. */
  public static Reply wrenchTakenBack() {
    return Reply.of("Taken back. No wrench named now.");
  }

  /** It was noted why a wrench out of calibration is used. */
  public static Reply overdueNoted() {
    return Reply.of("Noted. Carry on.");
  }

  /** A called value matches the stage. */
  public static Reply valueMatches(Stage stage) {
    String value = Words.sentence(Words.value(stage));
    return Reply.of(value + ", matches. Say: " + closing(stage) + ".");
  }

  /**
   * A stage was closed with the value that was called for it.
   *
   * @param last whether it was the last of its fastener
   */
  public static Reply stageClosed(int number, Stage stage, BigDecimal called, boolean last) {
    String value = Words.digits(called) + " " + Words.unit(stage) + ".";
    return Reply.once(
        Lesson.STAGE_CLOSED,
        "Stage " + Words.count(number) + " closed at " + value,
        last ? "Closed." : "");
  }

  /** One of a set was called at its stage, and others are left. */
  public static Reply positionClosed(int position, List<Integer> left) {
    String next = Words.count(left.get(0)) + ".";
    String done = Words.sentence(Words.count(position)) + " done. ";
    String open = Words.sentence(Words.count(left.size())) + " left. ";
    return Reply.once(Lesson.POSITION, done + open + "Next: number " + next, Words.sentence(next));
  }

  /** Positions of a set are open again. */
  public static Reply positionsOpen(List<Integer> positions) {
    return Reply.of("Number " + Words.numbers(positions) + " is open again.");
  }

  /** What went wrong was settled. */
  public static Reply settled(Remedy remedy) {
    return Reply.of(remedy == Remedy.NEW_HARDWARE ? "New hardware noted." : "Repair noted.");
  }

  /**
   * A called value does not match the stage.
   *
   * @param read whether it is a reading, so that it may be gone on from
   */
  public static Reply valueRefused(BigDecimal called, Stage stage, boolean read) {
    Reply refused =
        Reply.of("I heard " + Words.digits(called) + ".", "Spec is " + Words.value(stage) + ".");
    if (!read) {
      return refused;
    }
    if (!stage.isExceededBy(called)) {
      return refused.and(Reply.of("Carry on turning."));
    }
    return refused.and(Reply.of("If it is past that, say: turned too far."));
  }

  /** A measured value was kept. */
  public static Reply measured(boolean withinLimits) {
    return withinLimits ? kept() : Reply.of("Recorded. Out of limits.");
  }

  /** A measured value is outside limits that must hold. */
  public static Reply outsideLimits(Measure value) {
    return Reply.of(
        Words.sentence(Words.measure(value)) + " is out of limits. The step stays open.");
  }

  /** A head marking was kept. */
  public static Reply markingKept(HeadMarking marking) {
    return Reply.once(Lesson.NOTED, "Head marking " + Words.marking(marking) + " noted.", "");
  }

  /** A head marking that the procedure does not know. */
  public static Reply markingRefused(HeadMarking marking) {
    return Reply.of(
        "This procedure has no torque for " + Words.marking(marking) + ".", "Check the bolt.");
  }

  /** A fastener, or all of a set, was run in by hand. */
  public static Reply byHand() {
    return Reply.once(Lesson.NOTED, "Run in by hand, noted.", "");
  }

  /** New hardware was fitted. */
  public static Reply newHardware() {
    return Reply.once(Lesson.NOTED, "New hardware noted.", "");
  }

  /** A load condition was said and is repeated. */
  public static Reply loadHeard(LoadProof proof, Side side) {
    String proved = Words.sentence(Words.of(side)) + ", " + Words.proof(proof) + ".";
    return Reply.once(Lesson.LOAD_READ_BACK, proved, "");
  }

  /** How far a height is from the one noted before the work, in millimetres, above or below. */
  public static Reply heightDifference(Measure height, BigDecimal difference) {
    String called = Words.sentence(Words.digits(height.amount()));
    return difference.signum() == 0
        ? Reply.of(called + ", as noted before.")
        : Reply.of(called + " is " + off(difference) + ".");
  }

  /** A height is outside the tolerance of the one noted before, or twists the bush too far. */
  public static Reply heightOutside(Measure height, BigDecimal difference) {
    String called = "You called " + Words.digits(height.amount()) + ".";
    return difference.signum() == 0
        ? Reply.of("Not ride height.", called)
        : Reply.of("Not ride height.", called, "That is " + off(difference) + ".");
  }

  private static String off(BigDecimal difference) {
    String way = difference.signum() > 0 ? " high" : " low";
    return Words.digits(difference.abs()) + " millimetres" + way;
  }

  /** A load condition was confirmed. */
  public static Reply loadConfirmed(Side side, LoadCondition condition) {
    String where = ", " + Words.of(side) + ".";
    String what = Words.sentence(Words.condition(condition));
    return Reply.once(Lesson.LOAD_CONFIRMED, what + " confirmed" + where, what + where);
  }

  /** The fasteners that waited for the condition that was confirmed. */
  public static Reply waiting(List<Walk.Place> places) {
    String names =
        places.stream().map(p -> p.step().head().title()).collect(Collectors.joining("; "));
    return Reply.of(
        Words.sentence(Words.count(places.size(), "fastener")) + " waiting: " + names + ".");
  }

  /** The load may have changed. */
  public static Reply loadChanged(LoadChange change, boolean cancelled) {
    String what =
        switch (change) {
          case CAR_RAISED -> "Car raised";
          case CAR_LOWERED -> "Car lowered";
          case JACK_MOVED -> "Jack moved";
          case DANGER_CALLED -> "Stop";
          case DENIED -> "Not so";
          case CONTRADICTED -> "That is a different height";
          case HEIGHT_OUTSIDE -> "Height out of tolerance";
          case REFERENCE_CHANGED -> "The reference height changes";
          case WHEEL_OFF -> "Wheel off";
          case TOO_OLD -> "That was confirmed long ago";
          case TAKEN_BACK -> "Taken back";
          case WORK_HELD -> "After the break";
          case OTHER_SIDE_STARTED -> "Changing sides";
          case STEP_CHANGES_LOAD -> "The load changes";
          case PROGRAM_RESTARTED -> "The program was stopped";
          case PROGRAM_ASLEEP -> "The machine slept";
        };
    return Reply.of(cancelled ? what + ". Confirm the load again." : what + ".");
  }

  /** The work goes to another side, on which a condition is not confirmed. */
  public static Reply otherSide(LoadCondition condition, Side side) {
    return Reply.of(
        "Changing sides. Confirm "
            + Words.condition(condition)
            + " again on the "
            + Words.of(side)
            + ".");
  }

  /** A call for a stop was heard: one short sentence, and how to go on. */
  public static Reply danger(boolean held) {
    return Reply.of(
        "Stopped. Load not confirmed. When it is safe, say: "
            + (held ? "resume the work." : "cautions understood."));
  }

  /**
   * What was denied, doubted or asked closes nothing.
   *
   * @param open whether that is waited for; else it may have been closed before
   */
  public static Reply denied(Claim claim, boolean open) {
    String what =
        switch (claim) {
          case CAUTIONS_UNDERSTOOD -> "Cautions not understood";
          case STEP_COMPLETED -> "Step not completed";
          case CHECK_PASSED -> "Check not passed";
          case TORQUE_REACHED -> "Torque not reached";
          case ANGLE_TURNED -> "Angle not turned";
          case READ_BACK_RIGHT -> "Not right";
          case HEAD_MARKING_READ -> "Head marking not noted";
          case NEW_HARDWARE_FITTED -> "No new hardware";
          case RUN_IN_BY_HAND -> "Not run in by hand";
          case WITNESSED -> "Not witnessed";
          case LOAD -> "Load not confirmed";
          case END_OF_WORK -> "Not the end";
        };
    return Reply.of(what + (open ? ". It stays open." : ". If it was closed, say: cancel that."));
  }

  /** A step was put off. */
  public static Reply putOff(PutOffReason reason) {
    return Reply.of("Put off " + Words.reason(reason) + ". It stays open.");
  }

  /** A fastener is started, not tightened. */
  public static Reply snug() {
    return Reply.of("Started, not tightened. It stays open.");
  }

  /**
   * A step was opened again.
   *
   * @param tight whether its fastener may still be tight
   */
  public static Reply reopened(Step step, boolean tight) {
    if (tight) {
      return Reply.of("Reopened. It may still be tight.");
    }
    if (step instanceof Step.Fasten) {
      return Reply.of("Reopened. Loosen it and start again.");
    }
    return Reply.of(step instanceof Step.Measure ? "Reopened. Measure again." : "Reopened.");
  }

  /** Closings that no longer hold. */
  public static Reply lapsed(List<Walk.Place> places) {
    return Reply.of("Reopened with it: " + Words.steps(places) + ".");
  }

  /** Closings that were doubted hold. */
  public static Reply closingsHold() {
    return Reply.of("They stay closed.");
  }

  /** A step may be closed out of order. */
  public static Reply outOfOrder() {
    return Reply.of("Noted, out of order.");
  }

  /**
   * A fastener was loosened fully.
   *
   * @param used whether it must be replaced
   * @param count how many there are of it
   */
  public static Reply loosened(boolean used, int count) {
    if (count > 1) {
      String all = "All " + Words.count(count) + " count as loose";
      return Reply.of(used ? all + ". They were turned: fit new ones." : all + ".");
    }
    return Reply.of(used ? "Loose. It was turned: fit a new one." : "Loose.");
  }

  /** What was said to be loose stays so: from the first stage on it must be. */
  public static Reply staysLoose() {
    return Reply.of("It counts as loose. If it is still tight, loosen it now.");
  }

  /** How far an angle was turned is kept. */
  public static Reply turnKept(BigDecimal degrees) {
    return Reply.of("Noted: " + Words.digits(degrees) + " degrees.");
  }

  /** A height that is no reference, since the car was lifted before. */
  public static Reply noReference() {
    return Reply.of("That is no reference: the car was lifted.");
  }

  /** Left and right lie too far apart. */
  public static Reply heightsApart(Measure difference, BigDecimal limit) {
    return Reply.of(
        "Left and right differ by "
            + Words.measure(difference)
            + ", more than "
            + Words.digits(limit)
            + ". Find the cause.");
  }

  /** A jack under a knuckle. */
  public static Reply jackedCaution() {
    return Reply.of("Caution. A jack under one side can lift the car off its stand.");
  }

  /** A note was taken back. */
  public static Reply noteTakenBack() {
    return Reply.of("Note taken back.");
  }

  /** The last closing was taken back. */
  public static Reply takenBack() {
    return Reply.of("Taken back. This step is open.");
  }

  /** Something said was dropped. */
  public static Reply dropped() {
    return Reply.of("Forget that, then.");
  }

  /** There is nothing to take back. */
  public static Reply nothingToTakeBack() {
    return Reply.of("Nothing to take back.");
  }

  /** A tightening was broken off. */
  public static Reply interrupted() {
    return Reply.of("Tightening stopped part way.");
  }

  /** The twist a bush keeps at ride height if it is tightened now, in degrees with its sign. */
  public static Reply preset(BigDecimal degrees) {
    return degrees.signum() == 0
        ? Reply.SILENCE
        : Reply.of("The bush would stay twisted " + Words.digits(degrees.abs()) + " degrees.");
  }

  /**
   * The session has ended.
   *
   * @param wrong what went wrong and was not settled, each in words
   */
  public static Reply ended(boolean complete, int open, List<String> wrong) {
    if (complete) {
      return Reply.of("Work complete. Log closed.");
    }
    String first = wrong.isEmpty() ? "" : "Still wrong: " + String.join("; ", wrong) + ". ";
    return Reply.of(
        "Work ended, not complete. "
            + first
            + Words.sentence(Words.count(open, "step"))
            + " open.");
  }

  /**
   * The session has ended with every step closed, and the car must not be driven yet.
   *
   * @param first what was handed over to be done before that, each in words
   */
  public static Reply endedNotToBeDriven(List<String> first) {
    return Reply.of(
        "Every step closed, not yet to be driven. Before driving: "
            + String.join("; ", first)
            + ". Log closed.");
  }

  /** What was found and is still to be done, in numbers; nothing is said if there is none. */
  public static Reply found(int faults, int works, int parts) {
    List<String> all = new ArrayList<>();
    if (faults > 0) {
      all.add(Words.count(faults, "found fault"));
    }
    if (works > 0) {
      all.add("extra work, " + Words.count(works, "item"));
    }
    if (parts > 0) {
      all.add(Words.count(parts, "part") + " to order");
    }
    return all.isEmpty() ? Reply.SILENCE : Reply.of("Listed: " + String.join("; ", all) + ".");
  }

  /** What went wrong at a step, in words. */
  public static String trouble(Walk.Place place, Trouble trouble) {
    return Words.step(place.ref(), place.step().head().title()) + ", " + Words.trouble(trouble);
  }

  /** The session was taken up again. */
  public static Reply takenUp() {
    return Reply.of("Back to work.");
  }

  /** The log was not whole when it was opened again; how many lines are gone, if known. */
  public static Reply logDoubted(LogTrouble trouble, Optional<Integer> lines) {
    String gone = lines.map(n -> Words.count(n, "line")).orElse("lines");
    return Reply.of(
        switch (trouble) {
          case LINES_GONE -> "Careful. The log lost " + gone + ". Check what was done last.";
          case SUM_DIFFERS -> "Careful. The log was changed. Check what was done.";
          case SUM_MISSING -> "Careful. The log may not be whole. Check what was done last.";
        });
  }

  /** Why it is hard to understand. */
  public static Reply hearing(HearingTrouble trouble) {
    return Reply.of(
        switch (trouble) {
          case OVERDRIVEN -> "The microphone is too loud. Move back a little.";
          case TOO_QUIET -> "Too quiet. Come closer.";
          case TOO_LOUD -> "It is too loud here.";
        });
  }

  /** The ear was called and is open. */
  public static Reply listening() {
    return Reply.of("Listening.");
  }

  /** Less is said from now on. */
  public static Reply lessIsSaid() {
    return Reply.of("Short from now on.");
  }

  /** Something heard was not taken. */
  public static Reply again() {
    return Reply.of("Say again.");
  }

  /** How to open a step that was not closed last. */
  public static Reply olderStep() {
    return Reply.of("For an older step say: open step, its number, again.");
  }
}
