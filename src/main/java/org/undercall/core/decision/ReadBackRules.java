package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.JobTalk;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.Measure;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** Values, markings and the end of the work: said, read back, and only then kept. */
final class ReadBackRules {
  private ReadBackRules() {}

  static Decision measured(Session session, Intent intent, Moment now) {
    Optional<Decision> early = StepRules.tooEarly(session);
    if (early.isPresent()) {
      return early.get();
    }
    Step.Measure step = (Step.Measure) session.place().step();
    CalledMeasure called = CalledMeasure.of(intent);
    if (!called.fits(step.unit())) {
      return StepRules.refuse(session, Missing.OTHER_UNIT, Refuse.otherUnit(step));
    }
    boolean takesSign = step.limits().reachBelowZero();
    if (takesSign && called.lacksSign()) {
      return StepRules.refuse(session, Missing.SIGN, Refuse.withoutSign());
    }
    if (!takesSign && called.value().signum() < 0) {
      return StepRules.refuse(session, Missing.NOT_BELOW_ZERO, Refuse.belowZero());
    }
    Measure value = called.in(step.unit());
    return new Turn(session)
        .record(new SessionEvent.MeasureCalled(session.ref(), value))
        .prompt()
        .end(Outcome.ASKED);
  }

  static Decision right(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    if (pending instanceof Pending.Value value) {
      return keep(session, value.value());
    }
    if (pending instanceof Pending.Marking marking) {
      return keep(session, marking.marking());
    }
    if (pending instanceof Pending.Turned turned) {
      return FastenRules.keepTurned(session, turned);
    }
    if (pending instanceof Pending.Reading reading) {
      return FastenRules.keepReading(session, reading, intent, now);
    }
    if (pending instanceof Pending.RunDown runDown) {
      return RunDownRules.keep(session, runDown);
    }
    if (pending instanceof Pending.FinalTorque torque) {
      return FinalTorqueRules.keep(session, torque);
    }
    if (pending instanceof Pending.Reuse reuse) {
      return ReuseRules.keep(session, reuse);
    }
    if (pending instanceof Pending.Overdue overdue) {
      return WrenchRules.keep(session, overdue);
    }
    if (pending instanceof Pending.Wrong wrong) {
      return TroubleRules.keep(session, wrong);
    }
    if (pending instanceof Pending.OfSet ofSet) {
      return SetRules.keep(session, ofSet, intent, now);
    }
    if (pending instanceof Pending.OutOfOrder order) {
      return new Turn(session)
          .record(new SessionEvent.OutOfOrderNoted(order.step(), order.reason()))
          .say(Say.outOfOrder())
          .prompt()
          .end(Outcome.ACCEPTED);
    }
    if (pending instanceof Pending.Later later) {
      return new Turn(session)
          .record(new SessionEvent.ClosingsHold(later.because()))
          .say(Say.closingsHold())
          .prompt()
          .end(Outcome.ACCEPTED);
    }
    int open = session.progress().open();
    return new Turn(session)
        .record(new SessionEvent.SessionEnded(false, open))
        .say(Prompt.ended(session, false))
        .end(Outcome.ACCEPTED);
  }

  static Decision dropped(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session).say(Say.dropped()).drop();
    boolean briefing = session.talk().mode() == Talk.Mode.BRIEFING;
    return (briefing ? turn : turn.prompt()).end(Outcome.ACCEPTED);
  }

  /** A no without more. Closings that were doubted lapse with it, so there it is too little. */
  static Decision no(Session session, Intent intent, Moment now) {
    return session.talk().pending().orElseThrow() instanceof Pending.Later
        ? TalkRules.answer(session, intent, Prompt.of(session))
        : dropped(session, intent, now);
  }

  /** A no and the value that is right: it is taken as if it had just been called. */
  static Decision corrected(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    Optional<Intent> right =
        intent instanceof Intent.OfNumber number
            ? rightValue(pending, number)
            : rightReading(pending, (Intent.OfReading) intent);
    if (right.isEmpty()) {
      return no(session, intent, now);
    }
    Turn turn = new Turn(session).drop();
    Session after = turn.session();
    Rule rule = Table.rule(after.phase(), right.get().kind());
    return turn.then(rule.decide(after, right.get(), now));
  }

  /** What a number means in place of what was read back; empty where no number was. */
  private static Optional<Intent> rightValue(Pending pending, Intent.OfNumber said) {
    if (pending instanceof Pending.Marking) {
      String text = said.number().value().toPlainString();
      return HeadMarking.isOne(text) && said.unit().isEmpty()
          ? Optional.of(new Intent.Marking(new HeadMarking(text)))
          : Optional.empty();
    }
    Optional<IntentKind> kind = Optional.empty();
    if (pending instanceof Pending.Turned) {
      kind = Optional.of(IntentKind.TURNED_SO_FAR);
    } else if (pending instanceof Pending.FinalTorque) {
      kind = Optional.of(IntentKind.FINAL_TORQUE);
    } else if (pending instanceof Pending.Reuse reuse) {
      kind = Optional.of(ReuseRules.kind(reuse.by()));
    } else if (pending instanceof Pending.Value
        || pending instanceof Pending.Reading
        || pending instanceof Pending.RunDown) {
      kind = Optional.of(IntentKind.VALUE_CALLED);
    }
    return kind.map(k -> new Intent.OfNumber(k, said.number(), said.unit()));
  }

  /** What a value with a sign or in minutes means in place of what was read back. */
  private static Optional<Intent> rightReading(Pending pending, Intent.OfReading said) {
    return pending instanceof Pending.Value
        ? Optional.of(
            new Intent.OfReading(
                IntentKind.READING_CALLED, said.value(), said.unit(), said.signed()))
        : Optional.empty();
  }

  /** The value was called again: the same one is kept, another one is read back in its place. */
  static Decision valueAgain(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    if (pending instanceof Pending.Reading reading
        && intent instanceof Intent.OfNumber number
        && number.number().value().compareTo(reading.value()) == 0) {
      return FastenRules.keepReading(session, reading, intent, now);
    }
    if (!(pending instanceof Pending.Value value)) {
      return StepRules.missing(session, intent, now);
    }
    boolean takesSign = ((Step.Measure) session.place().step()).limits().reachBelowZero();
    CalledMeasure again = CalledMeasure.of(intent);
    boolean same = again.isLike(value.value()) && !(takesSign && again.lacksSign());
    return same ? keep(session, value.value()) : measured(session, intent, now);
  }

  /** The marking was read out again: the same one is kept, another one is read back instead. */
  static Decision markingAgain(Session session, Intent intent, Moment now) {
    Pending pending = session.talk().pending().orElseThrow();
    if (!(pending instanceof Pending.Marking marking)) {
      return StepRules.missing(session, intent, now);
    }
    boolean same = ((Intent.Marking) intent).marking().equals(marking.marking());
    return same ? keep(session, marking.marking()) : FastenRules.marking(session, intent, now);
  }

  static Decision end(Session session, Intent intent, Moment now) {
    int open = session.progress().open();
    return new Turn(session)
        .record(new SessionEvent.EndCalled(open))
        .say(Prompt.end(session))
        .end(Outcome.ASKED);
  }

  static Decision complete(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .record(new SessionEvent.SessionEnded(true, 0))
        .say(Prompt.ended(session, true))
        .end(Outcome.ACCEPTED);
  }

  /** Takes back what was said last; never what was said before that. */
  static Decision takeBack(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session);
    Optional<Talk.Last> last = session.talk().last();
    boolean loosened = last.filter(l -> l.kind() == EventKind.LOOSENED).isPresent();
    if (last.isEmpty() || loosened) {
      return turn.record(StepRules.notNow(session, intent))
          .say(loosened ? Say.staysLoose() : nothing(session))
          .end(Outcome.REFUSED);
    }
    return takeBack(turn, last.get()).end(Outcome.ACCEPTED);
  }

  private static Reply nothing(Session session) {
    boolean reopens = Table.heard(session.phase()).contains(IntentKind.REOPEN);
    return Say.nothingToTakeBack().and(reopens ? Say.olderStep() : Reply.SILENCE);
  }

  /** Takes back what was said last. */
  static Turn takeBack(Turn turn, Talk.Last last) {
    Session session = turn.session();
    switch (last.kind()) {
      case VALUE_CALLED ->
          turn.record(new SessionEvent.ValueDropped(session.ref())).say(Say.dropped());
      case STEP_CLOSED, STAGE_CLOSED -> {
        StepRef ref = session.progress().lastClosed().orElseThrow();
        if (WitnessRules.watch(session, ref).by().isPresent()) {
          WitnessRules.unwitnessed(turn, ref);
        } else {
          closing(turn, ref);
        }
      }
      case POSITIONS_CLOSED ->
          SetRules.open(turn, new Positions(session.tightening().pass().last()));
      case LOAD_CONFIRMED -> turn.loadChanged(LoadChange.TAKEN_BACK).prompt();
      case JOB_NOTED -> {
        boolean next = session.talk().mode() == Talk.Mode.HANDED;
        turn.record(new SessionEvent.SayingTakenBack(last.step(), last.kind().name()))
            .say(next ? Prompt.of(turn.session()) : JobTalk.takenBack());
      }
      case WRENCH_NAMED, OVERDUE_NOTED ->
          turn.record(new SessionEvent.SayingTakenBack(last.step(), last.kind().name()))
              .say(Say.wrenchTakenBack())
              .prompt();
      case NOTE_KEPT ->
          turn.record(new SessionEvent.SayingTakenBack(last.step(), last.kind().name()))
              .say(Say.noteTakenBack());
      default -> {
        turn.record(new SessionEvent.SayingTakenBack(last.step(), last.kind().name()))
            .say(Say.takenBack());
        int index = session.walk().indexOf(last.step());
        if (index == session.progress().at()) {
          turn.prompt();
        } else {
          turn.moveTo(index);
        }
      }
    }
    return turn;
  }

  /** Takes a closing back at once: a stage is at hand again, another step is open. */
  static Turn closing(Turn turn, StepRef ref) {
    Session session = turn.session();
    int index = session.walk().indexOf(ref);
    int stages = session.progress().states().get(index).tightening().stagesClosed();
    List<Walk.Place> falling = new Bonds(session).fallingWith(index);
    turn.record(
            stages > 0
                ? new SessionEvent.StageTakenBack(ref, stages)
                : new SessionEvent.ClosingTakenBack(ref))
        .say(Say.takenBack())
        .lapse(falling, ref);
    if (session.walk().places().get(index).step() instanceof Step.Load
        || session.walk().places().get(index).step() instanceof Step.Measure) {
      turn.loadChanged(LoadChange.TAKEN_BACK);
    }
    return turn.moveTo(index);
  }

  private static Decision keep(Session session, Measure called) {
    Step.Measure step = (Step.Measure) session.place().step();
    Measure value = called.inDegrees();
    boolean within = step.limits().hold(value.amount());
    Turn turn = new Turn(session).record(new SessionEvent.Measured(session.ref(), value, within));
    if (!within && !step.limits().mayBeOutside()) {
      return turn.say(Say.outsideLimits(value)).end(Outcome.REFUSED);
    }
    turn.say(Say.measured(within));
    if (step.notesRideHeight()) {
      reference(turn, value);
    }
    return turn.close().end(Outcome.ACCEPTED);
  }

  /** The height that later ones are compared with; none any more once the car was lifted. */
  private static void reference(Turn turn, Measure value) {
    Session session = turn.session();
    if (session.car().lifted()) {
      turn.say(Say.noReference());
      return;
    }
    Side side = session.side();
    turn.loadChanged(LoadChange.REFERENCE_CHANGED)
        .record(new SessionEvent.RideHeightNoted(side, value));
    Optional<BigDecimal> limit = session.walk().procedure().rideHeight().flatMap(RideHeight::sides);
    Measure there = session.loads().rideHeights().get(side.opposite());
    if (limit.isPresent() && there != null) {
      BigDecimal apart = value.amount().subtract(there.amount()).abs();
      if (apart.compareTo(limit.get()) > 0) {
        Measure difference = new Measure(apart, value.unit());
        turn.record(new SessionEvent.HeightsApart(side, difference))
            .say(Say.heightsApart(difference, limit.get()));
      }
    }
  }

  private static Decision keep(Session session, HeadMarking marking) {
    return new Turn(session)
        .record(new SessionEvent.MarkingNoted(session.ref(), marking))
        .say(Say.markingKept(marking))
        .prompt()
        .end(Outcome.ACCEPTED);
  }
}
