package org.undercall.core.decision;

import java.util.Optional;

/**
 * Where the conversation stands.
 *
 * @param mode what the session as a whole is doing
 * @param pending what waits for read-back
 */
public record Talk(Mode mode, Optional<Pending> pending) {

  /** What the session as a whole is doing. */
  public enum Mode {
    BRIEFING,
    WORKING,
    NOTING,
    HELD,
    ENDED
  }

  static final Talk START = new Talk(Mode.BRIEFING, Optional.empty());

  Talk with(Mode next) {
    return new Talk(next, pending);
  }

  Talk awaiting(Pending next) {
    return new Talk(mode, Optional.of(next));
  }

  Talk settled() {
    return new Talk(mode, Optional.empty());
  }
}
