package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.StepRef;

/** Collects the events and the reply of one decision, and knows the session after each event. */
final class Turn {
  private final List<SessionEvent> events = new ArrayList<>();
  private Session session;
  private Reply reply = Reply.SILENCE;

  Turn(Session session) {
    this.session = session;
  }

  /** The session after the events so far. */
  Session session() {
    return session;
  }

  Turn record(SessionEvent event) {
    events.add(event);
    session = session.after(event);
    return this;
  }

  Turn say(Reply more) {
    reply = reply.and(more);
    return this;
  }

  /** Says what the session waits for now. */
  Turn prompt() {
    return say(Prompt.of(session));
  }

  /** Closes the step at hand and goes on to the next. */
  Turn close() {
    Walk.Place place = session.place();
    Session before = session;
    record(new SessionEvent.StepClosed(place.ref()));
    recall(Recall.leftOver(before, session));
    if (place.step().head().changesLoad() && !(place.step() instanceof Step.Load)) {
      loadChanged(LoadChange.STEP_CHANGES_LOAD);
    }
    return moveOn();
  }

  /** Goes to the step that comes next, or says that all are closed. */
  Turn moveOn() {
    Optional<Integer> next = session.next();
    return next.map(this::moveTo).orElseGet(this::prompt);
  }

  /** Goes on after the step at hand was put off or left snug. */
  Turn leave() {
    return Route.afterPutAside(session).map(this::moveTo).orElseGet(this::prompt);
  }

  /** Goes to a step: whatever the way there can change about the load is cancelled first. */
  Turn moveTo(int index) {
    StepRef target = session.walk().places().get(index).ref();
    boolean other = index != session.progress().at();
    if (other) {
      voidStages();
    }
    if (session.loads().isOtherSide(target.side())) {
      loadChanged(LoadChange.OTHER_SIDE_STARTED);
    }
    record(new SessionEvent.StepEntered(target));
    if (session.place().step().head().changesLoad()) {
      loadChanged(LoadChange.STEP_CHANGES_LOAD);
    }
    return say(Prompt.entering(session));
  }

  /** Cancels what was confirmed about the load, if anything was, and says so. */
  Turn loadChanged(LoadChange change) {
    if (session.loads().confirmed().isEmpty()) {
      return this;
    }
    record(new SessionEvent.LoadChanged(change)).say(Say.loadChanged(change, true));
    return session.lacksLoad() ? voidStages() : this;
  }

  /** Brings steps that were put off to mind again. */
  Turn recall(Recall recall) {
    recall.steps().forEach(place -> record(new SessionEvent.StepRecalled(place.ref())));
    return recall.steps().isEmpty() ? this : say(recall.reply());
  }

  /** Nobody listened for a while: what was confirmed or about to be confirmed no longer counts. */
  Turn absent(LoadChange change) {
    if (session.talk().pending().orElse(null) instanceof Pending.Load) {
      record(new SessionEvent.ReadBackDropped());
    }
    return loadChanged(change);
  }

  /** An unfinished tightening that is left or interrupted starts again at its first stage. */
  Turn voidStages() {
    Tightening tightening = session.tightening();
    boolean begun = tightening.stagesClosed() > 0 || tightening.called().isPresent();
    if (begun && !session.state().closed()) {
      record(new SessionEvent.StagesVoided(session.ref())).say(Say.stagesVoided());
    }
    return this;
  }

  Decision end(Outcome outcome) {
    return new Decision(events, reply, outcome);
  }
}
