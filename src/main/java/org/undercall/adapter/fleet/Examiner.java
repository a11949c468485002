package org.undercall.adapter.fleet;

import java.util.Optional;

/** What the engine cannot find out about a session by itself. */
public interface Examiner {
  /** What is wrong with a session, with its code; empty if it is whole after all. */
  Optional<String> damage(String session);

  /**
   * Why no work follows from the events of a log that the engine found whole, with its code; empty
   * if it does, or if nobody looks.
   */
  default Optional<String> impossible(String session) {
    return Optional.empty();
  }

  /** The vehicle of a session's procedure that is no JSON; empty if it is not known. */
  default Optional<String> vehicle(String session) {
    return Optional.empty();
  }
}
