package org.undercall.session;

import java.security.PublicKey;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.procedure.ProcedureFaults;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Replay;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;

/** The proof of a session: its bytes, and whether its procedure allows its events. */
public final class Proof {
  private Proof() {}

  /**
   * Looks through a session.
   *
   * @param key whose signature to check; empty for none
   * @throws Fault if the log cannot be read at all
   */
  public static SessionProof of(SessionFolder folder, Optional<PublicKey> key) throws Fault {
    return SessionProof.of(folder, key, Proof::broken);
  }

  static Optional<Replay.Broken> broken(
      SessionFolder folder, byte[] procedure, List<Recorded> decisions) {
    try {
      Walk walk = Walk.of(ProcedureFile.of(folder.procedure(), procedure).procedure());
      return Replay.of(walk, decisions) instanceof Replay.Broken broken
          ? Optional.of(broken)
          : Optional.empty();
    } catch (ProcedureFaults e) {
      // The file is the one the session began with; whether it can be used is not asked here.
      return Optional.empty();
    }
  }
}
