package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Side;
import org.undercall.core.term.TorqueUnit;
import org.undercall.core.term.Trouble;

/** What the program says to tell what is next or to ask for something. */
public final class Ask {
  private Ask() {}

  /**
   * The title, where the values come from, the cautions, and the question for them.
   *
   * @param confirmed the numbers of the cautions that were heard whole and confirmed on this day
   */
  public static Reply briefing(Procedure procedure, Set<Integer> confirmed) {
    String values = "Values: " + procedure.about().values() + ".";
    String fewer = procedure.about().valuesBrief().map(v -> "Values: " + v + ".").orElse(values);
    Reply reply =
        Reply.once(Lesson.TITLES, procedure.about().title() + ".", "")
            .and(Reply.once(Lesson.CAUTIONS, values, fewer, values));
    int number = 0;
    for (Caution caution : procedure.cautions()) {
      number++;
      String later = confirmed.contains(number) ? caution.inBrief() : caution.text();
      reply =
          reply.and(
              Reply.once(Lesson.CAUTIONS, "Caution. " + caution.text(), later, caution.text()));
    }
    return reply.and(
        Reply.once(
            Lesson.CAUTIONS,
            "Say: cautions understood.",
            "Cautions understood?",
            "Say: cautions understood."));
  }

  /** The cautions were read out: the answer to them. */
  public static Reply askCautions() {
    return Reply.of("Say: cautions understood.");
  }

  /**
   * The number, side and title of a step, with its cautions.
   *
   * @param known what it is called where it is known; empty if its title is new
   * @param onward whether it goes on from a step of the same side, so that the side need not be
   *     said again
   */
  public static Reply step(int number, Walk.Place place, Optional<String> known, boolean onward) {
    Step.Head head = place.step().head();
    String whole = "Step " + Words.step(Words.count(number), place) + ". " + head.title() + ".";
    String named =
        onward ? Words.sentence(head.title()) : Words.step(place.ref(), head.title(), ". ");
    String later = known.map(name -> called(place, name, onward)).orElse(named);
    String brief = called(place, head.brief().orElse(head.title()), onward);
    Reply reply =
        Reply.once(Lesson.STEP, whole, later + ".", (known.isPresent() ? later : brief) + ".");
    for (String caution : head.cautions()) {
      reply = reply.and(Reply.of("Caution. " + caution));
    }
    return reply;
  }

  private static String called(Walk.Place place, String name, boolean onward) {
    return onward ? Words.sentence(name) : Words.step(place.ref(), name, ", ");
  }

  /** The check question of a do step. */
  public static Reply check(String question) {
    return Reply.of(question)
        .and(Reply.once(Lesson.CHECK, "Say: check passed, or: check has failed.", ""));
  }

  /** The value to be measured. */
  public static Reply measure(Step.Measure step) {
    String unit = Words.unit(step.unit());
    String sign = step.limits().reachBelowZero() ? ", with plus or minus" : "";
    return Reply.once(
        Lesson.MEASURE,
        "Call the value in " + unit + sign + ".",
        Words.sentence(unit) + sign + "?");
  }

  /** A value is to be called digit by digit; without an example, which could be taken for it. */
  public static Reply digitByDigit() {
    return Reply.of("Call it digit by digit, with the unit.");
  }

  /** A short answer does not count: what to say instead. */
  public static Reply wholePhrase(String phrase) {
    return Reply.of("That is too short to count. Say: " + phrase + ".");
  }

  /** A number of one word counts only with more words. */
  public static Reply withUnit() {
    return Reply.of("Say it with the unit, or after: it reads.");
  }

  /** So many are to be run in by hand. */
  public static Reply byHand(int count) {
    String all = Words.count(count);
    return count > 1
        ? Reply.once(
            Lesson.BY_HAND,
            "Run in all " + all + " by hand. Then say: " + all + " run in by hand.",
            "All " + all + " run in by hand?")
        : Reply.once(
            Lesson.BY_HAND, "Run it in by hand. Then say: run in by hand.", "Run in by hand?");
  }

  /** The head marking of so many fasteners is to be read out. */
  public static Reply marking(int count) {
    Reply same =
        count > 1
            ? Reply.once(
                Lesson.MARKING,
                "All " + Words.count(count) + " must have the same one.",
                "All " + Words.count(count) + " alike?")
            : Reply.SILENCE;
    return Reply.once(Lesson.MARKING, "Read out the head marking.", "Head marking?").and(same);
  }

  /** Which fastener of a set is next. */
  public static Reply nextOfSet(int position) {
    String number = Words.count(position) + ".";
    return Reply.once(Lesson.POSITION, "Next: number " + number, Words.sentence(number));
  }

  /** A reading within the tolerance, with how far it lies from the nominal value, read back. */
  public static Reply readBackReading(BigDecimal value, Stage stage) {
    BigDecimal off = value.subtract(stage.amount());
    boolean range =
        stage instanceof Stage.TorqueStage torque && torque.form() == Stage.TorqueStage.Form.RANGE;
    String read = Words.sentence(Words.digits(value)) + " " + Words.unit(stage);
    if (range || off.signum() == 0) {
      return Reply.of(read + (range ? ", in the range." : ".")).and(correct());
    }
    String way = off.signum() > 0 ? " over." : " under.";
    return Reply.of(read + ", " + Words.digits(off.abs()) + way).and(correct());
  }

  /** The question for a read-back. */
  static Reply correct() {
    return Reply.once(Lesson.READ_BACK, "Say: that is correct.", "Correct?");
  }

  /** The answer to a read-back that ends with a question of its own. */
  private static Reply correctAsked() {
    return Reply.once(Lesson.READ_BACK, "Say: that is correct.", "");
  }

  /** The torque after the last angle is to be read. */
  public static Reply finalTorque() {
    return Reply.of("Read the torque, and say: final torque, and the value.");
  }

  /** The torque after the last angle, read back. */
  public static Reply readBackFinalTorque(BigDecimal value, TorqueUnit unit) {
    return Reply.of("Final torque " + Words.digits(value) + " " + Words.unit(unit) + ".")
        .and(correct());
  }

  /** The torque that a nut needs to run down. */
  public static Reply runDown(Stage stage) {
    return Reply.of(
        "Run the nut down to just before the seat.",
        "Call the torque it takes, in " + Words.unit(stage) + ".");
  }

  /** The torque that a nut needs to run down, read back. */
  public static Reply readBackRunDown(BigDecimal value, Stage stage) {
    return Reply.of("Run-down torque " + Words.digits(value) + " " + Words.unit(stage) + ".")
        .and(correct());
  }

  /** What the torques are raised by. */
  public static Reply runDownAdded(BigDecimal value) {
    return Reply.of("With the run-down torque of " + Words.digits(value) + " added:");
  }

  /** Which wrench is used. */
  public static Reply whichWrench() {
    return Reply.once(Lesson.WRENCH, "Which wrench? Say its number.", "Which wrench?");
  }

  /** The wrench that was named does not fit the torque at hand. */
  public static Reply otherWrench(int number) {
    return Reply.of("Wrench " + Words.count(number) + " does not fit. Which one?");
  }

  /** The calibration of the wrench in use is over: another one, or a reason. */
  public static Reply overdue(int number) {
    return Reply.of(
        "Wrench " + Words.count(number) + " is out of calibration.",
        "Take another, or say: calibration over, and why.");
  }

  /** Why a wrench is used although its calibration is over, read back. */
  public static Reply readBackOverdue(int number, OverdueReason reason) {
    return Reply.of(
            "Wrench " + Words.count(number) + ", out of calibration, " + Words.reason(reason) + ".")
        .and(correct());
  }

  /** Something that went wrong, read back. */
  public static Reply readBackTrouble(Trouble trouble, Optional<Integer> position) {
    return Reply.of(Words.sentence(Words.trouble(trouble, position)) + ". It stays open.")
        .and(correct());
  }

  /** Something that went wrong at a fastener that is closed, read back. */
  public static Reply readBackTrouble(Walk.Place place, Trouble trouble) {
    return Reply.of(
            Words.sentence(Words.steps(List.of(place)))
                + ": "
                + Words.trouble(trouble, Optional.empty())
                + ".",
            "It will be opened again.")
        .and(correct());
  }

  /** What went wrong and is not settled, with the ways out of it. */
  public static Reply trouble(Trouble trouble, Optional<Integer> position, int count) {
    String renewed = count > 1 ? Words.count(count) + " new bolts fitted" : "new bolt fitted";
    return Reply.of(
        Words.sentence(Words.trouble(trouble, position)) + ", still open.",
        "Say: " + renewed + ", or: it is repaired now, or put it off.");
  }

  /** A position out of turn, or all of a set that are left, read back. */
  public static Reply readBackSet(Positions positions, int count) {
    String what =
        positions.numbers().size() == 1
            ? "Number " + Words.count(positions.numbers().get(0)) + ", out of turn."
            : "All " + Words.count(count) + ", none left out?";
    return Reply.of(what).and(correct());
  }

  /** The load condition that a fastener waits for. */
  public static Reply gate(LoadCondition needed, Side side) {
    return Reply.of("Not yet. Confirm " + Words.condition(needed) + ", " + Words.of(side) + ".");
  }

  /**
   * A place among the stages of a fastener.
   *
   * @param index from 0
   * @param begun whether some of a set were called at it
   * @param met whether the stages are known, so that what follows the first need not be said
   */
  public record At(int index, boolean begun, boolean met) {}

  /**
   * The stage at hand, for example "Stage one of two: torque, one one zero newton metres."
   *
   * @param at which stage is at hand
   * @param mixed whether the procedure has torques in several units, so that each is said
   */
  public static Reply stage(Fastener fastener, List<Stage> stages, At at, boolean mixed) {
    boolean first = at.index() == 0 && !at.begun();
    Stage stage = stages.get(at.index());
    String number =
        "Stage " + Words.count(at.index() + 1) + " of " + Words.count(stages.size()) + ": ";
    String whole =
        stages.size() == 1 ? Words.sentence(Words.stage(stage)) : number + Words.stage(stage);
    String then =
        first && !at.met() && stages.size() > 1 ? ", then " + then(stages.get(1), mixed) : "";
    return (first ? manner(fastener) : Reply.SILENCE)
        .and(
            Reply.once(
                Lesson.STAGE,
                whole + ".",
                Words.sentence(Words.inBrief(stage, mixed)) + then + "."));
  }

  /** What follows the first stage; that a torque follows a torque need not be said. */
  private static String then(Stage next, boolean mixed) {
    boolean pass =
        next instanceof Stage.TorqueStage torque
            && torque.form() == Stage.TorqueStage.Form.CHECK_PASS;
    return pass ? "check pass" : Words.inBrief(next, mixed).replaceFirst("^torque ", "");
  }

  /** What is to be minded before the first stage. */
  private static Reply manner(Fastener fastener) {
    Reply manner = fastener.set().several() ? set(fastener) : Reply.SILENCE;
    if (fastener.manner().leftHand()) {
      manner = manner.and(Reply.of("Left-hand thread."));
    }
    return fastener
        .manner()
        .counterHold()
        .map(with -> Reply.of("Counter-hold with: " + with + "."))
        .map(manner::and)
        .orElse(manner);
  }

  private static Reply set(Fastener fastener) {
    String count = Words.sentence(Words.count(fastener.set().count()));
    if (fastener.mayBeCounted()) {
      return Reply.of(count + " fasteners.");
    }
    String order = Words.numbers(fastener.set().order());
    return order.isEmpty()
            || fastener.set().order().equals(fastener.set().sequence().stream().sorted().toList())
        ? Reply.once(Lesson.SET, count + " fasteners, one by one.", count + ".")
        : Reply.once(Lesson.SET, count + " fasteners, in the order " + order + ".", count + ".");
  }

  /** How far a tightening that was broken off is turned, or that it is loosened. */
  public static Reply turnedSoFar(Stage specified, Optional<BigDecimal> tooFar) {
    if (tooFar.isPresent()) {
      return Reply.of("Turned too far. Loosen it, then say: fully loosened.");
    }
    return Reply.of(
        "Stopped before " + Words.stage(specified) + ".",
        "Say: turned so far, and the degrees in all, or: fully loosened.");
  }

  /** What was turned before of the angle that is now turned to its end. */
  public static Reply rest(Stage specified, BigDecimal turned) {
    return Reply.of(
        Words.sentence(Words.digits(turned))
            + " of "
            + Words.value(specified)
            + " is turned. Only the rest:");
  }

  /** How far an angle was turned, read back. */
  public static Reply readBackTurned(BigDecimal degrees) {
    return Reply.of("Turned " + Words.digits(degrees) + " degrees in all.").and(correct());
  }

  /** Why a step is closed out of order, read back. */
  public static Reply readBackOrder(OrderReason reason) {
    return Reply.of("Out of order, " + Words.reason(reason) + ".").and(correct());
  }

  /** Whether closings still hold after another step was opened again. */
  public static Reply stillHold(List<Walk.Place> places) {
    return Reply.of("Closed after it: " + Words.steps(places) + ".", "Is that still good?")
        .and(correct());
  }

  /** The height at the arch is to be measured. */
  public static Reply archHeight() {
    return Reply.of(
        "The anti-roll bar can hold it up. Measure, then say: arch height, and the value.");
  }

  /** The height before the work read back, with what it must rest on. */
  public static Reply readBackHeight(Measure value, boolean lifted) {
    Reply read = read(Words.measure(value), Words.digits(value.amount()));
    return lifted
        ? read.and(Reply.of("The car was lifted: no reference any more.")).and(correct())
        : read.and(
                Reply.once(
                    Lesson.HEIGHT,
                    "On its wheels, level, and bounced or rolled to settle?",
                    "On its wheels, level, settled?"))
            .and(correctAsked());
  }

  /** The time to be waited. */
  public static Reply waiting(Step.Wait step) {
    String wait = "Wait " + Words.time(step.time().toSeconds());
    return Reply.once(Lesson.TIMER, wait + ". Say: start the timer.", wait + ". Start the timer?");
  }

  /** The time was waited. */
  public static Reply timeOver() {
    return Reply.once(Lesson.TIME_OVER, "Say: step completed.", "Step completed?");
  }

  /** The time is being waited. */
  public static Reply timerRuns() {
    return Reply.of("The timer is running.");
  }

  /** The time that still runs. */
  public static Reply timeLeft(long seconds) {
    return Reply.of(Words.sentence(Words.time(seconds)) + " left.");
  }

  /** The load condition to be brought about. */
  public static Reply load(Step.Load step, Side side) {
    String condition = Words.condition(step.condition());
    boolean named = step.head().title().contains(condition);
    return Reply.once(
        Lesson.LOAD,
        "Bring it to " + condition + ", " + Words.of(side) + ", and say how.",
        named ? "How?" : Words.sentence(condition) + "?");
  }

  /** An item to be handed over. */
  public static Reply handOver(Step.HandOver step) {
    return Reply.once(
        Lesson.HAND_OVER,
        "Hand over: " + step.due() + ". Say: step completed.",
        "Due " + step.due() + ".");
  }

  /**
   * A measured value read back, digit by digit; the unit is the one that was asked for.
   *
   * @param sign whether its sign is said, also if it is above zero
   */
  public static Reply readBack(Measure value, boolean sign) {
    String plus = sign && value.amount().signum() > 0 ? "plus " : "";
    String whole = plus + Words.measure(value);
    String digits = plus + Words.digits(value.amount());
    boolean minutes = value.unit() == MeasureUnit.MINUTE;
    return read(whole, minutes ? whole : digits).and(correct());
  }

  private static Reply read(String whole, String later) {
    return Reply.once(Lesson.READ_BACK, Words.sentence(whole) + ".", Words.sentence(later) + ".");
  }

  /**
   * The head marking of so many fasteners, read back.
   *
   * @param other another one that was read on the other side
   */
  public static Reply readBack(HeadMarking marking, int count, Optional<HeadMarking> other) {
    String all = count > 1 ? ", all " + Words.count(count) : "";
    String read = Words.marking(marking) + all + ".";
    return Reply.once(Lesson.READ_BACK, "Head marking " + read, Words.sentence(read))
        .and(
            other
                .map(o -> Reply.of("The other side has " + Words.marking(o) + "."))
                .orElse(Reply.SILENCE))
        .and(correct());
  }

  /** The end of the work with open steps, read back. */
  public static Reply readBackEnd(int open) {
    return Reply.of(Words.sentence(Words.count(open, "step")) + " open. End anyway?")
        .and(correct());
  }

  /** The words to read back for a load condition. */
  public static Reply readBackLoad(Side side, LoadCondition condition) {
    String words = Words.side(side) + " at " + Words.condition(condition) + ".";
    return Reply.once(Lesson.LOAD_READ_BACK, "Read it back: " + words, "Say: " + words);
  }

  /** Every step is closed. */
  public static Reply allClosed() {
    return Reply.once(
        Lesson.END, "All steps are closed. Say: end of work.", "All closed. End of work?");
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
