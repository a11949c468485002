package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.List;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;
import org.undercall.core.term.Trouble;

/** What the program says to refuse: what is missing, in one short sentence. */
public final class Refuse {
  private Refuse() {}

  /** The cautions come first. */
  public static Reply cautions() {
    return Reply.of("Cautions first. Say: cautions understood.");
  }

  /** A load condition is not confirmed on a side. */
  public static Reply load(LoadCondition needed, Side side) {
    return Reply.of("No. First confirm " + Words.condition(needed) + ", " + Words.of(side) + ".");
  }

  /** So many are not run in by hand yet, or were not counted. */
  public static Reply byHand(int count) {
    return count > 1
        ? Reply.of("No. First say: " + Words.count(count) + " run in by hand.")
        : Reply.of("No. First say: run in by hand.");
  }

  /** New hardware is not confirmed. */
  public static Reply hardware() {
    return Reply.of("No. First fit the new part, and say so.");
  }

  /** Something went wrong that is not settled. */
  public static Reply trouble(Trouble trouble) {
    return Reply.of("No. " + Words.sentence(Words.trouble(trouble)) + ", still open.");
  }

  /** So many new fasteners are to be counted. */
  public static Reply countHardware(Fastener fastener, int count) {
    String part = fastener.part().hardware() == Hardware.BOLT ? "bolt" : "nut";
    return count > 1
        ? Reply.of("No. Count them. Say: " + Words.count(count) + " new " + part + "s fitted.")
        : Reply.of("No. It is one. Say: new " + part + " fitted.");
  }

  /** The number said of a set is not that of all. */
  public static Reply count(int said, int count) {
    return Reply.of(
        "No. "
            + Words.sentence(Words.count(said))
            + " is not all. There are "
            + Words.count(count)
            + ".");
  }

  /** The fasteners of a set are called one by one. */
  public static Reply oneByOne(int next) {
    return Reply.of("No. One by one. Next: number " + Words.count(next) + ".");
  }

  /** There is no such position in a set. */
  public static Reply noSuchPosition(int count) {
    return Reply.of(
        count > 1 ? "No. There are only " + Words.count(count) + "." : "No. There is only one.");
  }

  /** A position of a set was called before. */
  public static Reply positionClosed(int position, int next) {
    return Reply.of(
        "No. Number "
            + Words.count(position)
            + " is done. Next: number "
            + Words.count(next)
            + ".");
  }

  /** No wrench is listed by a number. */
  public static Reply noSuchWrench(int number, List<Integer> numbers) {
    String listed = numbers.isEmpty() ? "None is listed." : "Listed: " + Words.numbers(numbers);
    return Reply.of(
        "No. There is no wrench " + Words.count(number) + ".",
        numbers.isEmpty() ? listed : listed + ".");
  }

  /** A wrench has another unit, or its range does not hold the torque. */
  public static Reply wrenchDoesNotFit(int number, Tool tool, Torque torque) {
    String why =
        tool.most().unit() != torque.unit()
            ? " is in " + Words.unit(tool.most().unit())
            : torque.amount().compareTo(tool.most().amount()) > 0
                ? " ends at " + Words.torque(tool.most())
                : " begins at " + Words.torque(tool.least());
    return Reply.of("No. Wrench " + Words.count(number) + why + ".");
  }

  /** The calibration of the wrench in use is over. */
  public static Reply calibrationOver(int number) {
    return Reply.of("No.").and(Ask.overdue(number));
  }

  /** One of the wrenches that could be in use is out of calibration. */
  public static Reply nameTheWrench(int overdue) {
    return Reply.of(
        "No. Wrench " + Words.count(overdue) + " is out of calibration.",
        "Say which wrench you use.");
  }

  /** No fastener that ends with an angle was closed last. */
  public static Reply noAngleClosed() {
    return Reply.of("No. The last thing closed was no angle.");
  }

  /** A torque needs this unit. */
  public static Reply unit(TorqueUnit unit) {
    return Reply.of("No. Say it in " + Words.unit(unit) + ".");
  }

  /** The torque that a nut needs to run down is missing, or cannot be one. */
  public static Reply runDown(Stage.TorqueStage stage) {
    return Reply.of(
        "No. Call the run-down torque first, below " + Words.torque(stage.target()) + ".");
  }

  /** A value needs its unit, since the procedure has torques in more than one. */
  public static Reply unit(Stage stage) {
    return Reply.of("No. Say the unit too: " + Words.unit(stage) + ".");
  }

  /** The head marking was not read out. */
  public static Reply marking() {
    return Reply.of("No. Read out the head marking first.");
  }

  /** The value of the stage was not called. */
  public static Reply valueNotCalled(Stage stage) {
    return Reply.of("No. Call the value first: " + Words.value(stage) + ".");
  }

  /** The torque stage is at hand, not the angle stage. */
  public static Reply torqueFirst() {
    return Reply.of("No. The torque stage comes first.");
  }

  /** The angle stage is at hand, not the torque stage. */
  public static Reply angleNext() {
    return Reply.of("No. The angle stage is next.");
  }

  /** A value easily confused must be called digit by digit. */
  public static Reply digitByDigit(BigDecimal heard) {
    return Reply.of("I heard " + Words.digits(heard) + ". Call it digit by digit.");
  }

  /** A value was called in another unit than the specification's. */
  public static Reply otherUnit(Stage stage) {
    return Reply.of("No. The spec is " + Words.value(stage) + ". Call it in that unit.");
  }

  /** A value was called in another unit than the one measured in. */
  public static Reply otherUnit(org.undercall.core.procedure.Step.Measure step) {
    return Reply.of("No. Call it in " + Words.unit(step.unit()) + ".");
  }

  /** A value that may be below zero was called without its sign. */
  public static Reply withoutSign() {
    return Reply.of("No. Call it with plus or minus.");
  }

  /** A value below zero was called where there can be none. */
  public static Reply belowZero() {
    return Reply.of("No. It cannot be below zero here.");
  }

  /** The check question was not answered. */
  public static Reply checkNotAnswered() {
    return Reply.of("No. Say: check passed, or: check has failed.");
  }

  /** The measured value was not called. */
  public static Reply notMeasured() {
    return Reply.of("No. Call the value first.");
  }

  /** What was said waits to be read back. */
  public static Reply notReadBack() {
    return Reply.of("Not yet.");
  }

  /** How far an angle was turned before a break is not known. */
  public static Reply turnedSoFar() {
    return Reply.of("No. Say: turned so far, and the degrees in all, or: fully loosened.");
  }

  /** An angle was turned further than it may be. */
  public static Reply turnedTooFar() {
    return Reply.of("No. It was turned too far. Loosen it, then say: fully loosened.");
  }

  /** A fastener that is tight in part is to be loosened first. */
  public static Reply loosenFirst() {
    return Reply.of("No. It is part tightened. Loosen it, then say: fully loosened.");
  }

  /** A wheel is recorded as off. */
  public static Reply wheelOff() {
    return Reply.of("No. The wheel is off.");
  }

  /** The car is raised, and what is asked for needs it on its wheels. */
  public static Reply carRaised() {
    return Reply.of("No. The car is raised. Lower it, and say: car is coming down.");
  }

  /** Steps that come first are open. */
  public static Reply stepsBefore(List<Walk.Place> open) {
    return Reply.of("No. First: " + Words.steps(open) + ".", "Or say: out of order, and why.");
  }

  /** A part that was said to be missing is no new hardware yet. */
  public static Reply partMissing(List<Walk.Place> missing) {
    return Reply.of(
        "No. It was said to be missing: " + Words.steps(missing) + ".",
        "When it is there, go to that step, and say: step completed.");
  }

  /** The time is not over. */
  public static Reply timeNotOver() {
    return Reply.of("No. The time is not up yet.");
  }

  /** No height was noted before the work, so none can prove ride height. */
  public static Reply noHeightNoted(Side side) {
    return Reply.of("No. No ride height was noted before the work, " + Words.of(side) + ".");
  }

  /** A height was called in another unit. */
  public static Reply heightInMillimetres() {
    return Reply.of("No. Call the height in millimetres.");
  }

  /** A statement about one side does not fit a step for the whole car. */
  public static Reply oneSide() {
    return Reply.of("No. That is one side only.");
  }

  /** There is no step with that number. */
  public static Reply noSuchStep() {
    return Reply.of("No. There is no such step.");
  }

  /** A step that is open cannot be opened again. */
  public static Reply notClosed() {
    return Reply.of("No. That step is not closed.");
  }

  /** No step is open on a side. */
  public static Reply nothingOpen(Side side) {
    return Reply.of("Nothing is open on the " + Words.of(side) + ".");
  }

  /** The log cannot be written: nothing counts until it can. */
  public static Reply cannotRecord() {
    return Reply.of("I cannot write the log. Nothing was closed.");
  }

  /** The intent has no place now. */
  public static Reply notNow() {
    return Reply.of("Not now. Say: say again, to hear what is next.");
  }

  /** A side was said that is not the one at hand. */
  public static Reply otherSide(Side said, Side wanted) {
    return Reply.of(
        "That was the " + Words.side(said) + ". " + Words.sentence(Words.of(wanted)) + ", please.");
  }

  /** Another load condition was read back than the one that was said. */
  public static Reply otherCondition(LoadCondition said, LoadCondition wanted) {
    return Reply.of(
        "That was "
            + Words.condition(said)
            + ". "
            + Words.sentence(Words.condition(wanted))
            + ", please.");
  }

  /** What comes first is tight and still cures. */
  public static Reply stillCures(List<Walk.Place> places) {
    return Reply.of(
        "No. It still cures: " + Words.steps(places) + ".", "Wait, or say: out of order, and why.");
  }
}
