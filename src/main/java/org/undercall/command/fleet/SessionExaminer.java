package org.undercall.command.fleet;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.files.KeptProcedures;
import org.undercall.adapter.files.LogFault;
import org.undercall.adapter.files.LogGlance;
import org.undercall.adapter.files.SessionFolder;
import org.undercall.adapter.files.SessionProof;
import org.undercall.adapter.fleet.Examiner;
import org.undercall.core.review.Facts;

/** Looks at single sessions of a folder; a procedure that several have is read once. */
final class SessionExaminer implements Examiner {
  /** What keeps no session from being computed with: the events that are there are as written. */
  private static final Set<LogFault.Code> OF_THE_WHOLE =
      EnumSet.of(LogFault.Code.LOSS_RECORDED, LogFault.Code.OTHER_SUM, LogFault.Code.NO_SUM);

  private final Path sessions;
  private final KeptProcedures procedures = new KeptProcedures();

  SessionExaminer(Path sessions) {
    this.sessions = sessions;
  }

  @Override
  public Examined examine(String session) {
    SessionFolder folder = new SessionFolder(sessions.resolve(session));
    try {
      SessionProof.Seen seen = SessionProof.see(folder, Optional.empty(), procedures);
      String vehicle = seen.kept().map(KeptProcedures.Kept::vehicle).orElse("");
      return isDamaged(seen)
          ? new Examined(vehicle, seen.proof().findings().get(0).message(), glance(folder))
          : new Examined(
              vehicle,
              "",
              Facts.of(seen.kept().flatMap(KeptProcedures.Kept::walk), seen.decisions()));
    } catch (LogFault e) {
      return new Examined("", e.getMessage(), Facts.damaged("", "", "", 0));
    }
  }

  private static boolean isDamaged(SessionProof.Seen seen) {
    boolean suspect =
        seen.proof().torn()
            || seen.impossible().isPresent()
            || seen.proof().findings().stream().anyMatch(f -> !OF_THE_WHOLE.contains(f.code()));
    return suspect && !seen.proof().whole();
  }

  private static Facts glance(SessionFolder folder) throws LogFault {
    LogGlance glance = LogGlance.of(folder.log());
    return Facts.damaged(glance.title(), glance.revision(), glance.sha256(), glance.events());
  }
}
