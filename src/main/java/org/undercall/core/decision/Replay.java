package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;

/** What recorded decisions lead to. */
public sealed interface Replay {

  /** The session after all of them. */
  record Done(Session session) implements Replay {}

  /**
   * The first event that could not have happened after those before it, so that no session follows.
   *
   * @param seq the number of its decision
   * @param event what it is; empty if the decision has none
   * @param expected what would have had to hold before it
   */
  record Broken(long seq, Optional<SessionEvent> event, String expected) implements Replay {}

  /** Replays every decision of a log on the procedure that it was begun with. */
  static Replay of(Walk walk, List<Recorded> decisions) {
    Session session = Session.start(walk);
    for (Recorded decision : decisions) {
      Optional<Broken> broken = broken(session, decision);
      if (broken.isPresent()) {
        return broken.get();
      }
      session = session.after(decision);
    }
    return new Done(session);
  }

  private static Optional<Broken> broken(Session before, Recorded decision) {
    boolean begins = before.stopwatch().last().isEmpty();
    Session session = before;
    for (SessionEvent event : decision.events()) {
      boolean start = event instanceof SessionEvent.SessionStarted;
      Optional<String> expected =
          start == begins
              ? Order.expected(session, event)
              : Optional.of("the start of the session first, and only there");
      if (expected.isPresent()) {
        return Optional.of(new Broken(decision.seq(), Optional.of(event), expected.get()));
      }
      begins = false;
      session = session.after(event);
    }
    return begins
        ? Optional.of(new Broken(decision.seq(), Optional.empty(), "the start of the session"))
        : Optional.empty();
  }
}
