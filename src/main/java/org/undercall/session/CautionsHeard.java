package org.undercall.session;

import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;

/** Looks whether a technician heard cautions earlier on the day of a session. */
final class CautionsHeard {
  private static final int DATE = "2026-01-31".length();

  private CautionsHeard() {}

  /**
   * Whether another session beside this one, of the same day and the same technician, had its
   * cautions understood. A session that cannot be read has not.
   */
  static boolean today(SessionFolder session, Optional<String> who) throws Fault {
    String day = session.name().substring(0, DATE);
    for (SessionFolder other : SessionFolder.all(session.path().getParent())) {
      boolean sameDay = other.name().startsWith(day) && !other.name().equals(session.name());
      if (sameDay && understood(other, who)) {
        return true;
      }
    }
    return false;
  }

  private static boolean understood(SessionFolder folder, Optional<String> who) {
    try {
      LogContent log = SessionLogFile.read(folder.log());
      return log.started().technician().equals(who) && understood(log.decisions());
    } catch (Fault e) {
      return false;
    }
  }

  private static boolean understood(List<Recorded> decisions) {
    return decisions.stream()
        .flatMap(decision -> decision.events().stream())
        .anyMatch(SessionEvent.CautionsUnderstood.class::isInstance);
  }
}
