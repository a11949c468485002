package org.undercall.core.decision;

import java.util.List;
import java.util.stream.Stream;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.reply.Reply;

/**
 * What was decided about an intent.
 *
 * @param events what happened, to be recorded before anything is said
 * @param reply what to say then
 * @param outcome what became of the intent
 */
public record Decision(List<SessionEvent> events, Reply reply, Outcome outcome) {
  public Decision {
    events = List.copyOf(events);
  }

  /** The same, with more that is recorded after it. */
  public Decision with(List<SessionEvent> more) {
    return new Decision(Stream.concat(events.stream(), more.stream()).toList(), reply, outcome);
  }

  /** Whether the phrase was taken up: it changed the session or waits for a read-back. */
  public boolean isTaken() {
    return outcome == Outcome.ACCEPTED || (outcome == Outcome.ASKED && !isAskedAgain());
  }

  /** Whether the phrase was not understood and is asked for again. */
  public boolean isAskedAgain() {
    return outcome == Outcome.ASKED
        && events.stream().anyMatch(e -> e instanceof SessionEvent.NotUnderstood);
  }
}
