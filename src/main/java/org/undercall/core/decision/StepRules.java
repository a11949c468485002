package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.reply.WitnessTalk;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.OrderReason;

/** What is done with steps that are no fasteners, and with steps as such. */
final class StepRules {
  private StepRules() {}

  static Decision done(Session session, Intent intent, Moment now) {
    return tooEarly(session).orElseGet(() -> done(session));
  }

  private static Decision done(Session session) {
    Step.Do step = (Step.Do) session.place().step();
    Turn turn = new Turn(session);
    if (step.check().isPresent()) {
      turn.record(new SessionEvent.WorkDone(session.ref())).prompt();
    } else {
      turn.closeAloud();
    }
    return turn.end(Outcome.ACCEPTED);
  }

  static Decision passed(Session session, Intent intent, Moment now) {
    return tooEarly(session)
        .orElseGet(
            () ->
                new Turn(session)
                    .record(new SessionEvent.CheckAnswered(session.ref(), true))
                    .closeAloud()
                    .end(Outcome.ACCEPTED));
  }

  static Decision failed(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .record(new SessionEvent.CheckAnswered(session.ref(), false))
        .say(Say.checkFailed())
        .end(Outcome.ACCEPTED);
  }

  static Decision waited(Session session, Intent intent, Moment now) {
    if (!session.timers().ended().contains(session.ref())) {
      return refuse(session, Missing.TIME, Refuse.timeNotOver());
    }
    return closed(session);
  }

  static Decision loaded(Session session, Intent intent, Moment now) {
    LoadCondition needed = Session.needs(session.place());
    if (!session.loads().holds(session.side(), needed)) {
      return refuse(session, missing(needed), Refuse.load(needed, session.side()));
    }
    return closed(session);
  }

  static Decision handedOver(Session session, Intent intent, Moment now) {
    Step.HandOver step = (Step.HandOver) session.place().step();
    return tooEarly(session)
        .orElseGet(
            () ->
                new Turn(session)
                    .record(new SessionEvent.HandedOver(session.ref(), step.due()))
                    .closeAloud()
                    .end(Outcome.ACCEPTED));
  }

  private static Decision closed(Session session) {
    return tooEarly(session).orElseGet(() -> new Turn(session).closeAloud().end(Outcome.ACCEPTED));
  }

  static Decision putOff(Session session, Intent intent, Moment now) {
    Intent.PutOff putOff = (Intent.PutOff) intent;
    return new Turn(session)
        .interrupt()
        .record(new SessionEvent.StepPutOff(session.ref(), putOff.reason()))
        .say(Say.putOff(putOff.reason()))
        .leave()
        .end(Outcome.ACCEPTED);
  }

  static Decision reopen(Session session, Intent intent, Moment now) {
    int index = intent instanceof Intent.OfStep of ? of.number() - 1 : session.progress().at();
    Optional<Decision> noStep = Moves.refuseIfNoStep(session, index);
    if (noStep.isPresent()) {
      return noStep.get();
    }
    if (!session.progress().states().get(index).closed()) {
      return new Turn(session)
          .record(notNow(session, intent))
          .say(Refuse.notClosed())
          .end(Outcome.REFUSED);
    }
    return reopen(new Turn(session), index).end(Outcome.ACCEPTED);
  }

  private static Turn reopen(Turn opened, int index) {
    List<Walk.Place> doubtful = new Bonds(opened.session()).doubtfulAfter(index);
    Turn turn = open(opened, index).moveTo(index);
    return turn.doubt(doubtful, turn.session().ref());
  }

  /** Opens a closed step again, and what falls with it. */
  static Turn open(Turn opened, int index) {
    Session session = opened.session();
    Walk.Place place = session.walk().places().get(index);
    Bonds bonds = new Bonds(session);
    boolean tight = Applied.mayBeTight(session, place.ref());
    Turn turn =
        opened
            .record(
                tight
                    ? new SessionEvent.ReopenedTight(place.ref())
                    : new SessionEvent.StepReopened(place.ref()))
            .say(Say.reopened(place.step(), tight))
            .lapse(bonds.fallingWith(index), place.ref());
    if (place.step() instanceof Step.Measure measure && measure.notesRideHeight()) {
      turn.loadChanged(LoadChange.REFERENCE_CHANGED);
    }
    return turn;
  }

  /** Says why a step is closed before those that come first; read back before it counts. */
  static Decision outOfOrder(Session session, Intent intent, Moment now) {
    if (wheelOff(session).isPresent() || tooEarly(session).isEmpty()) {
      return wheelOff(session).orElseGet(() -> TalkRules.notNow(session, intent, now));
    }
    OrderReason reason = ((Intent.OutOfOrder) intent).reason();
    return new Turn(session)
        .record(new SessionEvent.OutOfOrderCalled(session.ref(), reason))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** The refusal to close the step at hand before what comes first; empty if nothing is missing. */
  static Optional<Decision> tooEarly(Session session) {
    Optional<Decision> off = wheelOff(session);
    if (off.isPresent() || session.state().outOfOrder().isPresent()) {
      return off;
    }
    Step step = session.place().step();
    boolean onGround = Bonds.isWheel(step) || step.head().bearing().roadTest();
    if (onGround && session.car().isUp()) {
      return Optional.of(refuse(session, Missing.CAR_ON_WHEELS, Refuse.carRaised()));
    }
    Bonds bonds = new Bonds(session);
    List<Walk.Place> open = bonds.openBefore(session.progress().at());
    if (!open.isEmpty()) {
      return Optional.of(refuse(session, Missing.STEPS_BEFORE, Refuse.stepsBefore(open)));
    }
    List<Walk.Place> curing = bonds.curingBefore(session.progress().at());
    return curing.isEmpty()
        ? Optional.empty()
        : Optional.of(refuse(session, Missing.TIME, Refuse.stillCures(curing)));
  }

  /** The refusal to tighten a wheel that is off, or to drive on it. */
  private static Optional<Decision> wheelOff(Session session) {
    Step step = session.place().step();
    boolean onWheel = Bonds.isWheel(step) || step.head().bearing().roadTest();
    return onWheel && !session.car().hasOn(session.place().wheels())
        ? Optional.of(refuse(session, Missing.WHEEL_ON, Refuse.wheelOff()))
        : Optional.empty();
  }

  /** Refuses to close the step at hand, naming what the phase waits for. */
  static Decision missing(Session session, Intent intent, Moment now) {
    LoadCondition needed = Session.needs(session.place());
    boolean otherSide = intent instanceof Intent.OfSide of && of.side() != session.side();
    return switch (session.phase()) {
      case BRIEFING -> refuse(session, Missing.CAUTIONS_UNDERSTOOD, Refuse.cautions());
      case CHECK -> refuse(session, Missing.CHECK_ANSWER, Refuse.checkNotAnswered());
      case MEASURE -> refuse(session, Missing.MEASURED_VALUE, Refuse.notMeasured());
      case HARDWARE -> refuse(session, Missing.NEW_HARDWARE, Refuse.hardware());
      case MARKING -> refuse(session, Missing.HEAD_MARKING, Refuse.marking());
      case GATE, LOAD ->
          refuse(
              session,
              missing(needed),
              otherSide
                  ? Refuse.otherSide(((Intent.OfSide) intent).side(), session.side())
                  : Refuse.load(needed, session.side()));
      case TROUBLE ->
          refuse(
              session,
              Missing.REMEDY,
              Refuse.trouble(session.state().wrong().orElseThrow().trouble()));
      case BY_HAND ->
          refuse(
              session,
              Missing.RUN_IN_BY_HAND,
              Refuse.byHand(FastenRules.fastener(session).set().count()));
      case RUN_DOWN ->
          refuse(
              session, Missing.RUN_DOWN, Refuse.runDown((Stage.TorqueStage) session.specified()));
      case BEGUN ->
          session.tightening().turned().isPresent()
              ? refuse(session, Missing.TURNED_SO_FAR, Refuse.turnedTooFar())
              : refuse(session, Missing.TURNED_SO_FAR, Refuse.turnedSoFar());
      case TORQUE, ANGLE ->
          refuse(session, Missing.VALUE_CALLED, Refuse.valueNotCalled(session.stage()));
      case WITNESS -> refuse(session, Missing.WITNESS, WitnessTalk.first());
      case LOAD_READ_BACK -> notReadBack(session, Missing.LOAD_READ_BACK);
      case WITNESS_READ_BACK -> notReadBack(session, Missing.WITNESS);
      default -> notReadBack(session, Missing.READ_BACK);
    };
  }

  private static Decision notReadBack(Session session, Missing missing) {
    return new Turn(session)
        .record(new SessionEvent.CloseRefused(session.ref(), missing))
        .say(Refuse.notReadBack())
        .refused();
  }

  static Decision refuse(Session session, Missing missing, Reply reply) {
    return new Turn(session)
        .record(new SessionEvent.CloseRefused(session.ref(), missing))
        .say(reply)
        .refused();
  }

  static Missing missing(LoadCondition needed) {
    return needed == LoadCondition.FULL_DROOP ? Missing.FULL_DROOP : Missing.RIDE_HEIGHT;
  }

  static SessionEvent notNow(Session session, Intent intent) {
    return new SessionEvent.NotNow(intent.kind().name(), session.phase().name());
  }
}
