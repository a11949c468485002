package org.undercall.session;

import java.security.PublicKey;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionProof;
import org.undercall.core.decision.Replay;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;

/** The proof of a session: its bytes, and whether its procedure allows its events. */
public final class Proof {
  private final KeptProcedures procedures;
  private List<Recorded> decisions = List.of();
  private Optional<KeptProcedures.Kept> kept = Optional.empty();
  private boolean possible = true;

  Proof(KeptProcedures procedures) {
    this.procedures = procedures;
  }

  /**
   * A session that was looked through.
   *
   * @param proof whether it is as it was written
   * @param possible whether its procedure allows its events, as far as that was looked at
   * @param decisions those of all lines that could be read; none without the procedure it began
   *     with
   * @param kept the procedure that is kept with it
   */
  public record Seen(
      SessionProof proof, boolean possible, List<Recorded> decisions, KeptProcedures.Kept kept) {}

  /**
   * Looks through a session.
   *
   * @param key whose signature to check; empty for none
   * @throws Fault if the log cannot be read at all
   */
  public static SessionProof of(SessionFolder folder, Optional<PublicKey> key) throws Fault {
    return see(folder, key, new KeptProcedures()).proof();
  }

  /**
   * Looks through one of several sessions.
   *
   * @param procedures those of the sessions looked through before
   * @throws Fault if the log cannot be read at all
   */
  public static Seen see(SessionFolder folder, Optional<PublicKey> key, KeptProcedures procedures)
      throws Fault {
    Proof own = new Proof(procedures);
    SessionProof proof = SessionProof.of(folder, key, own::broken);
    return new Seen(
        proof, own.possible, own.decisions, own.kept.orElseGet(() -> KeptProcedures.read(folder)));
  }

  Optional<Replay.Broken> broken(SessionFolder folder, byte[] procedure, List<Recorded> all) {
    decisions = all;
    kept =
        all.stream()
            .flatMap(decision -> decision.events().stream())
            .filter(SessionEvent.SessionStarted.class::isInstance)
            .map(event -> ((SessionEvent.SessionStarted) event).sha256())
            .findFirst()
            .map(sha256 -> procedures.of(sha256, folder.procedure(), procedure));
    Optional<Replay.Broken> broken =
        kept.flatMap(KeptProcedures.Kept::walk)
            .map(walk -> Replay.of(walk, all))
            .filter(Replay.Broken.class::isInstance)
            .map(Replay.Broken.class::cast);
    possible = broken.isEmpty();
    return broken;
  }
}
