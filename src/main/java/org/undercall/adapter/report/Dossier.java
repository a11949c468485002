package org.undercall.adapter.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Review;

/**
 * All that a report is made from.
 *
 * @param review the session, looked at
 * @param procedure what it was done with
 * @param decisions every decision, in order
 * @param seal what names the log
 * @param given what only the asker of the report knows
 * @param visits the sessions that went on from it
 */
public record Dossier(
    Review review,
    Procedure procedure,
    List<Recorded> decisions,
    Seal seal,
    Given given,
    List<FollowUp> visits) {

  /**
   * What names the log: change a line, and the sums are others.
   *
   * @param sum SHA-256 of the chain at its last whole line, in hex
   * @param sha256 SHA-256 of the file of the log as it is, in hex, as sha256sum prints it
   * @param lines whole lines
   * @param torn whether a torn last line was left out
   * @param signed what its signer states; empty if it is not signed, or only as earlier versions
   *     did, without a statement
   */
  public record Seal(
      String sum, String sha256, long lines, boolean torn, Optional<Signed> signed) {}

  /**
   * What the signer of the log states. The report does not check it.
   *
   * @param name the signer's name; empty if none was given
   * @param at when it was signed, by the clock of the signer's machine
   * @param key SHA-256 of the public key, in hex
   * @param sameLog whether the statement is about the very bytes that the log has now
   */
  public record Signed(
      Optional<String> name, java.time.OffsetDateTime at, String key, boolean sameLog) {}

  /**
   * What only the asker of the report knows.
   *
   * @param customer name of the customer; empty if none is to be shown
   * @param technician name of the technician; empty if none is to be shown
   * @param paper the size of the pages
   */
  public record Given(Optional<String> customer, Optional<String> technician, Paper paper) {}

  /** A size of paper, used upright. */
  public enum Paper {
    A4,
    LETTER
  }

  public Dossier {
    Objects.requireNonNull(review, "review");
    Objects.requireNonNull(procedure, "procedure");
    Objects.requireNonNull(seal, "seal");
    Objects.requireNonNull(given, "given");
    decisions = List.copyOf(decisions);
    visits = List.copyOf(visits);
  }

  /** Of a session that none went on from. */
  public Dossier(
      Review review, Procedure procedure, List<Recorded> decisions, Seal seal, Given given) {
    this(review, procedure, decisions, seal, given, List.of());
  }

  /** The number of a step in the walk, from 1; 0 if it does not have it. */
  int number(org.undercall.core.term.StepRef ref) {
    for (int i = 0; i < review.steps().size(); i++) {
      if (review.steps().get(i).place().ref().equals(ref)) {
        return i + 1;
      }
    }
    return 0;
  }

  /** Whether the values are said to be invented or for demonstration. */
  boolean invented() {
    return review.invented();
  }
}
