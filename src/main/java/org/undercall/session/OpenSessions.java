package org.undercall.session;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.port.Fault;

/**
 * The sessions of a folder that can be taken up.
 *
 * @param open those with open steps, the one worked on last first
 * @param complete how many are complete
 * @param faults what is wrong with the others, a line with a code each
 */
public record OpenSessions(List<Open> open, int complete, List<String> faults) {
  public OpenSessions {
    open = List.copyOf(open);
    faults = List.copyOf(faults);
  }

  /**
   * A session that is not complete.
   *
   * @param folder where it is kept
   * @param session as it was left
   * @param last when something was recorded last
   */
  public record Open(SessionFolder folder, Session session, OffsetDateTime last) {}

  /** Looks at every session of a folder; a folder that is absent or cannot be read has none. */
  public static OpenSessions in(Path sessions) {
    List<Open> open = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    int complete = 0;
    try {
      for (SessionFolder folder : SessionFolder.all(sessions)) {
        complete += look(folder, open, faults) ? 1 : 0;
      }
    } catch (Fault e) {
      faults.add(e.getMessage());
    }
    open.sort(Comparator.comparing((Open o) -> o.last().toInstant()).reversed());
    return new OpenSessions(open, complete, faults);
  }

  /** Whether there is no session at all, sound or not. */
  public boolean none() {
    return open.isEmpty() && complete == 0 && faults.isEmpty();
  }

  private static boolean look(SessionFolder folder, List<Open> open, List<String> faults) {
    try {
      LogContent log = SessionLogFile.read(folder.log());
      log.started();
      if (log.complete()) {
        return true;
      }
      List<Recorded> decisions = log.decisions();
      Session session = OpenSession.replay(StoredSession.of(folder, log).procedure(), decisions);
      open.add(new Open(folder, session, decisions.get(decisions.size() - 1).at().wall()));
    } catch (Fault e) {
      faults.add(named(folder, e.first().toString()));
    }
    return false;
  }

  /** The fault with the session it is in; a message names it only where a file is at fault. */
  static String named(SessionFolder folder, String message) {
    String name = folder.name();
    return message.contains(name) ? message : message + " (session " + name + ")";
  }

  /** The one worked on last. */
  public Optional<Open> newest() {
    return open.stream().findFirst();
  }
}
