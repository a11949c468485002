package org.undercall.core.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;

/**
 * What the board keeps of the decisions so far, beside the session itself.
 *
 * @param work when the session began
 * @param step when the step at hand was entered last
 * @param state number of the last decision that changed the session; what is pressed is pressed for
 *     this number
 * @param heard the last decision that answered something heard
 */
public record Happened(
    Optional<Instant> work, Optional<Instant> step, long state, Optional<Recorded> heard) {
  /** Nothing has happened. */
  public static final Happened NOTHING =
      new Happened(Optional.empty(), Optional.empty(), 0, Optional.empty());

  /** What happened before the program took a session up again. */
  public static Happened before(List<Recorded> decisions) {
    Happened happened = NOTHING;
    for (Recorded decision : decisions) {
      happened = happened.after(decision, true);
    }
    return happened;
  }

  /** After a decision that left the session as it is or changed it. */
  public Happened after(Recorded decision, Session before, Session now) {
    return after(decision, !same(before, now));
  }

  /** Whether two states differ in times only. */
  private static boolean same(Session one, Session other) {
    return one.progress().equals(other.progress())
        && one.loads().equals(other.loads())
        && one.talk().equals(other.talk())
        && one.timers().equals(other.timers());
  }

  /** How far the wall clock was set; times before it are told by the clock as it is set now. */
  private static long jump(Recorded decision) {
    return decision.events().stream()
        .filter(SessionEvent.ClockJumped.class::isInstance)
        .mapToLong(e -> ((SessionEvent.ClockJumped) e).millis())
        .sum();
  }

  private Happened after(Recorded decision, boolean changed) {
    long jump = jump(decision);
    Instant at = decision.at().wall().toInstant();
    boolean entered =
        decision.events().stream().anyMatch(e -> e instanceof SessionEvent.StepEntered);
    return new Happened(
        work.map(w -> w.plusMillis(jump)).or(() -> Optional.of(at)),
        entered ? Optional.of(at) : step.map(s -> s.plusMillis(jump)),
        changed ? decision.seq() : state,
        decision.heard().isPresent() ? Optional.of(decision) : heard);
  }
}
