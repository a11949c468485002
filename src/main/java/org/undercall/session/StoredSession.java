package org.undercall.session;

import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.port.Fault;

/**
 * A session as it is stored: each of its files is read once, and its procedure is read from the
 * very bytes that were found to be those it began with.
 *
 * @param folder where it is stored
 * @param log what its log held
 * @param kept the procedure it began with
 */
public record StoredSession(SessionFolder folder, LogContent log, LoadedProcedure kept) {

  /** Reads the bytes that are kept of a procedure, once. */
  interface Bytes {
    /**
     * Those bytes.
     *
     * @param sha256 what they must have
     * @throws Fault LOG-011 if they have another one
     */
    byte[] with(String sha256) throws Fault;
  }

  /**
   * Reads a session.
   *
   * @throws Fault if its log cannot be read, LOG-011 if its procedure is not the one it began with,
   *     PRO if this version cannot use that
   */
  public static StoredSession read(SessionFolder folder) throws Fault {
    return of(folder, SessionLogFile.read(folder.log()));
  }

  /**
   * A session whose log was read.
   *
   * @throws Fault LOG-012 if the log does not tell its procedure, LOG-011 if that is not the one in
   *     the folder, PRO if this version cannot use it
   */
  public static StoredSession of(SessionFolder folder, LogContent log) throws Fault {
    return of(folder, log, folder::procedureBytes);
  }

  static StoredSession of(SessionFolder folder, LogContent log, Bytes bytes) throws Fault {
    String sha256 = log.started().sha256();
    LoadedProcedure kept = ProcedureFile.of(folder.procedure(), bytes.with(sha256));
    requireSame(kept, sha256);
    return new StoredSession(folder, log, kept);
  }

  /**
   * Holds a procedure against the one that a session began with. One that is put together from
   * several files is none that was kept, whatever the sum of its first file.
   *
   * @throws Fault LOG-011 if it is another one
   */
  static void requireSame(LoadedProcedure procedure, String sha256) throws Fault {
    if (!procedure.sha256().equals(sha256)) {
      throw new Fault(
          LogCode.OTHER_PROCEDURE,
          String.valueOf(procedure.file().getFileName()),
          "SHA-256 " + procedure.sha256(),
          "SHA-256 " + sha256);
    }
  }

  /** The procedure it began with. */
  public Procedure procedure() {
    return kept.procedure();
  }

  /** What was done in it, step by step. */
  public Review review() {
    return Review.of(Walk.of(procedure()), log.decisions());
  }
}
