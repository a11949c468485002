package org.undercall.core.decision;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.EventKind;

/**
 * Where the conversation stands.
 *
 * @param mode what the session as a whole is doing
 * @param pending what waits for read-back
 * @param missed how well it goes
 */
public record Talk(Mode mode, Optional<Pending> pending, Missed missed) {

  /** What the session as a whole is doing. */
  public enum Mode {
    BRIEFING,
    WORKING,
    NOTING,
    HELD,
    ENDED
  }

  /**
   * What was not understood of late.
   *
   * @param inARow how many phrases in a row were asked for again, at most {@link #MANY}
   * @param quietUntil until when the reason is not remarked on again
   */
  public record Missed(int inARow, Optional<Instant> quietUntil) {
    /** So many in a row are worth a remark; more are not counted. */
    static final int MANY = 3;

    static final Missed NONE = new Missed(0, Optional.empty());

    /** The count with one more. */
    int andOneMore() {
      return Math.min(MANY, inARow + 1);
    }
  }

  /** The events that leave open whether the last phrase was understood; all others show it. */
  static final Set<EventKind> SAYS_NOTHING =
      Set.of(
          EventKind.NOT_UNDERSTOOD,
          EventKind.HEARING_REMARKED,
          EventKind.TIMER_ENDED,
          EventKind.NAMED_TIMER_ENDED,
          EventKind.TIMER_WARNED,
          EventKind.NAMED_TIMER_WARNED,
          EventKind.CLOCK_JUMPED,
          EventKind.REMINDED,
          EventKind.STEP_RECALLED);

  static final Talk START = new Talk(Mode.BRIEFING, Optional.empty(), Missed.NONE);

  Talk with(Mode next) {
    return new Talk(next, pending, missed);
  }

  Talk awaiting(Pending next) {
    return new Talk(mode, Optional.of(next), missed);
  }

  Talk settled() {
    return new Talk(mode, Optional.empty(), missed);
  }

  /** With so many phrases in a row not understood, 0 after one that was. */
  Talk missed(int inARow) {
    return new Talk(mode, pending, new Missed(inARow, missed.quietUntil()));
  }

  /** With the reason remarked on. */
  Talk quietUntil(Instant until) {
    return new Talk(mode, pending, new Missed(missed.inARow(), Optional.of(until)));
  }
}
