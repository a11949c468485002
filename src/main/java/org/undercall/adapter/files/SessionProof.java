package org.undercall.adapter.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.undercall.core.event.Recorded;

/**
 * Whether a session is as it was written, and if not, where it is not.
 *
 * @param session the name of its folder
 * @param lines whole lines of the log
 * @param torn whether a line torn while it was written follows them; it was never confirmed
 * @param covered lines the sum file was made for; empty if that is not known
 * @param signature what is known of the signature
 * @param findings what is not as it was written, in the order of the lines
 */
public record SessionProof(
    String session,
    long lines,
    boolean torn,
    OptionalLong covered,
    Signed signature,
    List<LogFinding> findings) {

  /** What is known of the signature of a log. */
  public enum Signed {
    NONE,
    NOT_CHECKED,
    BY_THIS_KEY,
    NOT_BY_THIS_KEY
  }

  public SessionProof {
    findings = List.copyOf(findings);
  }

  /** Whether nothing was changed, removed, inserted or moved, as far as it can be shown. */
  public boolean whole() {
    return findings.isEmpty();
  }

  /**
   * A session that was looked through.
   *
   * @param proof whether it is as it was written
   * @param decisions those of all lines that could be read
   * @param kept the procedure that is kept with it; empty if there is none
   * @param impossible the first event that cannot follow those before it; empty if each can
   */
  public record Seen(
      SessionProof proof,
      List<Recorded> decisions,
      Optional<KeptProcedures.Kept> kept,
      Optional<LogFinding> impossible) {}

  /**
   * Looks through a session.
   *
   * @param key whose signature to check; empty for none
   * @throws LogFault if the log cannot be read at all
   */
  public static SessionProof of(SessionFolder folder, Optional<PublicKey> key) throws LogFault {
    return see(folder, key, new KeptProcedures()).proof();
  }

  /**
   * Looks through one of several sessions.
   *
   * @param procedures those of the sessions looked through before
   * @throws LogFault if the log cannot be read at all
   */
  public static Seen see(
      SessionFolder folder, Optional<PublicKey> key, KeptProcedures procedures) throws LogFault {
    Path log = folder.log();
    byte[] bytes = SessionLogFile.bytes(log);
    String file = String.valueOf(log.getFileName());
    LogAudit.Result audit = LogAudit.of(bytes, file);
    SumState sum = SumState.of(bytes, sumText(log));
    List<LogFinding> findings = new ArrayList<>(audit.findings());
    boolean torn = ProofFindings.torn(audit, sum, file, findings);
    ProofFindings.sum(sum, file).ifPresent(findings::add);
    Optional<KeptProcedures.Kept> kept = procedures.of(folder);
    Optional<LogFinding> other = ProofFindings.procedure(folder, kept, audit.decisions(), file);
    other.ifPresent(findings::add);
    Optional<LogFinding> impossible =
        kept.filter(k -> other.isEmpty())
            .flatMap(KeptProcedures.Kept::walk)
            .flatMap(walk -> ProofFindings.order(walk, audit.decisions(), file));
    if (findings.isEmpty()) {
      impossible.ifPresent(findings::add);
    }
    Signed signed = signed(log, bytes, key);
    if (key.isPresent() && signed != Signed.BY_THIS_KEY) {
      findings.add(ProofFindings.signature(log, signed));
    }
    boolean known = sum.kind() == SumState.Kind.SAME || sum.kind() == SumState.Kind.BEHIND;
    OptionalLong covered = known ? OptionalLong.of(sum.covered()) : OptionalLong.empty();
    Path name = folder.path().toAbsolutePath().normalize().getFileName();
    SessionProof proof =
        new SessionProof(String.valueOf(name), audit.lines(), torn, covered, signed, findings);
    return new Seen(proof, audit.decisions(), kept, impossible);
  }

  private static Signed signed(Path log, byte[] bytes, Optional<PublicKey> key) throws LogFault {
    Path file = LogSignature.beside(log);
    if (Files.notExists(file)) {
      return Signed.NONE;
    }
    if (key.isEmpty()) {
      return Signed.NOT_CHECKED;
    }
    byte[] signature = SessionLogFile.bytes(file);
    return LogSignature.fits(bytes, signature, key.get())
        ? Signed.BY_THIS_KEY
        : Signed.NOT_BY_THIS_KEY;
  }

  private static Optional<String> sumText(Path log) throws LogFault {
    Path file = SumFile.beside(log);
    try {
      return SumFile.read(file);
    } catch (IOException e) {
      throw SessionLogFile.cannotRead(file, e);
    }
  }
}
