package org.undercall.core.decision;

import java.time.Duration;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.StepRef;

/**
 * How long the work took so far, and for how long nothing was heard. It follows the times of the
 * recorded decisions, so the same log gives the same times.
 *
 * @param last when the last decision was recorded; empty before the first
 * @param spent the time at each step, while it was the step at hand and open
 * @param quiet since when nothing was heard or said, by the clock that is never set
 * @param confirmed when a load condition was last confirmed, by the same clock
 * @param reminders how many reminders were given since something was heard
 * @param heard when something was last heard, by the same clock
 */
record Stopwatch(
    Optional<Moment> last,
    Map<StepRef, Spent> spent,
    long quiet,
    long confirmed,
    int reminders,
    long heard) {

  static final Stopwatch START = new Stopwatch(Optional.empty(), Map.of(), 0, 0, 0, 0);

  /** The time until a decision, in which the session was as it is before it. */
  Stopwatch until(Session before, Recorded decision) {
    boolean restart = isRestart(decision);
    Map<StepRef, Spent> times = restart ? spent : spent(before, decision.at());
    boolean heard = decision.heard().isPresent() || restart;
    boolean reminded = decision.events().stream().anyMatch(SessionEvent.Reminded.class::isInstance);
    boolean loud = heard || last.isEmpty() || !decision.said().isEmpty();
    return new Stopwatch(
        Optional.of(decision.at()),
        times,
        loud ? decision.at().monotonicMillis() : quiet,
        decision.events().stream().anyMatch(SessionEvent.LoadConfirmed.class::isInstance)
            ? decision.at().monotonicMillis()
            : confirmed,
        heard ? 0 : reminders + (reminded ? 1 : 0),
        heard || last.isEmpty() ? decision.at().monotonicMillis() : this.heard);
  }

  /** How long ago something was last heard. */
  Duration sinceHeard(Moment now) {
    return last.isEmpty() ? Duration.ZERO : Duration.ofMillis(now.monotonicMillis() - heard);
  }

  /** How long ago a load condition was last confirmed. */
  Duration sinceConfirmed(Moment now) {
    return last.isEmpty() ? Duration.ZERO : Duration.ofMillis(now.monotonicMillis() - confirmed);
  }

  /** The times if the session goes on as it is until now. */
  Map<StepRef, Spent> spent(Session session, Moment now) {
    long millis = last.map(l -> now.monotonicMillis() - l.monotonicMillis()).orElse(0L);
    Spent more = millis < 0 ? Spent.NONE : share(session, millis);
    if (more.equals(Spent.NONE)) {
      return spent;
    }
    Map<StepRef, Spent> next = new HashMap<>(spent);
    next.merge(session.ref(), more, Spent::plus);
    return Collections.unmodifiableMap(next);
  }

  /** The times a session took until now, and whether they grow. */
  Elapsed elapsed(Session session, Moment now) {
    Map<StepRef, Spent> times = spent(session, now);
    long work = times.values().stream().mapToLong(Spent::working).sum();
    long step = times.getOrDefault(session.ref(), Spent.NONE).working();
    return new Elapsed(work, step, share(session, 1).working() > 0);
  }

  private static Spent share(Session session, long millis) {
    return switch (session.talk().mode()) {
      case BRIEFING, ENDED -> Spent.NONE;
      case HELD, HANDED -> new Spent(0, millis);
      case WORKING, NOTING -> new Spent(session.state().closed() ? 0 : millis, 0);
    };
  }

  private static boolean isRestart(Recorded decision) {
    return decision.events().stream().anyMatch(SessionEvent.SessionResumed.class::isInstance);
  }
}
