package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.term.JobField;
import org.undercall.core.term.Measure;
import org.undercall.core.term.SpellingAlphabet;
import org.undercall.core.term.Vin;

/** What the program says about the car, the job and who works. */
public final class JobTalk {
  private JobTalk() {}

  /**
   * The session goes on from another one.
   *
   * @param before the odometer at the work before
   * @param now as it stands now
   */
  public static Reply visit(Optional<Measure> before, Optional<Measure> now) {
    Reply begun = Reply.of("A visit to re-torque what was tightened before.");
    Reply then =
        before
            .map(km -> begun.and(Reply.of("Odometer then: " + digits(km) + " kilometres.")))
            .orElse(begun);
    return now.flatMap(km -> lower(before, km.amount())).map(then::and).orElse(then);
  }

  /** The odometer stands lower than it did at the work before; empty if it does not. */
  public static Optional<Reply> lower(Optional<Measure> before, BigDecimal now) {
    return before
        .filter(km -> now.compareTo(km.amount()) < 0)
        .map(
            km ->
                Reply.of(
                    "The odometer is lower than then: "
                        + digits(km)
                        + ". Is this the same car? If a figure is wrong, say it again."));
  }

  /** What was told is not of the car that was worked on before. */
  public static Reply otherCar(JobField field, String of) {
    return Reply.of(
        "No. The work before was on "
            + name(field)
            + " "
            + SpellingAlphabet.spelled(of)
            + ". This would be another car.");
  }

  private static String digits(Measure km) {
    return SpellingAlphabet.spelled(km.amount().toPlainString());
  }

  /** What was told, read back as it is spelled. */
  public static Reply readBack(JobField field, String text) {
    return Reply.of(Words.sentence(name(field)) + ": " + SpellingAlphabet.spelled(text) + ".")
        .and(Ask.correct());
  }

  /** It was kept. */
  public static Reply kept() {
    return Reply.of("Kept.");
  }

  /**
   * A part of an identification number, or the last of it, was kept.
   *
   * @param length how many characters there are now
   * @param check whether the check digit fits; empty before the last character
   */
  public static Reply vinKept(int length, Optional<Boolean> check) {
    return check
        .map(
            fits ->
                Reply.of(
                    fits
                        ? "Kept. The check digit fits."
                        : "Kept. The check digit does not fit: it may have none."))
        .orElse(
            Reply.of(
                Words.sentence(Words.count(length))
                    + " of "
                    + Words.count(Vin.LENGTH)
                    + " kept. Say: vehicle number, and the next ones."));
  }

  /** What was told last was taken back; parts of an identification number all are. */
  public static Reply takenBack() {
    return Reply.of("Taken back. A vehicle number begins again.");
  }

  /** What was told cannot be one. */
  public static Reply refused(JobField field) {
    return Reply.of(
        switch (field) {
          case VIN -> "No. A vehicle number has seventeen characters, none of them I, O or Q.";
          case ODOMETER -> "No. Up to seven digits, in kilometres.";
          case REGISTRATION, JOB_NUMBER, TECHNICIAN -> "No. Up to twenty characters.";
        });
  }

  private static String name(JobField field) {
    return switch (field) {
      case REGISTRATION -> "registration";
      case VIN -> "vehicle number";
      case ODOMETER -> "odometer, kilometres";
      case JOB_NUMBER -> "job number";
      case TECHNICIAN -> "technician";
    };
  }
}
