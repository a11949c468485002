package org.undercall.core.decision;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Tell;
import org.undercall.core.reply.Timing;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TimerName;

/** Timers: started, asked about, stopped, and announced before and at their end. */
final class TimerRules {
  private static final long MILLIS = 1000;

  private TimerRules() {}

  /** Starts the timer of the wait step at hand. */
  static Decision start(Session session, Intent intent, Moment now) {
    long seconds = ((Step.Wait) session.place().step()).time().toSeconds();
    return new Turn(session)
        .record(
            new SessionEvent.TimerStarted(
                session.ref(), seconds, instant(now).plusSeconds(seconds)))
        .say(Tell.timerStarted(seconds))
        .goOnWhileWaiting()
        .end(Outcome.ACCEPTED);
  }

  /** A decision, with the timer of every fastener that it closes and that must cure. */
  static Decision withCures(Session before, Decision decision, Moment now) {
    Turn cures = new Turn(before.after(decision.events()));
    for (SessionEvent event : decision.events()) {
      if (event instanceof SessionEvent.StepClosed closed) {
        cure(before, closed.step())
            .ifPresent(
                time ->
                    cures
                        .record(
                            new SessionEvent.TimerStarted(
                                closed.step(),
                                time.toSeconds(),
                                instant(now).plusSeconds(time.toSeconds())))
                        .say(Timing.cures(time.toSeconds())));
      }
    }
    Decision more = cures.end(decision.outcome());
    List<SessionEvent> events = new ArrayList<>(decision.events());
    events.addAll(more.events());
    return new Decision(events, decision.reply().and(more.reply()), decision.outcome());
  }

  /** How long the fastener of a step must cure; empty for any other step. */
  static Optional<Duration> cure(Session session, StepRef step) {
    Walk.Place place = session.walk().places().get(session.walk().indexOf(step));
    return place.step() instanceof Step.Fasten fasten
        ? fasten.fastener().manner().cure()
        : Optional.empty();
  }

  /** Whether a fastener is closed and the time it must cure is not over. */
  static boolean cures(Session session, StepRef step) {
    return cure(session, step).isPresent()
        && session.progress().states().get(session.walk().indexOf(step)).closed()
        && !session.timers().ended().contains(step);
  }

  /** Starts a timer with a name; one that runs under this name starts again. */
  static Decision set(Session session, Intent intent, Moment now) {
    Intent.SetTimer set = (Intent.SetTimer) intent;
    long seconds = set.minutes() * 60L;
    boolean again = session.timers().running().containsKey(new TimerKey.Named(set.timer()));
    return new Turn(session)
        .record(
            new SessionEvent.NamedTimerStarted(
                set.timer(), session.ref(), seconds, instant(now).plusSeconds(seconds)))
        .say(Timing.started(set.timer(), set.minutes(), again))
        .end(Outcome.ACCEPTED);
  }

  /** Without a name, tells every timer that runs. */
  static Decision left(Session session, Intent intent, Moment now) {
    List<TimerKey> running = running(session);
    Optional<TimerKey> asked = asked(session, intent);
    if (asked.isPresent() && running.contains(asked.get())) {
      return TalkRules.answer(session, intent, namedLeft(session, asked.get(), now));
    }
    if (isAboutOne(intent) || running.isEmpty()) {
      return TalkRules.answer(session, intent, none(intent));
    }
    Reply reply = Reply.SILENCE;
    for (TimerKey key : running) {
      reply = reply.and(namedLeft(session, key, now));
    }
    boolean one = running.size() == 1;
    return TalkRules.answer(
        session, intent, one ? Ask.timeLeft(secondsLeft(session, running.get(0), now)) : reply);
  }

  /** Without a name, stops the only timer that runs; asks which if there are several. */
  static Decision cancel(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session);
    List<TimerKey> running = running(session);
    Optional<TimerKey> asked =
        isAboutOne(intent)
            ? asked(session, intent).filter(running::contains)
            : Optional.of(running).filter(r -> r.size() == 1).map(r -> r.get(0));
    if (asked.isEmpty()) {
      boolean which = !isAboutOne(intent) && running.size() > 1;
      return turn.record(StepRules.notNow(session, intent))
          .say(which ? Timing.which(names(session, running)) : none(intent))
          .end(Outcome.REFUSED);
    }
    TimerKey key = asked.get();
    boolean alone = running.size() == 1;
    return turn.record(cancelled(key))
        .say(alone ? Tell.timerCancelled() : Timing.cancelled(name(session, key)))
        .end(Outcome.ACCEPTED);
  }

  /**
   * Says which timers ran out, and which soon will; asked by the clock, never spoken. The end of a
   * wait brings back to its step, if nothing is half done at the one at hand.
   */
  static Decision ended(Session session, Intent intent, Moment now) {
    Turn turn = new Turn(session);
    for (TimerKey key : running(session)) {
      Timers.Running timer = session.timers().running().get(key);
      if (timer.isOver(instant(now))) {
        long late = (instant(now).toEpochMilli() - timer.due().toEpochMilli()) / MILLIS;
        turn.record(over(key)).say(isOver(session, key, late));
      } else if (timer.isSoonOver(instant(now))) {
        long left = secondsLeft(session, key, now);
        turn.record(warned(key)).say(Timing.soonOver(name(session, key), left));
      }
    }
    if (!turn.session().timers().ended().equals(session.timers().ended())) {
      turn.callBack();
    }
    boolean none = turn.session().timers().equals(session.timers());
    return turn.end(none ? Outcome.IGNORED : Outcome.ACCEPTED);
  }

  /** The names of the timers that run. */
  static List<String> runningNames(Session session) {
    return names(session, running(session));
  }

  private static Instant instant(Moment now) {
    return now.wall().toInstant();
  }

  private static boolean isAboutOne(Intent intent) {
    return intent instanceof Intent.OfTimer || intent instanceof Intent.OfStep;
  }

  /** The timer an intent is about; empty if it names none, or a step that is not in the walk. */
  private static Optional<TimerKey> asked(Session session, Intent intent) {
    if (intent instanceof Intent.OfTimer of) {
      return Optional.of(new TimerKey.Named(of.timer()));
    }
    return Optional.of(intent)
        .filter(Intent.OfStep.class::isInstance)
        .map(i -> ((Intent.OfStep) i).number() - 1)
        .filter(index -> index >= 0 && index < session.walk().places().size())
        .map(index -> new TimerKey.OfStep(session.walk().places().get(index).ref()));
  }

  private static Reply none(Intent intent) {
    if (intent instanceof Intent.OfTimer of) {
      return Timing.noTimer(of.timer());
    }
    return intent instanceof Intent.OfStep of ? Timing.noTimer(of.number()) : Tell.noTimer();
  }

  private static Reply namedLeft(Session session, TimerKey key, Moment now) {
    return Timing.left(name(session, key), secondsLeft(session, key, now));
  }

  /** Whole seconds, rounded up. */
  private static long secondsLeft(Session session, TimerKey key, Moment now) {
    long due = session.timers().running().get(key).due().toEpochMilli();
    long millis = Math.max(0, due - instant(now).toEpochMilli());
    return (millis + MILLIS - 1) / MILLIS;
  }

  /** The timers that run: those of steps in the order of the walk, then those with a name. */
  private static List<TimerKey> running(Session session) {
    List<TimerKey> running = new ArrayList<>();
    session.walk().places().forEach(place -> running.add(new TimerKey.OfStep(place.ref())));
    Arrays.stream(TimerName.values()).forEach(name -> running.add(new TimerKey.Named(name)));
    running.retainAll(session.timers().running().keySet());
    return running;
  }

  private static List<String> names(Session session, List<TimerKey> keys) {
    return keys.stream().map(key -> name(session, key)).toList();
  }

  private static String name(Session session, TimerKey key) {
    return key instanceof TimerKey.OfStep of
        ? Timing.name(number(session, of), place(session, of))
        : Timing.name(((TimerKey.Named) key).name());
  }

  private static Reply isOver(Session session, TimerKey key, long late) {
    return key instanceof TimerKey.OfStep of
        ? Timing.over(place(session, of), late)
        : Timing.over(((TimerKey.Named) key).name(), late);
  }

  private static int number(Session session, TimerKey.OfStep key) {
    return session.walk().indexOf(key.step()) + 1;
  }

  private static Walk.Place place(Session session, TimerKey.OfStep key) {
    return session.walk().places().get(session.walk().indexOf(key.step()));
  }

  private static SessionEvent over(TimerKey key) {
    return key instanceof TimerKey.OfStep of
        ? new SessionEvent.TimerEnded(of.step())
        : new SessionEvent.NamedTimerEnded(((TimerKey.Named) key).name());
  }

  private static SessionEvent warned(TimerKey key) {
    return key instanceof TimerKey.OfStep of
        ? new SessionEvent.TimerWarned(of.step())
        : new SessionEvent.NamedTimerWarned(((TimerKey.Named) key).name());
  }

  private static SessionEvent cancelled(TimerKey key) {
    return key instanceof TimerKey.OfStep of
        ? new SessionEvent.TimerCancelled(of.step())
        : new SessionEvent.NamedTimerCancelled(((TimerKey.Named) key).name());
  }
}
