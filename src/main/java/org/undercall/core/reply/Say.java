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
    return Reply.of("Step closed.");
  }

  /** A check failed and the step stays open. */
  public static Reply checkFailed() {
    return Reply.of("Check failed. The step stays open.");
  }

  /** A reading within the tolerance was kept. */
  public static Reply readingKept(Stage stage) {
    return Reply.of("Kept. Say: " + closing(stage) + ".");
  }

  private static String closing(Stage stage) {
    return stage instanceof Stage.TorqueStage ? "torque reached" : "angle turned";
  }

  /** A wrench was named. */
  public static Reply wrench(int number) {
    return Reply.of("Wrench " + Words.count(number) + ".");
  }

  /** The torque after the last angle was kept; outside its band that is said. */
  public static Reply finalTorque(Optional<Stage.AngleStage.Band> missed) {
    return missed
        .map(
            band ->
                Reply.of(
                    "Kept. Outside "
                        + Words.digits(band.least().amount())
                        + " to "
                        + Words.torque(band.most())
                        + ". Check the bolt."))
        .orElse(Reply.of("Kept."));
  }

  /** What was said of the wrench was taken back. */
  public static Reply wrenchTakenBack() {
    return Reply.of("Taken back. No wrench is named.");
  }

  /** It was noted why a wrench out of calibration is used. */
  public static Reply overdueNoted() {
    return Reply.of("Noted. Go on.");
  }

  /** A called value matches the stage. */
  public static Reply valueMatches(Stage stage) {
    String value = Words.sentence(Words.value(stage));
    return Reply.of(value + ", matches. Say: " + closing(stage) + ".");
  }

  /** A stage was closed with the value that was called for it. */
  public static Reply stageClosed(int number, Stage stage, BigDecimal called) {
    String value = Words.digits(called) + " " + Words.unit(stage);
    return Reply.of("Stage " + Words.count(number) + " closed at " + value + ".");
  }

  /** One of a set was called at its stage, and others are left. */
  public static Reply positionClosed(int position, List<Integer> left) {
    return Reply.of(
        Words.sentence(Words.count(position))
            + " done. "
            + Words.sentence(Words.count(left.size()))
            + " left. Next: number "
            + Words.count(left.get(0))
            + ".");
  }

  /** Positions of a set are open again. */
  public static Reply positionsOpen(List<Integer> positions) {
    return Reply.of("Number " + Words.numbers(positions) + " open again.");
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
        Reply.of("No. Heard " + Words.digits(called) + ".", "It is " + Words.stage(stage) + ".");
    if (!read) {
      return refused;
    }
    if (!stage.isExceededBy(called)) {
      return refused.and(Reply.of("Turn it on."));
    }
    return refused.and(Reply.of("If it is past that, say: turned too far."));
  }

  /** A measured value was kept. */
  public static Reply measured(boolean withinLimits) {
    return Reply.of(withinLimits ? "Kept." : "Kept. It is outside the limits.");
  }

  /** A measured value is outside limits that must hold. */
  public static Reply outsideLimits(Measure value) {
    return Reply.of(
        Words.sentence(Words.measure(value)) + " is outside the limits. The step stays open.");
  }

  /** A head marking was kept. */
  public static Reply markingKept(HeadMarking marking) {
    return Reply.of("Head marking " + Words.marking(marking) + " kept.");
  }

  /** A head marking that the procedure does not know. */
  public static Reply markingRefused(HeadMarking marking) {
    return Reply.of(
        "Head marking " + Words.marking(marking) + " is not in this procedure. No value.");
  }

  /** A fastener, or all of a set, was run in by hand. */
  public static Reply byHand() {
    return Reply.of("Run in by hand, noted.");
  }

  /** New hardware was fitted. */
  public static Reply newHardware() {
    return Reply.of("New hardware noted.");
  }

  /** A load condition was said and is repeated. */
  public static Reply loadHeard(LoadProof proof, Side side) {
    return Reply.of(Words.sentence(Words.side(side)) + ", " + Words.proof(proof) + ".");
  }

  /** How far a height is from the one noted before the work, in millimetres, above or below. */
  public static Reply heightDifference(Measure height, BigDecimal difference) {
    String where =
        difference.signum() == 0
            ? "as noted before"
            : Words.digits(difference.abs())
                + (difference.signum() > 0 ? " millimetres above" : " millimetres below");
    return Reply.of(Words.sentence(Words.measure(height)) + ", " + where + ".");
  }

  /** A load condition was confirmed. */
  public static Reply loadConfirmed(Side side, LoadCondition condition) {
    return Reply.of(
        Words.sentence(Words.condition(condition)) + " confirmed, " + Words.side(side) + ".");
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
          case CONTRADICTED -> "That is another height";
          case HEIGHT_OUTSIDE -> "Height outside";
          case REFERENCE_CHANGED -> "The reference height changes";
          case WHEEL_OFF -> "Wheel off";
          case TOO_OLD -> "Confirmed long ago";
          case TAKEN_BACK -> "Taken back";
          case WORK_HELD -> "After the break";
          case OTHER_SIDE_STARTED -> "Other side";
          case STEP_CHANGES_LOAD -> "This step changes the load";
          case PROGRAM_RESTARTED -> "I was off";
          case PROGRAM_ASLEEP -> "I heard nothing for a while";
        };
    return Reply.of(cancelled ? what + ". The load confirmation is cancelled." : what + ".");
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
          case LOAD -> "Load not confirmed";
          case END_OF_WORK -> "Not the end";
        };
    return Reply.of(
        what + (open ? ". It stays open." : ". If that was closed before, say: cancel that."));
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
      return Reply.of("Open again. It may still be tight.");
    }
    return Reply.of(
        step instanceof Step.Fasten ? "Open again. It counts as loosened." : "Open again.");
  }

  /** Closings that no longer hold. */
  public static Reply lapsed(List<Walk.Place> places) {
    return Reply.of("Open again with it: " + Words.steps(places) + ".");
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
      return Reply.of(used ? all + ". They were turned, so they need new ones." : all + ".");
    }
    return Reply.of(used ? "Loose. It was turned, so it needs a new one." : "Loose.");
  }

  /** What was said to be loose stays so: from the first stage on it must be. */
  public static Reply staysLoose() {
    return Reply.of("It counts as loose. If it is still tight, loosen it now.");
  }

  /** How far an angle was turned is kept. */
  public static Reply turnKept(BigDecimal degrees) {
    return Reply.of("Kept: " + Words.digits(degrees) + " degrees.");
  }

  /** A height that is no reference, since the car was lifted before. */
  public static Reply noReference() {
    return Reply.of("It is no reference, since the car was lifted.");
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
    return Reply.of("Dropped.");
  }

  /** There is nothing to take back. */
  public static Reply nothingToTakeBack() {
    return Reply.of("Nothing to take back.");
  }

  /** A tightening was broken off. */
  public static Reply interrupted() {
    return Reply.of("The tightening is broken off.");
  }

  /** The twist a bush keeps at ride height if it is tightened now, in degrees with its sign. */
  public static Reply preset(BigDecimal degrees) {
    return Reply.of("The bush would keep " + Words.digits(degrees.abs()) + " degrees of twist.");
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
    String first = wrong.isEmpty() ? "" : "Not settled: " + String.join("; ", wrong) + ". ";
    return Reply.of(
        "Work ended, not complete. "
            + first
            + Words.sentence(Words.count(open, "step"))
            + " open.");
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
    return Reply.of("Work taken up again.");
  }

  /** The log was not whole when it was opened again; how many lines are gone, if known. */
  public static Reply logDoubted(LogTrouble trouble, Optional<Integer> lines) {
    String gone = lines.map(n -> Words.count(n, "line")).orElse("lines");
    return Reply.of(
        switch (trouble) {
          case LINES_GONE -> "Careful. Lost from the log: " + gone + ". Check what was done last.";
          case SUM_DIFFERS -> "Careful. The log was changed. Check what was done.";
          case SUM_MISSING -> "Careful. The log cannot be proved whole. Check what was done last.";
        });
  }

  /** Why it is hard to understand. */
  public static Reply hearing(HearingTrouble trouble) {
    return Reply.of(
        switch (trouble) {
          case OVERDRIVEN -> "The microphone is overdriven.";
          case TOO_QUIET -> "Too quiet. Come closer.";
          case TOO_LOUD -> "It is too loud here.";
        });
  }

  /** The ear was called and is open. */
  public static Reply listening() {
    return Reply.of("Listening.");
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
