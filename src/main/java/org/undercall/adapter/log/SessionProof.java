package org.undercall.adapter.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.undercall.core.decision.Replay;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Origin;
import org.undercall.core.term.Occasion;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * Whether a session is as it was written, and if not, where it is not.
 *
 * @param session the name of its folder
 * @param lines whole lines of the log
 * @param torn whether a line torn while it was written follows them; it was never confirmed
 * @param covered lines the sum file was made for; empty if that is not known
 * @param signature what is known of the signature
 * @param occasion what the session was begun for, as far as its lines could be read
 * @param sha256 SHA-256 of the file of the log, in hex
 * @param statement what its signer states; empty if no statement is there
 * @param findings what is not as it was written, in the order of the lines
 */
public record SessionProof(
    String session,
    long lines,
    boolean torn,
    OptionalLong covered,
    Signed signature,
    Occasion occasion,
    String sha256,
    Optional<Stated> statement,
    List<LogFinding> findings) {

  /**
   * What a signer states about the log.
   *
   * @param sameLog whether it is about the very bytes that the log has now
   */
  public record Stated(SignedStatement said, boolean sameLog) {}

  /** What is known of the signature of a log. */
  public enum Signed {
    NONE,
    NOT_CHECKED,
    BY_THIS_KEY,
    NOT_BY_THIS_KEY
  }

  /** Tells whether events could follow each other, by the procedure that is kept beside them. */
  public interface Order {
    /**
     * The first decision that no session could have made; empty if there is none.
     *
     * @param procedure the bytes of the procedure, those that the session began with
     */
    Optional<Replay.Broken> broken(
        SessionFolder folder, byte[] procedure, List<Recorded> decisions);
  }

  public SessionProof {
    findings = List.copyOf(findings);
  }

  /** Whether nothing was changed, removed, inserted or moved, as far as it can be shown. */
  public boolean whole() {
    return findings.isEmpty();
  }

  /**
   * Looks through a session.
   *
   * @param key whose signature to check; empty for none
   * @param order tells whether the events could follow each other; asked if the procedure is the
   *     one that the session began with, heeded if nothing else is wrong
   * @throws Fault if the log cannot be read at all
   */
  public static SessionProof of(SessionFolder folder, Optional<PublicKey> key, Order order)
      throws Fault {
    Path log = folder.log();
    byte[] bytes = SessionLogFile.bytes(log);
    String file = String.valueOf(log.getFileName());
    LogAudit.Result audit = LogAudit.of(bytes, file);
    SumState sum = SumState.of(bytes, sumText(log));
    List<LogFinding> findings = new ArrayList<>(audit.findings());
    boolean torn = torn(audit, sum, file, findings);
    sum.finding(file).ifPresent(findings::add);
    Optional<byte[]> procedure = procedure(folder, audit.decisions(), file, findings);
    procedure
        .flatMap(kept -> order.broken(folder, kept, audit.decisions()))
        .filter(broken -> findings.isEmpty())
        .map(broken -> order(broken, file))
        .ifPresent(findings::add);
    Signed signed = signed(log, bytes, key);
    if (key.isPresent() && signed != Signed.BY_THIS_KEY) {
      findings.add(
          new LogFinding(
              LogCode.OTHER_SIGNATURE,
              String.valueOf(LogSignature.beside(log).getFileName()),
              signed == Signed.NONE ? "no signature" : "a signature of other bytes or another key",
              "the signature of this log by this key"));
    }
    Optional<Stated> stated = stated(log, bytes);
    if (key.isPresent() && stated.isPresent()) {
      stateFinding(log, key.get(), stated.get()).ifPresent(findings::add);
    }
    boolean known = sum.kind() == SumState.Kind.SAME || sum.kind() == SumState.Kind.BEHIND;
    OptionalLong covered = known ? OptionalLong.of(sum.covered()) : OptionalLong.empty();
    Path name = folder.path().toAbsolutePath().normalize().getFileName();
    Occasion occasion = Origin.of(audit.decisions()).occasion();
    return new SessionProof(
        String.valueOf(name),
        audit.lines(),
        torn,
        covered,
        signed,
        occasion,
        Sha256.hex(bytes),
        stated,
        findings);
  }

  /**
   * What the signer of a log states.
   *
   * @param bytes what the log holds now
   * @throws Fault if the statement cannot be read
   */
  public static Optional<Stated> stated(Path log, byte[] bytes) throws Fault {
    String name = String.valueOf(log.getFileName());
    return SignedStatement.read(SignedStatement.beside(log))
        .map(said -> new Stated(said, said.isAbout(name, bytes)));
  }

  private static Optional<LogFinding> stateFinding(Path log, PublicKey key, Stated stated)
      throws Fault {
    Path file = SignedStatement.beside(log);
    boolean fits =
        stated.said().key().equals(KeyFiles.fingerprint(key)) && SignedStatement.fits(file, key);
    if (fits && stated.sameLog()) {
      return Optional.empty();
    }
    return Optional.of(
        new LogFinding(
            LogCode.OTHER_SIGNATURE,
            String.valueOf(file.getFileName()),
            fits ? "the sum of another log" : "a statement changed or by another key",
            "a statement about this log by this key"));
  }

  /**
   * What stands after the last line feed is torn only if the sum file does not count it: it is made
   * after the line is on the disk.
   */
  private static boolean torn(
      LogAudit.Result audit, SumState sum, String file, List<LogFinding> findings) {
    if (audit.rest().isEmpty()) {
      return false;
    }
    boolean counted = sum.kind() == SumState.Kind.CUT || sum.kind() == SumState.Kind.OTHER;
    if (counted || LogLine.goesOnAfterSum(audit.rest().get())) {
      findings.add(
          new LogFinding(
              LogCode.DAMAGED,
              file,
              OptionalLong.of(audit.lines() + 1),
              OptionalLong.empty(),
              "a line without its end",
              "the line as it was written"));
      return false;
    }
    return true;
  }

  /** The bytes of the procedure it began with; empty, with a finding, if they are not there. */
  private static Optional<byte[]> procedure(
      SessionFolder folder, List<Recorded> decisions, String file, List<LogFinding> findings) {
    Optional<String> sha256 =
        decisions.stream()
            .flatMap(decision -> decision.events().stream())
            .filter(SessionEvent.SessionStarted.class::isInstance)
            .map(event -> ((SessionEvent.SessionStarted) event).sha256())
            .findFirst();
    if (sha256.isEmpty()) {
      findings.add(
          new LogFinding(LogCode.NOT_STARTED, file, "no session-started", "session-started first"));
      return Optional.empty();
    }
    try {
      return Optional.of(folder.procedureBytes(sha256.get()));
    } catch (Fault e) {
      String name = String.valueOf(folder.procedure().getFileName());
      findings.add(new LogFinding(e.code(), name, e.first().found(), e.first().expected()));
      return Optional.empty();
    }
  }

  /** Right sums do not make an order of events that the program could have written. */
  private static LogFinding order(Replay.Broken broken, String file) {
    OptionalLong line = OptionalLong.of(broken.seq());
    Fault fault = LogCode.impossible(broken);
    return new LogFinding(
        fault.code(), file, line, line, fault.first().found(), fault.first().expected());
  }

  private static Signed signed(Path log, byte[] bytes, Optional<PublicKey> key) throws Fault {
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

  private static Optional<String> sumText(Path log) throws Fault {
    Path file = SumFile.beside(log);
    try {
      return SumFile.read(file);
    } catch (IOException e) {
      throw SessionLogFile.cannotRead(file, e);
    }
  }
}
