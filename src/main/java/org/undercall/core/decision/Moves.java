package org.undercall.core.decision;

import java.util.Optional;
import java.util.function.Predicate;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Say;
import org.undercall.core.term.LoadChange;

/** Moving through the walk, and things that move the car. */
final class Moves {
  private Moves() {}

  static Decision goTo(Session session, Intent intent, Moment now) {
    int index = ((Intent.OfStep) intent).number() - 1;
    return refuseIfNoStep(session, index)
        .orElseGet(() -> new Turn(session).moveTo(index).end(Outcome.ACCEPTED));
  }

  static Decision back(Session session, Intent intent, Moment now) {
    int index = session.progress().at() - 1;
    return refuseIfNoStep(session, index)
        .orElseGet(() -> new Turn(session).moveTo(index).end(Outcome.ACCEPTED));
  }

  static Decision otherSide(Session session, Intent intent, Moment now) {
    Intent.OfSide side = (Intent.OfSide) intent;
    Optional<Integer> index = Route.onSide(session, side.side());
    if (index.isEmpty()) {
      return new Turn(session)
          .record(StepRules.notNow(session, intent))
          .say(Refuse.nothingOpen(side.side()))
          .end(Outcome.REFUSED);
    }
    return new Turn(session).moveTo(index.get()).end(Outcome.ACCEPTED);
  }

  /** The car or the jack moved: always recorded, and everything confirmed is cancelled. */
  static Decision loadChanged(Session session, Intent intent, Moment now) {
    LoadChange change =
        switch (intent.kind()) {
          case CAR_RAISED -> LoadChange.CAR_RAISED;
          case CAR_LOWERED -> LoadChange.CAR_LOWERED;
          default -> LoadChange.JACK_MOVED;
        };
    Turn turn = interrupted(session, Pending.Load.class::isInstance);
    boolean cancelled = !session.loads().confirmed().isEmpty();
    turn.record(new SessionEvent.LoadChanged(change)).say(Say.loadChanged(change, cancelled));
    if (turn.session().lacksLoad()) {
      turn.interrupt();
    }
    return turn.end(Outcome.ACCEPTED);
  }

  /**
   * Something slips or falls, or a stop is called for: whatever was about to be confirmed is
   * dropped, what was confirmed is cancelled, and the work is held until the technician goes on.
   */
  static Decision danger(Session session, Intent intent, Moment now) {
    Turn turn = interrupted(session, pending -> true);
    turn.record(new SessionEvent.LoadChanged(LoadChange.DANGER_CALLED));
    turn.interrupt();
    boolean working = turn.session().talk().mode() == Talk.Mode.WORKING;
    if (working) {
      turn.record(new SessionEvent.WorkHeld());
    }
    return turn.say(Say.danger(turn.session().phase() != Phase.BRIEFING)).end(Outcome.ACCEPTED);
  }

  /** Drops the note that was begun, and what was read back if it falls with the load. */
  private static Turn interrupted(Session session, Predicate<Pending> falls) {
    Turn turn = new Turn(session);
    boolean noting = session.talk().mode() == Talk.Mode.NOTING;
    if (!noting && session.talk().pending().filter(falls).isPresent()) {
      turn.drop();
    }
    return noting ? turn.record(new SessionEvent.NoteDropped()) : turn;
  }

  static Optional<Decision> refuseIfNoStep(Session session, int index) {
    if (index >= 0 && index < session.walk().places().size()) {
      return Optional.empty();
    }
    return Optional.of(
        new Turn(session)
            .record(new SessionEvent.NotNow("NO_SUCH_STEP", session.phase().name()))
            .say(Refuse.noSuchStep())
            .end(Outcome.REFUSED));
  }
}
