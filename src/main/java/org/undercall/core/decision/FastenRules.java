package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.ConfusableNumbers;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Say;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** What is done with fasteners: hardware, head marking, values and stages. */
final class FastenRules {
  private FastenRules() {}

  static Decision newHardware(Session session, Intent intent, Moment now) {
    Optional<Decision> missing = partMissing(session);
    if (missing.isPresent()) {
      return missing.get();
    }
    Fastener fastener = fastener(session);
    int count = fastener.set().count();
    int said = intent instanceof Intent.Counted counted ? counted.number() : 1;
    if (said != count) {
      return StepRules.refuse(session, Missing.COUNT, Refuse.countHardware(fastener, count));
    }
    Optional<Integer> counted = count > 1 ? Optional.of(count) : Optional.empty();
    return new Turn(session)
        .record(new SessionEvent.NewHardwareFitted(session.ref(), counted))
        .say(Say.newHardware())
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  /** What was said to be missing is not new hardware, until it is ticked off; no reason helps. */
  static Optional<Decision> partMissing(Session session) {
    List<Walk.Place> missing = new Bonds(session).partsMissing(session.progress().at());
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(StepRules.refuse(session, Missing.NEW_HARDWARE, Refuse.partMissing(missing)));
  }

  /** The fastener is loose again: the tightening starts anew, with new hardware if need be. */
  static Decision loosened(Session session, Intent intent, Moment now) {
    boolean used = fastener(session).part().oneTimeUse() && session.isUsedUp();
    int count = fastener(session).set().count();
    return new Turn(session)
        .record(new SessionEvent.Loosened(session.ref()))
        .say(Say.loosened(used, count))
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  /** How far the angle of a tightening that was broken off is turned, all in all. */
  static Decision turnedSoFar(Session session, Intent intent, Moment now) {
    Intent.OfNumber said = (Intent.OfNumber) intent;
    boolean other =
        session.talk().pending().filter(p -> !(p instanceof Pending.Turned)).isPresent();
    if (other || session.tightening().turned().isPresent()) {
      return StepRules.missing(session, intent, now);
    }
    BigDecimal degrees = said.number().value();
    boolean words = said.number().style() == SpokenNumber.Style.WORDS;
    if (words && ConfusableNumbers.isConfusable(degrees)) {
      return digitByDigit(session, degrees);
    }
    return new Turn(session)
        .record(new SessionEvent.TurnCalled(session.ref(), degrees))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** Keeps how far it is turned: goes on from there, closes the stage, or says it is too far. */
  static Decision keepTurned(Session session, Pending.Turned turned) {
    Turn dropped = new Turn(session).drop();
    Optional<Decision> early = StepRules.tooEarly(dropped.session());
    if (early.isPresent()) {
      return dropped.then(early.get());
    }
    Turn turn =
        new Turn(session).record(new SessionEvent.TurnNoted(turned.step(), turned.degrees()));
    Session after = turn.session();
    if (after.tightening().called().isPresent() && after.phase() == Phase.ANGLE) {
      boolean several = ((Step.Fasten) after.place().step()).fastener().set().several();
      return several
          ? SetRules.completed(turn, new Intent.Plain(IntentKind.ANGLE_COMPLETED))
          : close(turn).end(Outcome.ACCEPTED);
    }
    return turn.say(Say.turnKept(turned.degrees())).prompt().end(Outcome.ACCEPTED);
  }

  /** Keeps a reading within the tolerance; the stage closes if it was said to be completed. */
  static Decision keepReading(Session session, Pending.Reading reading, Intent intent, Moment now) {
    Turn dropped = new Turn(session).drop();
    Session after = dropped.session();
    Optional<Decision> early =
        WrenchRules.calibrationOver(after, now).or(() -> StepRules.tooEarly(after));
    if (early.isPresent()) {
      return dropped.then(early.get());
    }
    if (after.phase() != Phase.ANGLE && after.phase() != Phase.TORQUE) {
      return dropped.then(StepRules.missing(after, intent, now));
    }
    int stage = session.tightening().stagesClosed() + 1;
    Turn turn =
        new Turn(session)
            .record(new SessionEvent.ValueCalled(session.ref(), stage, reading.value()));
    if (!reading.closes()) {
      return turn.say(Say.readingKept(after.stage())).end(Outcome.ACCEPTED);
    }
    boolean several = fastener(session).set().several();
    IntentKind kind =
        after.phase() == Phase.ANGLE ? IntentKind.ANGLE_COMPLETED : IntentKind.TORQUE_COMPLETED;
    return several
        ? SetRules.completed(turn, new Intent.Plain(kind))
        : close(turn).end(Outcome.ACCEPTED);
  }

  static Decision marking(Session session, Intent intent, Moment now) {
    HeadMarking marking = ((Intent.Marking) intent).marking();
    Step.Fasten step = (Step.Fasten) session.place().step();
    boolean known =
        step.fastener().variants().stream()
            .anyMatch(v -> v.marking().filter(marking::equals).isPresent());
    if (!known) {
      return new Turn(session)
          .record(new SessionEvent.MarkingRefused(session.ref(), marking))
          .say(Say.markingRefused(marking))
          .refused();
    }
    return new Turn(session)
        .record(new SessionEvent.MarkingCalled(session.ref(), marking))
        .prompt()
        .end(Outcome.ASKED);
  }

  /**
   * Several things in one answer: each is judged as if said alone, after the one before. Nothing
   * counts after one that does not, nor at another step.
   */
  static Decision each(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session);
    Outcome outcome = Outcome.ACCEPTED;
    for (Intent part : ((Intent.Several) intent).parts()) {
      Session before = turn.session();
      if (outcome == Outcome.ACCEPTED && before.ref().equals(session.ref())) {
        Decision next = part(before, part, now);
        turn.and(next);
        outcome = next.outcome();
      }
    }
    return turn.end(outcome);
  }

  /** A pass by hand is not taken for a step left snug while its head marking is missing. */
  private static Decision part(Session session, Intent part, Moment now) {
    boolean early = part.kind() == IntentKind.FITTED_SNUG && session.phase() == Phase.MARKING;
    return early
        ? StepRules.missing(session, part, now)
        : Table.rule(session.phase(), part.kind()).decide(session, part, now);
  }

  static Decision snug(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .interrupt()
        .record(new SessionEvent.FastenerSnug(session.ref()))
        .say(Say.snug())
        .leave()
        .end(Outcome.ACCEPTED);
  }

  /** A pass by hand, before the first stage; of a set all are counted. */
  static Decision byHand(Session session, Intent intent, Moment now) {
    int count = fastener(session).set().count();
    int said = intent instanceof Intent.Counted counted ? counted.number() : 1;
    int of = intent instanceof Intent.Counted counted ? counted.of() : 1;
    if (said != count || of != count) {
      return StepRules.refuse(session, Missing.COUNT, Refuse.byHand(count));
    }
    Optional<Integer> counted = count > 1 ? Optional.of(count) : Optional.empty();
    return new Turn(session)
        .record(new SessionEvent.RunInByHand(session.ref(), counted))
        .say(Say.byHand())
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  static Decision snugIfLoose(Session session, Intent intent, Moment now) {
    return session.tightening().tight()
        ? loosenFirst(session, intent, now)
        : snug(session, intent, now);
  }

  static Decision markingIfLoose(Session session, Intent intent, Moment now) {
    return session.tightening().tight()
        ? loosenFirst(session, intent, now)
        : marking(session, intent, now);
  }

  /** What belongs to a loose fastener is refused where a stage is closed. */
  static Decision loosenFirst(Session session, Intent intent, Moment now) {
    return StepRules.refuse(session, Missing.TURNED_SO_FAR, Refuse.loosenFirst());
  }

  /** A value called for the stage at hand. It closes nothing. */
  static Decision called(Session session, Intent intent, Moment now) {
    return WrenchRules.calibrationOver(session, now)
        .or(() -> StepRules.tooEarly(session))
        .or(() -> refusedValue(session, (Intent.OfNumber) intent))
        .orElseGet(
            () -> {
              Turn turn = new Turn(session);
              keep(turn, (Intent.OfNumber) intent);
              return turn.say(Say.valueMatches(session.stage())).end(Outcome.ACCEPTED);
            });
  }

  /** The stage at hand is said to be completed, with or without its value. */
  static Decision completed(Session session, Intent intent, Moment now) {
    Optional<Decision> early =
        WrenchRules.calibrationOver(session, now).or(() -> StepRules.tooEarly(session));
    if (early.isPresent()) {
      return early.get();
    }
    Turn turn = new Turn(session);
    if (intent instanceof Intent.OfNumber value) {
      Optional<Decision> refused = refusedValue(session, value);
      if (refused.isPresent()) {
        return refused.get();
      }
      keep(turn, value);
    }
    if (turn.session().tightening().called().isEmpty()) {
      return StepRules.missing(session, intent, now);
    }
    if (fastener(session).set().several()) {
      return SetRules.completed(turn, intent);
    }
    boolean other =
        (intent instanceof Intent.OfPosition of && of.position() != 1)
            || intent instanceof Intent.Counted;
    return other
        ? StepRules.refuse(session, Missing.POSITION, Refuse.noSuchPosition(1))
        : close(turn).end(Outcome.ACCEPTED);
  }

  static Decision otherStage(Session session, Intent intent, Moment now) {
    return session.phase() == Phase.ANGLE
        ? StepRules.refuse(session, Missing.ANGLE_STAGE, Refuse.angleNext())
        : StepRules.refuse(session, Missing.TORQUE_STAGE, Refuse.torqueFirst());
  }

  /** Closes the stage at hand, and the step with its last one. */
  static Turn close(Turn turn) {
    Session session = turn.session();
    Stage stage = session.specified();
    int number = session.tightening().stagesClosed() + 1;
    boolean last = number == session.stages().size();
    boolean closes = last && !WitnessRules.lacks(session);
    turn.record(new SessionEvent.StageClosed(session.ref(), number, recorded(session)))
        .say(Say.stageClosed(number, stage, amount(session), closes));
    if (!last) {
      return turn.prompt();
    }
    boolean banded = stage instanceof Stage.AngleStage angle && angle.finalTorque().isPresent();
    return (banded && closes ? turn.say(Ask.finalTorque()) : turn).close();
  }

  /** What was called for the stage at hand; of an angle all of it, with what was turned before. */
  private static BigDecimal amount(Session session) {
    Tightening tightening = session.tightening();
    BigDecimal called = tightening.called().orElseThrow();
    boolean before =
        session.specified() instanceof Stage.AngleStage angle
            && tightening.turned().filter(turned -> !angle.isReachedBy(turned)).isPresent();
    return before ? called.add(tightening.turned().orElseThrow()) : called;
  }

  /** What is recorded of the stage at hand. */
  static String recorded(Session session) {
    if (session.specified() instanceof Stage.AngleStage angle) {
      return recorded(angle, session.tightening());
    }
    String added =
        session.addedRunDown().map(v -> ", with run-down " + v.toPlainString()).orElse("");
    return recorded((Stage.TorqueStage) session.specified(), session.tightening()) + added;
  }

  /** The torque of the specification, or what was read; with an adaptor what was dialled for it. */
  private static String recorded(Stage.TorqueStage stage, Tightening tightening) {
    if (stage.form() == Stage.TorqueStage.Form.RANGE) {
      BigDecimal called = tightening.called().orElse(stage.amount());
      return new Torque(called, stage.target().unit())
          + ", of "
          + stage.least().amount().toPlainString()
          + " to "
          + stage.most();
    }
    Optional<BigDecimal> read =
        tightening.called().filter(called -> called.compareTo(stage.amount()) != 0);
    if (read.isPresent()) {
      String adaptor = stage.dialled().isPresent() ? " at the wrench, with the adaptor" : "";
      return new Torque(read.get(), stage.target().unit()) + ", read" + adaptor;
    }
    return stage
        .dialled()
        .map(d -> stage.target() + ", wrench set to " + d.setting() + " with the adaptor")
        .orElse(stage.target().toString());
  }

  /** The angle in all, and how much of it was turned before a break. */
  private static String recorded(Stage.AngleStage stage, Tightening tightening) {
    BigDecimal called = tightening.called().orElse(stage.amount());
    return tightening
        .turned()
        .map(
            turned ->
                stage.isReachedBy(turned)
                    ? new Angle(turned) + ", turned before a break"
                    : new Angle(turned.add(called))
                        + " in all, "
                        + turned.toPlainString()
                        + " before a break")
        .orElse(new Angle(called).toString());
  }

  private static void keep(Turn turn, Intent.OfNumber value) {
    Session session = turn.session();
    int number = session.tightening().stagesClosed() + 1;
    turn.record(new SessionEvent.ValueCalled(session.ref(), number, value.number().value()));
  }

  /** The refusal of a value that is not, or not surely, the one of the stage at hand. */
  private static Optional<Decision> refusedValue(Session session, Intent.OfNumber value) {
    Stage stage = session.stage();
    BigDecimal called = value.number().value();
    Optional<Decision> other = refusedUnit(session, value, stage);
    if (other.isPresent()) {
      return other;
    }
    boolean words = value.number().style() == SpokenNumber.Style.WORDS;
    boolean read = isRead(session);
    if (called.compareTo(stage.amount()) != 0) {
      int number = session.tightening().stagesClosed() + 1;
      if (read && stage.isReachedBy(called)) {
        return Optional.of(
            words && ConfusableNumbers.isConfusable(called)
                ? digitByDigit(session, called)
                : readBack(session, number, value));
      }
      Turn turn = new Turn(session);
      if (session.tightening().called().isPresent()) {
        turn.record(new SessionEvent.ValueDropped(session.ref()));
      }
      return Optional.of(
          turn.record(new SessionEvent.ValueRefused(session.ref(), number, called, stage.amount()))
              .say(Say.valueRefused(called, stage, read))
              .end(Outcome.REFUSED));
    }
    if (words && ConfusableNumbers.isConfusable(called)) {
      return Optional.of(digitByDigit(session, called));
    }
    return value.number().style() == SpokenNumber.Style.WITH_PAUSE
        ? Optional.of(readBack(session, session.tightening().stagesClosed() + 1, value))
        : Optional.empty();
  }

  /** The refusal of a value in another unit, or without one where it needs it. */
  static Optional<Decision> refusedUnit(Session session, Intent.OfNumber value, Stage stage) {
    if (value.unit().isPresent() && !value.unit().equals(unit(stage))) {
      return Optional.of(StepRules.refuse(session, Missing.OTHER_UNIT, Refuse.otherUnit(stage)));
    }
    return value.unit().isEmpty() && needsUnit(session)
        ? Optional.of(StepRules.refuse(session, Missing.UNIT, Refuse.unit(stage)))
        : Optional.empty();
  }

  /**
   * Whether any amount within the tolerance may stand: an angle, a range, a wrench that is read.
   */
  static boolean isRead(Session session) {
    boolean range =
        session.stage() instanceof Stage.TorqueStage torque
            && torque.form() == Stage.TorqueStage.Form.RANGE;
    return range || session.stage() instanceof Stage.AngleStage || WrenchRules.indicates(session);
  }

  /** Where torques are in more than one unit, a number alone could be of either. */
  private static boolean needsUnit(Session session) {
    return session.stage() instanceof Stage.TorqueStage
        && unit(session.stage()).isPresent()
        && session.walk().procedure().mixesUnits();
  }

  private static Decision readBack(Session session, int stage, Intent.OfNumber value) {
    boolean closes = value.kind() != IntentKind.VALUE_CALLED;
    return new Turn(session)
        .record(
            new SessionEvent.ReadingCalled(session.ref(), stage, value.number().value(), closes))
        .prompt()
        .end(Outcome.ASKED);
  }

  static Decision digitByDigit(Session session, BigDecimal called) {
    return new Turn(session)
        .record(new SessionEvent.CloseRefused(session.ref(), Missing.DIGIT_BY_DIGIT))
        .say(Refuse.digitByDigit(called))
        .end(Outcome.ASKED);
  }

  /** The unit that may be said with the value; empty if no phrase has it. */
  private static Optional<SpokenUnit> unit(Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? spoken(torque.target().unit())
        : Optional.of(SpokenUnit.DEGREES);
  }

  /** A unit of torque as it is said; empty if no phrase has it. */
  static Optional<SpokenUnit> spoken(TorqueUnit unit) {
    return switch (unit) {
      case NEWTON_METRE -> Optional.of(SpokenUnit.NEWTON_METRES);
      case POUND_FORCE_FOOT -> Optional.of(SpokenUnit.FOOT_POUNDS);
      case POUND_FORCE_INCH -> Optional.of(SpokenUnit.INCH_POUNDS);
      case KILOGRAM_FORCE_METRE -> Optional.empty();
    };
  }

  static Fastener fastener(Session session) {
    return ((Step.Fasten) session.place().step()).fastener();
  }
}
