package org.undercall.port;

import java.util.List;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;

/**
 * Where a session is shown as it goes on. The thread of the loop uses it and must not be held up.
 */
public interface Display {
  /** Shows nothing. */
  Display NONE =
      new Display() {
        @Override
        public void earlier(Session session, List<Recorded> decisions) {}

        @Override
        public void recorded(Session session, Recorded decision) {}

        @Override
        public void said(String words, Moment at) {}
      };

  /** The session before the first decision of this run, and the decisions it came from. */
  void earlier(Session session, List<Recorded> decisions);

  /** A decision stands on the disk, and this is the session after it. */
  void recorded(Session session, Recorded decision);

  /** These words are about to be spoken; they may say that nothing could be recorded. */
  void said(String words, Moment at);
}
