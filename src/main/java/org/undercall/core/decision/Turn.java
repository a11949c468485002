package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** Collects the events and the reply of one decision, and knows the session after each event. */
final class Turn {
  /** The phases in which nothing is half done, as long as no stage is closed or called. */
  private static final Set<Phase> CAN_BE_LEFT =
      EnumSet.of(
          Phase.DO,
          Phase.MEASURE,
          Phase.HARDWARE,
          Phase.MARKING,
          Phase.BY_HAND,
          Phase.GATE,
          Phase.WAITING,
          Phase.LOAD,
          Phase.HAND_OVER,
          Phase.CLOSED_STEP);

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

  /** A further decision in this turn; of what was asked for until now only the last is said. */
  Turn and(Decision next) {
    reply = reply.without(Prompt.of(session)).and(next.reply());
    next.events().forEach(this::record);
    return this;
  }

  /** Says what the session waits for now. */
  Turn prompt() {
    return say(Prompt.of(session));
  }

  /** Closes the step at hand and goes on to the next; one that needs a witness waits for him. */
  Turn close() {
    return WitnessRules.lacks(session) ? awaitWitness() : closeNow();
  }

  /** The same, and says so. */
  Turn closeAloud() {
    return WitnessRules.lacks(session) ? awaitWitness() : say(Say.stepClosed()).closeNow();
  }

  /** The work is done: what it undoes and moves is so, and it is open until a witness saw it. */
  private Turn awaitWitness() {
    StepRef ref = session.ref();
    List<Walk.Place> undone = new Bonds(session).undoneBy(session.progress().at());
    record(new SessionEvent.WitnessAsked(ref));
    return lapse(undone, ref).moved().prompt();
  }

  /** A step that can change the load, or is a drive, cancels what was confirmed. */
  private Turn moved() {
    Step step = session.place().step();
    boolean moves = step.head().changesLoad() || step.head().bearing().roadTest();
    return moves && !(step instanceof Step.Load) ? loadChanged(LoadChange.STEP_CHANGES_LOAD) : this;
  }

  private Turn closeNow() {
    Walk.Place place = session.place();
    Session before = session;
    int index = session.progress().at();
    List<Walk.Place> undone = new Bonds(session).undoneBy(index);
    record(new SessionEvent.StepClosed(place.ref()));
    lapse(undone, place.ref());
    if (Car.wheels(place) == Wheels.REMOVED) {
      loadChanged(LoadChange.WHEEL_OFF);
    }
    recall(Recall.leftOver(before, session));
    return moved().moveOn();
  }

  /** Goes to the step that comes next, or says that all are closed. */
  Turn moveOn() {
    Optional<Integer> next = session.next();
    boolean onward = next.filter(this::isOnward).isPresent();
    return next.map(n -> onward ? moveTo(n, Prompt::onward) : moveTo(n)).orElseGet(this::prompt);
  }

  /** Whether a step follows the one at hand at once, on the same side. */
  private boolean isOnward(int index) {
    Side side = session.walk().places().get(index).ref().side();
    return index == session.progress().at() + 1 && side == session.side();
  }

  /** Goes on after the step at hand was put off or left snug. */
  Turn leave() {
    return Route.afterPutAside(session).map(this::moveTo).orElseGet(this::prompt);
  }

  /** Goes on with another step while the time of the one at hand runs, if one is ready. */
  Turn goOnWhileWaiting() {
    return Route.whileWaiting(session).map(this::moveTo).orElse(this);
  }

  /** Goes to a wait whose time is over, unless something is half done at the step at hand. */
  Turn callBack() {
    boolean free =
        CAN_BE_LEFT.contains(session.phase())
            && !session.tightening().begun()
            && !Route.isCalledBack(session, session.progress().at());
    return free
        ? Route.calledBack(session).map(index -> moveTo(index, Prompt::of)).orElse(this)
        : this;
  }

  /** Goes to a step: whatever the way there can change about the load is cancelled first. */
  Turn moveTo(int index) {
    return moveTo(index, Prompt::entering);
  }

  /** Goes to a step, and says this of it. */
  Turn moveTo(int index, Function<Session, Reply> prompt) {
    StepRef target = session.walk().places().get(index).ref();
    boolean other = index != session.progress().at();
    if (other) {
      interrupt();
    }
    if (session.loads().isOtherSide(target.side())) {
      otherSide(target.side());
    }
    record(new SessionEvent.StepEntered(target));
    if (session.place().step().head().changesLoad()) {
      loadChanged(LoadChange.STEP_CHANGES_LOAD);
    }
    return say(prompt.apply(session));
  }

  /** Cancels what was confirmed about the load, if anything was, and says so. */
  Turn loadChanged(LoadChange change) {
    if (session.loads().confirmed().isEmpty()) {
      return this;
    }
    record(new SessionEvent.LoadChanged(change)).say(Say.loadChanged(change, true));
    return session.lacksLoad() ? interrupt() : this;
  }

  /** The work goes to another side: what was confirmed is to be confirmed there. */
  private void otherSide(Side side) {
    Optional<LoadCondition> confirmed =
        session.loads().confirmed().values().stream().map(Loads.Confirmed::condition).findFirst();
    if (confirmed.isPresent()) {
      record(new SessionEvent.LoadChanged(LoadChange.OTHER_SIDE_STARTED))
          .say(Say.otherSide(confirmed.get(), side));
    }
    if (confirmed.isPresent() && session.lacksLoad()) {
      interrupt();
    }
  }

  /** Brings steps that were put off to mind again. */
  Turn recall(Recall recall) {
    recall.steps().forEach(place -> record(new SessionEvent.StepRecalled(place.ref())));
    return recall.steps().isEmpty() ? this : say(recall.reply());
  }

  /** Nobody listened for a while: what was confirmed or about to be confirmed no longer counts. */
  Turn absent(LoadChange change) {
    if (session.talk().pending().orElse(null) instanceof Pending.Load) {
      drop();
    }
    return loadChanged(change).interrupt();
  }

  /** A tightening that is left or interrupted is not gone on with as if nothing had been. */
  Turn interrupt() {
    if (session.talk().pending().orElse(null) instanceof Pending.OfStage) {
      drop();
    }
    boolean angle = session.atAngle() && !session.tightening().interrupted();
    boolean called = session.tightening().called().isPresent();
    if ((angle || called) && !session.state().closed()) {
      record(new SessionEvent.TighteningInterrupted(session.ref()));
      say(angle ? Say.interrupted() : Reply.SILENCE);
    }
    return this;
  }

  /** Drops what waits to be read back, if anything does; closings that were doubted lapse. */
  Turn drop() {
    Optional<Pending> pending = session.talk().pending();
    if (pending.isPresent()) {
      record(new SessionEvent.ReadBackDropped());
    }
    if (pending.orElse(null) instanceof Pending.Later later) {
      List<Walk.Place> places = later.steps().stream().map(this::place).toList();
      lapse(places, later.because());
    }
    return this;
  }

  /** Closings that no longer hold because of a step are open again, and named. */
  Turn lapse(List<Walk.Place> places, StepRef because) {
    List<Walk.Place> closed = closed(places);
    closed.forEach(p -> record(new SessionEvent.ClosingLapsed(p.ref(), because)));
    if (closed.isEmpty()) {
      return this;
    }
    say(Say.lapsed(closed));
    return closed.stream().anyMatch(p -> notesRideHeight(p.step()))
        ? loadChanged(LoadChange.REFERENCE_CHANGED)
        : this;
  }

  /** Asks whether closings still hold after a step was opened again. */
  Turn doubt(List<Walk.Place> places, StepRef because) {
    List<Walk.Place> closed = closed(places);
    closed.forEach(p -> record(new SessionEvent.ClosingDoubted(p.ref(), because)));
    return closed.isEmpty() ? this : prompt();
  }

  private static boolean notesRideHeight(Step step) {
    return step instanceof Step.Measure measure && measure.notesRideHeight();
  }

  private List<Walk.Place> closed(List<Walk.Place> places) {
    return places.stream()
        .filter(p -> session.progress().states().get(session.walk().indexOf(p.ref())).closed())
        .toList();
  }

  private Walk.Place place(StepRef ref) {
    return session.walk().places().get(session.walk().indexOf(ref));
  }

  /** What happened so far and then a decision about it. */
  Decision then(Decision next) {
    List<SessionEvent> all = new ArrayList<>(events);
    all.addAll(next.events());
    return new Decision(all, reply.and(next.reply()), next.outcome());
  }

  /** Ends with a refusal; what still waits to be read back is said again, with the way out. */
  Decision refused() {
    boolean waits = session.phase().isReadBack();
    return (waits ? say(Prompt.inFull(Prompt.of(session))).say(Ask.wayOut()) : this)
        .end(Outcome.REFUSED);
  }

  Decision end(Outcome outcome) {
    return new Decision(events, reply, outcome);
  }
}
