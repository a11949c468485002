package org.undercall.core.decision;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.reply.Habit;
import org.undercall.core.reply.JobTalk;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.reply.Timing;
import org.undercall.core.term.LoadChange;

/** Decides what becomes of an intent. It changes nothing: the events do, when they are applied. */
public final class Decider {
  /** Who said nothing for so long is answered whole: a choice of this program. */
  private static final Duration LONG_AGO = Duration.ofMinutes(15);

  private Decider() {}

  /** What becomes of an intent in a session. A load confirmed too long ago is cancelled first. */
  public static Decision decide(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session);
    if (session.isLoadOld(now)) {
      turn.loadChanged(LoadChange.TOO_OLD);
    }
    Session fresh = turn.session();
    Decision decision = Table.rule(fresh.phase(), intent.kind()).decide(fresh, intent, now);
    Habit habit = session.talk().habit();
    return spoken(
        turn.then(TimerRules.withCures(fresh, decision, now)),
        session.stopwatch().sinceHeard(now).compareTo(LONG_AGO) < 0 ? habit : habit.whole());
  }

  /** A decision with its reply as it is said to somebody with a habit. */
  private static Decision spoken(Decision decision, Habit habit) {
    return new Decision(decision.events(), decision.reply().in(habit), decision.outcome());
  }

  /** The intents that may be heard now. */
  public static Set<IntentKind> heard(Session session) {
    return heard(session.phase());
  }

  /** The intents that may be heard in a phase. */
  public static Set<IntentKind> heard(Phase phase) {
    return Table.heard(phase);
  }

  /** The intents that may be heard in a phase and can come to more than a refusal. */
  public static Set<IntentKind> offered(Phase phase) {
    return Table.offered(phase);
  }

  /** What the session waits for, in the words it is asked with, whole. */
  public static Reply prompt(Session session) {
    return session.phase() == Phase.ENDED ? Reply.SILENCE : Prompt.of(session);
  }

  /** The first decision of a new session: it begins, and the cautions are read out. */
  public static Decision begin(Session session, SessionEvent.SessionStarted started) {
    return begin(session, started, Optional.empty());
  }

  /** The same for a technician of whom it is known how much he wants to hear. */
  public static Decision begin(
      Session session, SessionEvent.SessionStarted started, Optional<SessionEvent.TalkSet> talk) {
    return begin(session, started, Optional.empty(), talk);
  }

  /**
   * The same for a session that goes on from another one, which is said first.
   *
   * @param visit the other one
   */
  public static Decision begin(
      Session session,
      SessionEvent.SessionStarted started,
      Optional<SessionEvent.VisitBegun> visit,
      Optional<SessionEvent.TalkSet> talk) {
    Turn turn = new Turn(session).record(started);
    visit.ifPresent(v -> turn.record(v).say(JobTalk.visit(v.odometer(), started.odometer())));
    talk.ifPresent(turn::record);
    return spoken(turn.prompt().end(Outcome.ACCEPTED), turn.session().talk().habit());
  }

  /**
   * The decision that takes a session up again, in the state it was left. What was confirmed about
   * the load is cancelled: the car may have moved, and nobody heard it. Running times are checked
   * by the clock later. If the wall clock stands before the last decision it was set back: timers
   * keep what they had left then.
   *
   * @param away the time by the wall clock since the last decision
   */
  public static Decision takeUp(Session session, String version, Duration away) {
    return takeUp(session, version, away, Optional.empty(), Optional.empty());
  }

  /**
   * The same for a log that may not have been whole. What its lost lines said is not known, so that
   * the load is not either.
   *
   * @param doubted what was wrong with the log; empty if it was whole
   * @param talk how much is said from now on; empty if that stays
   */
  public static Decision takeUp(
      Session session,
      String version,
      Duration away,
      Optional<SessionEvent.LogDoubted> doubted,
      Optional<SessionEvent.TalkSet> talk) {
    Turn turn = new Turn(session).record(new SessionEvent.SessionResumed(version));
    talk.ifPresent(turn::record);
    turn.say(Say.takenUp());
    doubted.ifPresent(d -> turn.record(d).say(Say.logDoubted(d.trouble(), d.lines())));
    if (away.isNegative()) {
      turn.record(new SessionEvent.ClockJumped(away.toMillis()))
          .say(Timing.clockSet(away.toSeconds(), !session.timers().running().isEmpty()));
    }
    turn.absent(LoadChange.PROGRAM_RESTARTED);
    turn.say(Standing.of(turn.session()).spoken(false));
    turn.say(Prompt.whole(turn.session()));
    return spoken(turn.end(Outcome.ACCEPTED), turn.session().talk().habit());
  }
}
