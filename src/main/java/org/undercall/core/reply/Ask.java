package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Side;
import org.undercall.core.term.TorqueUnit;
import org.undercall.core.term.Trouble;

/** What the program says to tell what is next or to ask for something. */
public final class Ask {
  private static final BigDecimal EXAMPLE = BigDecimal.valueOf(284);
  private static final BigDecimal OTHER_EXAMPLE = BigDecimal.valueOf(731);

  private Ask() {}

  /** The title, where the values come from, the cautions, and the question for them. */
  public static Reply briefing(Procedure procedure) {
    List<String> sentences = new ArrayList<>();
    sentences.add(procedure.about().title() + ".");
    sentences.add("Values: " + procedure.about().values() + ".");
    procedure.cautions().forEach(caution -> sentences.add("Caution. " + caution));
    sentences.add("Say: cautions understood.");
    return new Reply(sentences);
  }

  /** The number, side and title of a step, with its cautions. */
  public static Reply step(int number, Walk.Place place) {
    List<String> sentences = new ArrayList<>();
    String title = Words.step(place.ref(), place.step().head().title());
    sentences.add("Step " + Words.count(number) + ", " + title + ".");
    place.step().head().cautions().forEach(caution -> sentences.add("Caution. " + caution));
    return new Reply(sentences);
  }

  /** The check question of a do step. */
  public static Reply check(String question) {
    return Reply.of(question, "Say: check passed, or: check has failed.");
  }

  /** The value to be measured. */
  public static Reply measure(Step.Measure step) {
    return Reply.of("Call the value in " + Words.unit(step.unit()) + ".");
  }

  /** A value of a stage is to be called digit by digit. */
  public static Reply digitByDigit(Stage stage) {
    return digitByDigit(Words.unit(stage), stage.amount());
  }

  /** A measured value is to be called digit by digit. */
  public static Reply digitByDigit(Step.Measure step) {
    return digitByDigit(Words.unit(step.unit()), BigDecimal.ZERO);
  }

  /** The example is never the value that is waited for. */
  private static Reply digitByDigit(String unit, BigDecimal expected) {
    BigDecimal example = expected.compareTo(EXAMPLE) == 0 ? OTHER_EXAMPLE : EXAMPLE;
    return Reply.of(
        "Say the value digit by digit, for example " + Words.digits(example) + " " + unit + ".");
  }

  /** A short answer does not count: what to say instead. */
  public static Reply wholePhrase(String phrase) {
    return Reply.of("That is too short to count. Say: " + phrase + ".");
  }

  /** A number of one word counts only with more words. */
  public static Reply withUnit() {
    return Reply.of("Say it with the unit, or after: it reads.");
  }

  /** New hardware is to be fitted. */
  public static Reply hardware(Fastener fastener) {
    String part =
        switch (fastener.part().hardware()) {
          case BOLT -> "bolt";
          case NUT, SELF_LOCKING_NUT -> "nut";
        };
    if (fastener.set().several()) {
      String all = Words.count(fastener.set().count()) + " new " + part + "s";
      return Reply.of("Fit " + all + ". Then say: " + all + " fitted.");
    }
    return Reply.of("Fit a new " + part + ". Then say: new " + part + " fitted.");
  }

  /** So many are to be run in by hand. */
  public static Reply byHand(int count) {
    return count > 1
        ? Reply.of(
            "Run in all "
                + Words.count(count)
                + " by hand. Then say: "
                + Words.count(count)
                + " run in by hand.")
        : Reply.of("Run it in by hand. Then say: run in by hand.");
  }

  /** The head marking of so many fasteners is to be read out. */
  public static Reply marking(int count) {
    return count > 1
        ? Reply.of(
            "Read out the head marking. All " + Words.count(count) + " must have the same one.")
        : Reply.of("Read out the head marking.");
  }

  /** Which fastener of a set is next. */
  public static Reply nextOfSet(int position) {
    return Reply.of("Next: number " + Words.count(position) + ".");
  }

  /** A reading within the tolerance, with how far it lies from the nominal value, read back. */
  public static Reply readBackReading(BigDecimal value, Stage stage) {
    BigDecimal off = value.subtract(stage.amount());
    boolean range =
        stage instanceof Stage.TorqueStage torque && torque.form() == Stage.TorqueStage.Form.RANGE;
    String read = Words.sentence(Words.digits(value)) + " " + Words.unit(stage);
    if (range || off.signum() == 0) {
      return Reply.of(read + (range ? ", in the range" : "") + ". Say: that is correct.");
    }
    return Reply.of(
        Words.sentence(Words.digits(value))
            + " "
            + Words.unit(stage)
            + ", "
            + Words.digits(off.abs())
            + (off.signum() > 0 ? " above. " : " below. ")
            + "Say: that is correct.");
  }

  /** The torque after the last angle is to be read. */
  public static Reply finalTorque() {
    return Reply.of("Read the torque, and say: final torque, and the value.");
  }

  /** The torque after the last angle, read back. */
  public static Reply readBackFinalTorque(BigDecimal value, TorqueUnit unit) {
    return Reply.of(
        "Final torque " + Words.digits(value) + " " + Words.unit(unit) + ". Say: that is correct.");
  }

  /** The torque that a nut needs to run down. */
  public static Reply runDown(Stage stage) {
    return Reply.of(
        "Run it down to just before the seat, and call the torque it needs in "
            + Words.unit(stage)
            + ".");
  }

  /** The torque that a nut needs to run down, read back. */
  public static Reply readBackRunDown(BigDecimal value, Stage stage) {
    return Reply.of(
        "Run-down torque "
            + Words.digits(value)
            + " "
            + Words.unit(stage)
            + ". Say: that is correct.");
  }

  /** What the torques are raised by. */
  public static Reply runDownAdded(BigDecimal value) {
    return Reply.of("With the run-down of " + Words.digits(value) + " added:");
  }

  /** Which wrench is used. */
  public static Reply whichWrench() {
    return Reply.of("Which wrench? Say its number.");
  }

  /** The wrench that was named does not fit the torque at hand. */
  public static Reply otherWrench(int number) {
    return Reply.of("Wrench " + Words.count(number) + " does not fit. Which one?");
  }

  /** The calibration of the wrench in use is over: another one, or a reason. */
  public static Reply overdue(int number) {
    return Reply.of(
        "The calibration of wrench " + Words.count(number) + " is over.",
        "Take another, or say: calibration over, and why.");
  }

  /** Why a wrench is used although its calibration is over, read back. */
  public static Reply readBackOverdue(int number, OverdueReason reason) {
    return Reply.of(
        "Wrench "
            + Words.count(number)
            + ", calibration over, "
            + Words.reason(reason)
            + ". Say: that is correct.");
  }

  /** Something that went wrong, read back. */
  public static Reply readBackTrouble(Trouble trouble, Optional<Integer> position) {
    return Reply.of(
        Words.sentence(Words.trouble(trouble, position))
            + ". It stays open. Say: that is correct.");
  }

  /** What went wrong and is not settled, with the ways out of it. */
  public static Reply trouble(Trouble trouble, Optional<Integer> position, int count) {
    String renewed = count > 1 ? Words.count(count) + " new bolts fitted" : "new bolt fitted";
    return Reply.of(
        Words.sentence(Words.trouble(trouble, position)) + ", not settled.",
        "Say: " + renewed + ", or: it is repaired now. Or put it off.");
  }

  /** A position out of turn, or all of a set that are left, read back. */
  public static Reply readBackSet(Positions positions, int count) {
    String what =
        positions.numbers().size() == 1
            ? "Number " + Words.count(positions.numbers().get(0)) + ", out of turn."
            : "All " + Words.count(count) + ", none left out?";
    return Reply.of(what + " Say: that is correct.");
  }

  /** The load condition that a fastener waits for. */
  public static Reply gate(LoadCondition needed, Side side) {
    return Reply.of(
        "Needs " + Words.condition(needed) + ", " + Words.side(side) + ". Not confirmed.");
  }

  /**
   * The stage at hand, for example "Stage one of two: torque, one, one, zero newton metres."
   *
   * @param begun whether some of a set were called at it
   */
  public static Reply stage(Fastener fastener, List<Stage> stages, int index, boolean begun) {
    List<String> sentences = new ArrayList<>();
    if (index == 0 && !begun) {
      sentences.addAll(manner(fastener));
    }
    sentences.add(
        "Stage "
            + Words.count(index + 1)
            + " of "
            + Words.count(stages.size())
            + ": "
            + Words.stage(stages.get(index))
            + ".");
    return new Reply(sentences);
  }

  /** What is to be minded before the first stage. */
  private static List<String> manner(Fastener fastener) {
    List<String> sentences = new ArrayList<>();
    if (fastener.set().several()) {
      sentences.add(set(fastener));
    }
    if (fastener.manner().leftHand()) {
      sentences.add("Left-hand thread.");
    }
    fastener.manner().counterHold().ifPresent(with -> sentences.add("Hold against: " + with + "."));
    return sentences;
  }

  private static String set(Fastener fastener) {
    String all = Words.sentence(Words.count(fastener.set().count())) + " fasteners";
    if (fastener.mayBeCounted()) {
      return all + ".";
    }
    if (fastener.set().order().isEmpty()) {
      return all + ", one by one.";
    }
    return all + ", in the order " + Words.numbers(fastener.set().order()) + ".";
  }

  /** How far a tightening that was broken off is turned, or that it is loosened. */
  public static Reply turnedSoFar(Stage specified, Optional<BigDecimal> tooFar) {
    if (tooFar.isPresent()) {
      return Reply.of("Turned too far. Loosen it, then say: fully loosened.");
    }
    return Reply.of(
        "Broken off before " + Words.stage(specified) + ".",
        "Say: turned so far, with the degrees in all, or: fully loosened.");
  }

  /** What was turned before of the angle that is now turned to its end. */
  public static Reply rest(Stage specified, BigDecimal turned) {
    return Reply.of(
        Words.sentence(Words.digits(turned))
            + " of "
            + Words.value(specified)
            + " turned before. Only the rest:");
  }

  /** How far an angle was turned, read back. */
  public static Reply readBackTurned(BigDecimal degrees) {
    return Reply.of(
        "Turned so far " + Words.digits(degrees) + " degrees in all. Say: that is correct.");
  }

  /** Why a step is closed out of order, read back. */
  public static Reply readBackOrder(OrderReason reason) {
    return Reply.of("Out of order, " + Words.reason(reason) + ". Say: that is correct.");
  }

  /** Whether closings still hold after another step was opened again. */
  public static Reply stillHold(List<Walk.Place> places) {
    return Reply.of(
        "Closed further on: " + Words.steps(places) + ".",
        "Does that still hold? Say: that is correct, or: that was wrong.");
  }

  /** The height at the arch is to be measured. */
  public static Reply archHeight() {
    return Reply.of(
        "The anti-roll bar can hold it up. Measure, and say: arch height, with the value.");
  }

  /** The height before the work read back, with what it must rest on. */
  public static Reply readBackHeight(Measure value, boolean lifted) {
    String read = Words.sentence(Words.measure(value)) + ".";
    return lifted
        ? Reply.of(read, "The car was lifted: no reference any more.", "Say: that is correct.")
        : Reply.of(
            read,
            "On its wheels, level, and bounced or rolled to settle?",
            "Then say: that is correct, or call it again.");
  }

  /** The time to be waited. */
  public static Reply waiting(Step.Wait step) {
    return Reply.of("Wait " + Words.time(step.time().toSeconds()) + ". Say: start the timer.");
  }

  /** The time was waited. */
  public static Reply timeOver() {
    return Reply.of("The time is over. Say: step completed.");
  }

  /** The time is being waited. */
  public static Reply timerRuns() {
    return Reply.of("The timer runs.");
  }

  /** The time that still runs. */
  public static Reply timeLeft(long seconds) {
    return Reply.of(Words.sentence(Words.time(seconds)) + " left.");
  }

  /** The load condition to be brought about. */
  public static Reply load(LoadCondition condition, Side side) {
    return Reply.of(
        "Bring the " + Words.side(side) + " to " + Words.condition(condition) + ", and say how.");
  }

  /** An item to be handed over. */
  public static Reply handOver(Step.HandOver step) {
    return Reply.of("Hand over: " + step.due() + ". Say: step completed.");
  }

  /** A measured value read back. */
  public static Reply readBack(Measure value) {
    return Reply.of(
        Words.sentence(Words.measure(value)) + ". Say: that is correct, or call it again.");
  }

  /**
   * The head marking of so many fasteners, read back.
   *
   * @param other another one that was read on the other side
   */
  public static Reply readBack(HeadMarking marking, int count, Optional<HeadMarking> other) {
    String all = count > 1 ? ", all " + Words.count(count) : "";
    String read = "Head marking " + Words.marking(marking) + all + ".";
    return other
        .map(m -> "The other side has " + Words.marking(m) + ".")
        .map(o -> Reply.of(read, o, "Is that so? Say: that is correct."))
        .orElseGet(() -> Reply.of(read + " Say: that is correct."));
  }

  /** The end of the work with open steps, read back. */
  public static Reply readBackEnd(int open) {
    return Reply.of(
        Words.sentence(Words.count(open, "step")) + " open. End anyway? Say: that is correct.");
  }

  /** The words to read back for a load condition. */
  public static Reply readBackLoad(Side side, LoadCondition condition) {
    return Reply.of("Read back: " + Words.side(side) + " at " + Words.condition(condition) + ".");
  }

  /** Every step is closed. */
  public static Reply allClosed() {
    return Reply.of("All steps are closed. Say: end of work.");
  }

  /** The step at hand is closed already. */
  public static Reply closedStep() {
    return Reply.of("This step is closed.");
  }

  /** What waits to be read back can be dropped. */
  public static Reply wayOut() {
    return Reply.of("Or say: that was wrong.");
  }

  /** A check question was answered with a no, which could mean either. */
  public static Reply failedOrPassed() {
    return Reply.of("Check has failed, or check passed?");
  }

  /** A no that nothing was said to. */
  public static Reply nothingChanged() {
    return Reply.of("Nothing changed. To take the last one back, say: that was wrong.");
  }
}
