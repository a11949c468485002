package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Step;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.StepRef;

/** What is done with steps that are no fasteners, and with steps as such. */
final class StepRules {
  private StepRules() {}

  static Decision done(Session session, Intent intent, Moment now) {
    Step.Do step = (Step.Do) session.place().step();
    Turn turn = new Turn(session);
    if (step.check().isPresent()) {
      turn.record(new SessionEvent.WorkDone(session.ref())).prompt();
    } else {
      turn.say(Say.stepClosed()).close();
    }
    return turn.end(Outcome.ACCEPTED);
  }

  static Decision passed(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .record(new SessionEvent.CheckAnswered(session.ref(), true))
        .say(Say.stepClosed())
        .close()
        .end(Outcome.ACCEPTED);
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
    return new Turn(session).say(Say.stepClosed()).close().end(Outcome.ACCEPTED);
  }

  static Decision loaded(Session session, Intent intent, Moment now) {
    LoadCondition needed = Session.needs(session.place());
    if (!session.loads().holds(session.side(), needed)) {
      return refuse(session, missing(needed), Refuse.load(needed, session.side()));
    }
    return new Turn(session).say(Say.stepClosed()).close().end(Outcome.ACCEPTED);
  }

  static Decision handedOver(Session session, Intent intent, Moment now) {
    Step.HandOver step = (Step.HandOver) session.place().step();
    return new Turn(session)
        .record(new SessionEvent.HandedOver(session.ref(), step.due()))
        .say(Say.stepClosed())
        .close()
        .end(Outcome.ACCEPTED);
  }

  static Decision putOff(Session session, Intent intent, Moment now) {
    Intent.PutOff putOff = (Intent.PutOff) intent;
    return new Turn(session)
        .voidStages()
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
    StepRef ref = session.walk().places().get(index).ref();
    return new Turn(session)
        .record(new SessionEvent.StepReopened(ref))
        .say(Say.reopened())
        .moveTo(index)
        .end(Outcome.ACCEPTED);
  }

  /** Refuses to close the step at hand, naming what the phase waits for. */
  static Decision missing(Session session, Intent intent, Moment now) {
    LoadCondition needed = Session.needs(session.place());
    return switch (session.phase()) {
      case BRIEFING -> refuse(session, Missing.CAUTIONS_UNDERSTOOD, Refuse.cautions());
      case CHECK -> refuse(session, Missing.CHECK_ANSWER, Refuse.checkNotAnswered());
      case MEASURE -> refuse(session, Missing.MEASURED_VALUE, Refuse.notMeasured());
      case HARDWARE -> refuse(session, Missing.NEW_HARDWARE, Refuse.hardware());
      case MARKING -> refuse(session, Missing.HEAD_MARKING, Refuse.marking());
      case GATE, LOAD -> refuse(session, missing(needed), Refuse.load(needed, session.side()));
      case TORQUE, ANGLE ->
          refuse(session, Missing.VALUE_CALLED, Refuse.valueNotCalled(session.stage()));
      case LOAD_READ_BACK -> refuse(session, Missing.LOAD_READ_BACK, Refuse.notReadBack());
      default -> refuse(session, Missing.READ_BACK, Refuse.notReadBack());
    };
  }

  static Decision refuse(Session session, Missing missing, Reply reply) {
    return new Turn(session)
        .record(new SessionEvent.CloseRefused(session.ref(), missing))
        .say(reply)
        .say(session.phase() == Phase.LOAD_READ_BACK ? Prompt.of(session) : Reply.SILENCE)
        .end(Outcome.REFUSED);
  }

  static Missing missing(LoadCondition needed) {
    return needed == LoadCondition.FULL_DROOP ? Missing.FULL_DROOP : Missing.RIDE_HEIGHT;
  }

  static SessionEvent notNow(Session session, Intent intent) {
    return new SessionEvent.NotNow(intent.kind().name(), session.phase().name());
  }
}
