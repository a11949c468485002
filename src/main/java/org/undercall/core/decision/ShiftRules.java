package org.undercall.core.decision;

import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.reply.ShiftTalk;
import org.undercall.core.term.LoadChange;

/** The work goes from one technician to the next, who names himself and hears the cautions. */
final class ShiftRules {
  private ShiftRules() {}

  /** What a break cancels is cancelled, and it is told how the work stands. */
  static Decision handOver(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session).drop().absent(LoadChange.WORK_HELD);
    return turn.record(new SessionEvent.WorkHandedOver(session.ref()))
        .say(Standing.of(turn.session()).spoken(true))
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  static Decision state(Session session, Intent intent, Moment now) {
    return TalkRules.answer(
        session, intent, Standing.of(session).spoken(true).and(Prompt.of(session)));
  }

  static Decision named(Session session, Intent intent, Moment now) {
    return JobRules.told(session, intent, now);
  }

  static Decision noName(Session session, Intent intent, Moment now) {
    return StepRules.refuse(session, Missing.TECHNICIAN, ShiftTalk.noName());
  }

  /** The same technician is back; the cautions are known, and nobody took over. */
  static Decision goOn(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session).record(new SessionEvent.WorkResumed());
    turn.say(ShiftTalk.nobodyTookOver()).absent(LoadChange.WORK_HELD);
    return turn.say(Prompt.whole(turn.session())).end(Outcome.ACCEPTED);
  }
}
