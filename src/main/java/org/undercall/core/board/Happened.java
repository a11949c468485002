package org.undercall.core.board;

import java.util.List;
import java.util.Optional;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.reply.Habit;

/**
 * What the board keeps of the decisions so far, beside the session itself.
 *
 * @param state number of the last decision that changed the session; what is pressed is pressed for
 *     this number
 * @param heard the last decision that answered something heard
 * @param made how what was heard so far came
 */
public record Happened(long state, Optional<Recorded> heard, Frame.Made made) {
  /** Nothing has happened. */
  public static final Happened NOTHING = new Happened(0, Optional.empty(), Frame.Made.NOTHING);

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

  /** Whether two states differ only in times and in how much is said. */
  private static boolean same(Session one, Session other) {
    return one.progress().equals(other.progress())
        && one.loads().equals(other.loads())
        && one.talk().with(Habit.NEW).equals(other.talk().with(Habit.NEW))
        && one.timers().equals(other.timers());
  }

  private Happened after(Recorded decision, boolean changed) {
    return new Happened(
        changed ? decision.seq() : state,
        decision.heard().isPresent() ? Optional.of(decision) : heard,
        decision.heard().map(h -> made.and(h.how())).orElse(made));
  }
}
