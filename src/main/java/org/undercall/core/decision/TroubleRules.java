package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.Remedy;
import org.undercall.core.term.StepRef;

/**
 * What is done when something went wrong. It is read back; then the step waits until it is settled,
 * and a fastener starts again from its first stage.
 */
final class TroubleRules {
  private TroubleRules() {}

  /**
   * Something went wrong at the step at hand, or at the fastener whose torque just gave a hint; of
   * a set at the one named, or the one at hand.
   */
  static Decision called(Session session, Intent intent, Moment now) {
    Intent.OfTrouble said = (Intent.OfTrouble) intent;
    Optional<StepRef> hinted = session.talk().hinted();
    if (hinted.isEmpty() && session.state().closed()) {
      return TalkRules.notNow(session, intent, now);
    }
    Turn turn = new Turn(session).drop();
    StepRef step = hinted.orElse(session.ref());
    Optional<Fastener> fastener = fastener(session, step);
    Optional<Integer> position =
        hinted.isPresent()
            ? said.position().filter(n -> n != 1 || fastener.get().set().several())
            : position(turn.session(), said);
    int most = fastener.map(f -> f.set().count()).orElse(1);
    if (position.filter(n -> n > most).isPresent()) {
      return turn.then(
          StepRules.refuse(turn.session(), Missing.POSITION, Refuse.noSuchPosition(most)));
    }
    return turn.record(new SessionEvent.TroubleCalled(step, said.trouble(), position))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** The same where nothing can go wrong at the step at hand. */
  static Decision afterHint(Session session, Intent intent, Moment now) {
    return session.talk().hinted().isPresent()
        ? called(session, intent, now)
        : TalkRules.notNow(session, intent, now);
  }

  private static Optional<Integer> position(Session session, Intent.OfTrouble said) {
    Optional<Fastener> set = fastener(session).filter(f -> f.set().several());
    if (set.isEmpty()) {
      return said.position().filter(n -> n != 1);
    }
    boolean kit =
        switch (said.trouble()) {
          case WRONG_HARDWARE, MARKINGS_DIFFER, PART_MISSING -> true;
          default -> false;
        };
    return said.position()
        .or(
            () ->
                kit
                    ? Optional.empty()
                    : session.tightening().pass().next(set.get().set().sequence()));
  }

  /** Keeps what went wrong; a fastener that was closed is opened for it. */
  static Decision keep(Session session, Pending.Wrong wrong) {
    Turn turn = new Turn(session);
    SessionEvent noted =
        new SessionEvent.TroubleNoted(wrong.step(), wrong.trouble(), wrong.position());
    if (wrong.step().equals(session.ref()) && !session.state().closed()) {
      return turn.record(noted).interrupt().prompt().end(Outcome.ACCEPTED);
    }
    int index = session.walk().indexOf(wrong.step());
    List<Walk.Place> doubtful = new Bonds(session).doubtfulAfter(index);
    StepRules.open(turn, index).moveTo(index, s -> Reply.SILENCE).record(noted);
    return turn.say(Prompt.entering(turn.session()))
        .doubt(doubtful, wrong.step())
        .end(Outcome.ACCEPTED);
  }

  /** New hardware is there: it starts again. */
  static Decision newHardware(Session session, Intent intent, Moment now) {
    Optional<Decision> missing = FastenRules.partMissing(session);
    if (missing.isPresent()) {
      return missing.get();
    }
    boolean all = session.state().wrong().orElseThrow().position().isEmpty();
    Optional<Fastener> fastener = fastener(session);
    int count = all ? fastener.map(f -> f.set().count()).orElse(1) : 1;
    int said = intent instanceof Intent.Counted counted ? counted.number() : 1;
    return fastener.isEmpty() || said == count
        ? settled(session, Remedy.NEW_HARDWARE)
        : StepRules.refuse(session, Missing.COUNT, Refuse.countHardware(fastener.get(), count));
  }

  /** It was repaired, or the part replaced; what is used once is only renewed. */
  static Decision repaired(Session session, Intent intent, Moment now) {
    boolean ofSet = session.state().wrong().flatMap(StepState.Wrong::position).isPresent();
    Optional<Fastener> once = fastener(session).filter(f -> ofSet && f.part().oneTimeUse());
    return once.isPresent()
        ? StepRules.refuse(session, Missing.NEW_HARDWARE, Refuse.countHardware(once.get(), 1))
        : settled(session, Remedy.REPAIRED);
  }

  private static Decision settled(Session session, Remedy remedy) {
    return new Turn(session)
        .record(new SessionEvent.TroubleSettled(session.ref(), remedy))
        .say(Say.settled(remedy))
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  private static Optional<Fastener> fastener(Session session) {
    return fastener(session, session.ref());
  }

  private static Optional<Fastener> fastener(Session session, StepRef ref) {
    Walk.Place place = session.walk().places().get(session.walk().indexOf(ref));
    return place.step() instanceof Step.Fasten fasten
        ? Optional.of(fasten.fastener())
        : Optional.empty();
  }
}
