package org.undercall.session;

import java.util.List;
import org.undercall.core.decision.Session;
import org.undercall.core.decision.Standing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Display;

/**
 * Prints how the work stands when it is handed over or taken up again: longer than it is spoken.
 *
 * @param dialogue where it is printed
 * @param next where the session is shown besides
 */
public record PrintedState(Dialogue dialogue, Display next) implements Display {
  @Override
  public void earlier(Session session, List<Recorded> decisions) {
    next.earlier(session, decisions);
  }

  @Override
  public void recorded(Session session, Recorded decision) {
    boolean wanted =
        decision.events().stream()
            .anyMatch(
                e ->
                    e instanceof SessionEvent.WorkHandedOver
                        || e instanceof SessionEvent.SessionResumed);
    if (wanted) {
      new Standing(session).written().forEach(line -> dialogue.print("  so far " + line));
    }
    next.recorded(session, decision);
  }

  @Override
  public void said(String words, Moment at) {
    next.said(words, at);
  }
}
