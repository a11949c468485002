package org.undercall.core.decision;

import java.math.BigDecimal;
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
import org.undercall.core.procedure.Reuse;
import org.undercall.core.reply.Renew;
import org.undercall.core.reply.Say;
import org.undercall.core.term.ReuseBy;

/**
 * A used part in place of a new one: measured or its uses counted, read back, and only then fitted
 * again. Whatever is in doubt asks for a new one.
 */
final class ReuseRules {
  private ReuseRules() {}

  /** A length, or how often it was used, called for the used part. */
  static Decision called(Session session, Intent intent, Moment now) {
    Intent.OfNumber said = (Intent.OfNumber) intent;
    Fastener fastener = FastenRules.fastener(session);
    Optional<Reuse> limit = fastener.part().reuse().filter(l -> l.by() == by(said.kind()));
    if (limit.isEmpty()) {
      return StepRules.refuse(session, Missing.NEW_HARDWARE, Renew.onlyNew(fastener));
    }
    if (said.unit().filter(unit -> unit != SpokenUnit.MILLIMETRES).isPresent()) {
      return StepRules.refuse(session, Missing.OTHER_UNIT, Renew.inMillimetres());
    }
    BigDecimal value = said.number().value();
    boolean words = said.number().style() == SpokenNumber.Style.WORDS;
    boolean length = limit.get().by() == ReuseBy.LENGTH;
    if (length && words && ConfusableNumbers.isConfusable(value)) {
      return FastenRules.digitByDigit(session, value);
    }
    int least = session.state().uses().least();
    boolean fewer = !length && value.compareTo(BigDecimal.valueOf(least)) < 0;
    if (fewer || !limit.get().permits(value)) {
      return new Turn(session)
          .record(new SessionEvent.ReuseRefused(session.ref(), limit.get().by(), value))
          .say(fewer ? Renew.usedMore(least) : Renew.refused(fastener, limit.get(), value))
          .refused();
    }
    return new Turn(session)
        .record(new SessionEvent.ReuseCalled(session.ref(), limit.get().by(), value))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** It was called again: the same value is kept, another one is taken as if just called. */
  static Decision again(Session session, Intent intent, Moment now) {
    Intent.OfNumber said = (Intent.OfNumber) intent;
    if (!(session.talk().pending().orElseThrow() instanceof Pending.Reuse reuse)) {
      return StepRules.missing(session, intent, now);
    }
    boolean unit = said.unit().filter(u -> u != SpokenUnit.MILLIMETRES).isEmpty();
    boolean same =
        by(said.kind()) == reuse.by() && said.number().value().compareTo(reuse.value()) == 0;
    if (same && unit) {
      return keep(session, reuse);
    }
    Turn turn = new Turn(session).drop();
    return turn.then(called(turn.session(), intent, now));
  }

  static Decision keep(Session session, Pending.Reuse reuse) {
    return new Turn(session)
        .record(new SessionEvent.ReuseNoted(reuse.step(), reuse.by(), reuse.value()))
        .say(Say.kept())
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  /** Says why a new part is needed. */
  static Decision why(Session session, Intent intent, Moment now) {
    return TalkRules.answer(session, intent, Renew.why(FastenRules.fastener(session).part()));
  }

  /** What is called by an intent. */
  static ReuseBy by(IntentKind kind) {
    return kind == IntentKind.HARDWARE_LENGTH ? ReuseBy.LENGTH : ReuseBy.USES;
  }

  /** The intent with which it is called. */
  static IntentKind kind(ReuseBy by) {
    return by == ReuseBy.LENGTH ? IntentKind.HARDWARE_LENGTH : IntentKind.HARDWARE_USES;
  }
}
