package org.undercall.core.decision;

import java.time.Duration;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Timing;
import org.undercall.core.term.LoadChange;

/** How long it took so far, the reminder in a long quiet, and a clock that was set. */
final class TimeRules {
  private static final long MILLIS = 1000;

  /** A machine that slept for less than this keeps its confirmed load, as after a restart. */
  private static final long SHORT_SLEEP = Duration.ofMinutes(2).toMillis();

  private TimeRules() {}

  static Decision step(Session session, Intent intent, Moment now) {
    Spent spent = session.stopwatch().spent(session, now).getOrDefault(session.ref(), Spent.NONE);
    int number = session.progress().at() + 1;
    return TalkRules.answer(
        session, intent, Timing.step(number, spent.working() / MILLIS, spent.held() / MILLIS));
  }

  static Decision work(Session session, Intent intent, Moment now) {
    Spent all =
        session.stopwatch().spent(session, now).values().stream().reduce(Spent.NONE, Spent::plus);
    return TalkRules.answer(
        session, intent, Timing.work(all.working() / MILLIS, all.held() / MILLIS));
  }

  /**
   * Asks a question once more that was not answered; later says that the program still listens, and
   * for what. Asked by the clock, never spoken.
   */
  static Decision remind(Session session, Intent intent, Moment now) {
    long quiet = ((Intent.NothingHeard) intent).millis() / MILLIS;
    boolean question = session.phase().asks() && session.stopwatch().reminders() == 0;
    return new Turn(session)
        .record(new SessionEvent.Reminded(quiet))
        .say(
            question
                ? questionAgain(session)
                : Timing.stillHere(session.progress().at() + 1, waitedFor(session.phase())))
        .end(Outcome.ACCEPTED);
  }

  /** The question that was not answered, shorter; after the cautions only what is to be said. */
  private static Reply questionAgain(Session session) {
    return session.phase() == Phase.BRIEFING
        ? Ask.askCautions()
        : Prompt.of(session).in(session.talk().habit().shorter());
  }

  /**
   * The wall clock was set, or the machine slept. Running timers keep the time they had left by the
   * steady clock. After a sleep the load is not known: nobody would have heard the jack.
   */
  static Decision jump(Session session, Intent intent, Moment now) {
    Intent.ClockJumped jump = (Intent.ClockJumped) intent;
    Turn turn = new Turn(session);
    if (jump.millis() != 0) {
      turn.record(new SessionEvent.ClockJumped(jump.millis()))
          .say(Timing.clockSet(jump.millis() / MILLIS, !session.timers().running().isEmpty()));
    }
    if (jump.asleepMillis() > SHORT_SLEEP) {
      turn.absent(LoadChange.PROGRAM_ASLEEP);
    }
    boolean dropped =
        turn.session().talk().pending().isEmpty() && session.talk().pending().isPresent();
    return turn.say(dropped ? Prompt.of(turn.session()) : Reply.SILENCE).end(Outcome.ACCEPTED);
  }

  private static Timing.WaitedFor waitedFor(Phase phase) {
    return switch (phase) {
      case BRIEFING -> Timing.WaitedFor.CAUTIONS;
      case DO -> Timing.WaitedFor.WORK;
      case CHECK -> Timing.WaitedFor.CHECK;
      case MEASURE -> Timing.WaitedFor.VALUE;
      case HARDWARE -> Timing.WaitedFor.HARDWARE;
      case MARKING -> Timing.WaitedFor.MARKING;
      case GATE, LOAD -> Timing.WaitedFor.LOAD;
      case BY_HAND, RUN_DOWN, TORQUE -> Timing.WaitedFor.TORQUE;
      case TROUBLE -> Timing.WaitedFor.TROUBLE;
      case BEGUN, ANGLE -> Timing.WaitedFor.ANGLE;
      case WAITING -> Timing.WaitedFor.TIMER;
      case HAND_OVER -> Timing.WaitedFor.HAND_OVER;
      case WITNESS -> Timing.WaitedFor.WITNESS;
      case JOB_READ_BACK, READ_BACK, LOAD_READ_BACK, WITNESS_READ_BACK ->
          Timing.WaitedFor.READ_BACK;
      case NOTING -> Timing.WaitedFor.NOTE;
      case ALL_CLOSED, ON_HOLD, SHIFT_CHANGE, ENDED -> Timing.WaitedFor.END;
      case CLOSED_STEP -> Timing.WaitedFor.OTHER_STEP;
    };
  }
}
