package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Habit;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.reply.Tell;
import org.undercall.core.reply.WitnessTalk;
import org.undercall.core.term.LoadChange;

/** Questions, notes, pauses, and what was not understood. */
final class TalkRules {
  private static final String DROP = "cancel that";

  private TalkRules() {}

  static Decision begin(Session session, Intent intent, Moment now) {
    if (WitnessRules.lacksTechnician(session)) {
      return StepRules.refuse(session, Missing.TECHNICIAN, WitnessTalk.whoWorks());
    }
    Turn turn = new Turn(session);
    session.account().next().ifPresent(n -> turn.record(new SessionEvent.WorkTakenOver(n)));
    return turn.record(new SessionEvent.CautionsUnderstood())
        .moveTo(session.progress().at())
        .end(Outcome.ACCEPTED);
  }

  static Decision repeat(Session session, Intent intent, Moment now) {
    return answer(session, intent, Prompt.whole(session));
  }

  /** Says more from now on, and at once what is waited for, whole. */
  static Decision more(Session session, Intent intent, Moment now) {
    Habit habit = session.talk().habit();
    return new Turn(session)
        .record(new SessionEvent.TalkSet(habit.level().more()))
        .say(Prompt.whole(session))
        .end(Outcome.ACCEPTED);
  }

  static Decision less(Session session, Intent intent, Moment now) {
    Habit habit = session.talk().habit();
    return new Turn(session)
        .record(new SessionEvent.TalkSet(habit.level().less()))
        .say(Say.lessIsSaid())
        .end(Outcome.ACCEPTED);
  }

  static Decision left(Session session, Intent intent, Moment now) {
    List<Walk.Place> open =
        IntStream.range(0, session.walk().places().size())
            .filter(i -> !session.progress().states().get(i).closed())
            .mapToObj(session.walk().places()::get)
            .toList();
    return answer(session, intent, Tell.left(open));
  }

  static Decision where(Session session, Intent intent, Moment now) {
    int number = session.progress().at() + 1;
    int of = session.walk().places().size();
    Reply place = Tell.where(number, of, session.place());
    return answer(session, intent, place.and(Prompt.of(session)));
  }

  static Decision note(Session session, Intent intent, Moment now) {
    return new Turn(session).record(new SessionEvent.NoteStarted()).prompt().end(Outcome.ACCEPTED);
  }

  /** The next words are what was found, what more is to be done, or a part to be ordered. */
  static Decision finding(Session session, Intent intent, Moment now) {
    Intent.OfFinding said = (Intent.OfFinding) intent;
    return new Turn(session)
        .record(
            new SessionEvent.NoteStarted(
                Optional.of(said.finding()), said.side().or(() -> Optional.of(session.side()))))
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  static Decision noteText(Session session, Intent intent, Moment now) {
    String text = ((Intent.NoteText) intent).text();
    if (text.equals(DROP)) {
      return new Turn(session)
          .record(new SessionEvent.NoteDropped())
          .say(Say.dropped())
          .end(Outcome.ACCEPTED);
    }
    Optional<Pending.Report> report =
        session.talk().pending().map(pending -> (Pending.Report) pending);
    return new Turn(session)
        .record(
            new SessionEvent.NoteKept(
                session.ref(),
                text,
                report.map(Pending.Report::finding),
                report.map(Pending.Report::side)))
        .say(Tell.noteKept(report.map(Pending.Report::finding)))
        .end(Outcome.ACCEPTED);
  }

  static Decision hold(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .drop()
        .record(new SessionEvent.WorkHeld())
        .prompt()
        .end(Outcome.ACCEPTED);
  }

  static Decision resume(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session).record(new SessionEvent.WorkResumed());
    turn.absent(LoadChange.WORK_HELD);
    return turn.say(Prompt.whole(turn.session())).end(Outcome.ACCEPTED);
  }

  static Decision notNow(Session session, Intent intent, Moment now) {
    return new Turn(session)
        .record(StepRules.notNow(session, intent))
        .say(
            session.phase().isReadBack()
                ? Refuse.notReadBack().and(Prompt.whole(session)).and(Ask.wayOut())
                : Refuse.notNow())
        .end(Outcome.REFUSED);
  }

  static Decision answer(Session session, Intent intent, Reply reply) {
    return new Turn(session)
        .record(new SessionEvent.Asked(intent.kind().name()))
        .say(reply)
        .end(Outcome.ANSWERED);
  }
}
