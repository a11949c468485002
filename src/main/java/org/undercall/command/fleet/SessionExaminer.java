package org.undercall.command.fleet;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.fleet.Examiner;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogGlance;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.core.review.Facts;
import org.undercall.port.Fault;
import org.undercall.session.KeptProcedures;
import org.undercall.session.Proof;

/** Looks at single sessions of a folder; a procedure that several have is read once. */
final class SessionExaminer implements Examiner {
  /** What keeps no session from being computed with: the events that are there are as written. */
  private static final Set<Fault.Code> OF_THE_WHOLE =
      Set.of(LogCode.LOSS_RECORDED, LogCode.OTHER_SUM, LogCode.NO_SUM);

  private final Path sessions;
  private final KeptProcedures procedures = new KeptProcedures();

  SessionExaminer(Path sessions) {
    this.sessions = sessions;
  }

  @Override
  public Examined examine(String session) {
    SessionFolder folder = new SessionFolder(sessions.resolve(session));
    try {
      Proof.Seen seen = Proof.see(folder, Optional.empty(), procedures);
      String vehicle = seen.kept().vehicle();
      return isDamaged(seen)
          ? new Examined(vehicle, seen.proof().findings().get(0).message(), glance(folder))
          : new Examined(vehicle, "", Facts.of(seen.kept().walk(), seen.decisions()));
    } catch (Fault e) {
      return new Examined("", e.getMessage(), Facts.damaged("", "", "", 0));
    }
  }

  private static boolean isDamaged(Proof.Seen seen) {
    boolean suspect =
        seen.proof().torn()
            || !seen.possible()
            || seen.proof().findings().stream().anyMatch(f -> !OF_THE_WHOLE.contains(f.code()));
    return suspect && !seen.proof().whole();
  }

  private static Facts glance(SessionFolder folder) throws Fault {
    LogGlance glance = LogGlance.of(folder.log());
    return Facts.damaged(glance.title(), glance.revision(), glance.sha256(), glance.events());
  }
}
