package org.undercall.command.fleet;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.fleet.Examiner;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Replay;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;
import org.undercall.session.Proof;

/** Looks at single sessions of a folder; a procedure that several have is read once. */
final class SessionExaminer implements Examiner {
  private final Path sessions;
  private final Map<String, Optional<Procedure>> procedures = new HashMap<>();

  SessionExaminer(Path sessions) {
    this.sessions = sessions;
  }

  @Override
  public Optional<String> damage(String session) {
    try {
      SessionProof proof = Proof.of(folder(session), Optional.empty());
      return proof.findings().stream().findFirst().map(f -> f.message());
    } catch (Fault e) {
      return Optional.of(e.getMessage());
    }
  }

  @Override
  public Optional<String> impossible(String session) {
    try {
      LogContent log = SessionLogFile.read(folder(session).log());
      Optional<Procedure> procedure =
          procedures.computeIfAbsent(log.started().sha256(), sha256 -> procedure(session));
      boolean follows =
          procedure.isEmpty()
              || !(Replay.of(Walk.of(procedure.get()), log.decisions()) instanceof Replay.Broken);
      return follows ? Optional.empty() : damage(session);
    } catch (Fault e) {
      return Optional.of(e.getMessage());
    }
  }

  @Override
  public Optional<String> vehicle(String session) {
    return procedure(session).map(procedure -> procedure.about().vehicle());
  }

  private Optional<Procedure> procedure(String session) {
    try {
      return Optional.of(ProcedureFile.load(folder(session).procedure()).procedure());
    } catch (Fault e) {
      return Optional.empty(); // Whether it can be used is not asked here.
    }
  }

  private SessionFolder folder(String session) {
    return new SessionFolder(sessions.resolve(session));
  }
}
