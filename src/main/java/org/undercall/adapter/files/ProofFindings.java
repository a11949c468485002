package org.undercall.adapter.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.undercall.core.decision.Replay;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;

/** What can be found about a session besides its single lines. */
final class ProofFindings {
  private ProofFindings() {}

  /**
   * What stands after the last line feed is torn only if the sum file does not count it: it is made
   * after the line is on the disk.
   */
  static boolean torn(
      LogAudit.Result audit, SumState sum, String file, List<LogFinding> findings) {
    if (audit.rest().isEmpty()) {
      return false;
    }
    boolean counted = sum.kind() == SumState.Kind.CUT || sum.kind() == SumState.Kind.OTHER;
    if (counted || LogLine.goesOnAfterSum(audit.rest().get())) {
      findings.add(
          new LogFinding(
              LogFault.Code.DAMAGED,
              file,
              OptionalLong.of(audit.lines() + 1),
              OptionalLong.empty(),
              "a line without its end",
              "the line as it was written"));
      return false;
    }
    return true;
  }

  static Optional<LogFinding> sum(SumState sum, String file) {
    String beside = file + ".sha256";
    return switch (sum.kind()) {
      case SAME, BEHIND -> Optional.empty();
      case CUT -> Optional.of(cut(sum, file));
      case OTHER ->
          Optional.of(
              new LogFinding(
                  LogFault.Code.OTHER_SUM,
                  beside,
                  "a sum that no beginning of the log has",
                  "the sum of the log, or of its beginning up to the end of a line"));
      case UNREADABLE ->
          Optional.of(
              new LogFinding(
                  LogFault.Code.NO_SUM, beside, "another form", "the form of sha256sum"));
      case ABSENT ->
          sum.usual()
              ? Optional.empty()
              : Optional.of(
                  new LogFinding(
                      LogFault.Code.NO_SUM,
                      beside,
                      "no file, so that lines cut off the end would leave no trace",
                      "the sum of the log"));
    };
  }

  private static LogFinding cut(SumState sum, String file) {
    long first = Math.max(1, sum.lines() + 1);
    String expected =
        sum.covered() > sum.lines()
            ? "lines " + first + " to " + sum.covered() + ", which the sum file counts"
            : "as many bytes as the sum file counts";
    return new LogFinding(
        LogFault.Code.LINES_GONE,
        file,
        OptionalLong.of(first),
        OptionalLong.empty(),
        sum.lines() + " whole lines",
        expected);
  }

  static Optional<LogFinding> procedure(
      SessionFolder folder,
      Optional<KeptProcedures.Kept> kept,
      List<Recorded> decisions,
      String file) {
    Optional<SessionEvent.SessionStarted> started =
        decisions.stream()
            .flatMap(decision -> decision.events().stream())
            .filter(SessionEvent.SessionStarted.class::isInstance)
            .map(SessionEvent.SessionStarted.class::cast)
            .findFirst();
    if (started.isEmpty()) {
      return Optional.of(
          new LogFinding(
              LogFault.Code.NOT_STARTED, file, "no session-started", "session-started first"));
    }
    String sha256 = started.get().sha256();
    if (kept.isPresent() && kept.get().sha256().equals(sha256)) {
      return Optional.empty();
    }
    try {
      folder.procedureBytes(sha256);
      return Optional.empty();
    } catch (LogFault e) {
      String name = String.valueOf(folder.procedure().getFileName());
      return Optional.of(new LogFinding(e.code(), name, e.found(), e.expected()));
    }
  }

  /** Right sums do not make an order of events that the program could have written. */
  static Optional<LogFinding> order(Walk walk, List<Recorded> decisions, String file) {
    if (Replay.of(walk, decisions) instanceof Replay.Broken broken) {
      OptionalLong line = OptionalLong.of(broken.seq());
      LogFault fault = LogFault.impossible(broken);
      return Optional.of(
          new LogFinding(fault.code(), file, line, line, fault.found(), fault.expected()));
    }
    return Optional.empty();
  }

  static LogFinding signature(Path log, SessionProof.Signed signed) {
    return new LogFinding(
        LogFault.Code.OTHER_SIGNATURE,
        String.valueOf(LogSignature.beside(log).getFileName()),
        signed == SessionProof.Signed.NONE ? "no signature" : "a signature of other bytes or another key",
        "the signature of this log by this key");
  }
}
