package org.undercall.adapter.report;

import java.util.List;
import java.util.Locale;
import org.undercall.core.check.Severity;

/** Findings about a procedure as text: one paragraph each, and a line that counts them. */
public final class FindingsText {
  private FindingsText() {}

  /**
   * The whole text, ended with a line feed.
   *
   * @param findings in the order to be shown
   */
  public static String of(List<PlacedFinding> findings) {
    Lines lines = new Lines();
    for (PlacedFinding placed : findings) {
      lines.add(
          0,
          placed.finding().rule().code()
              + " "
              + word(placed.finding().rule().severity())
              + " "
              + placed.place());
      lines.add(1, placed.finding().rule().meaning());
      lines.add(1, "found " + placed.finding().found());
      lines.add(1, "expected " + placed.finding().expected());
      lines.add(1, "to do: " + placed.finding().todo());
      lines.add(1, "source: " + placed.finding().rule().source());
    }
    lines.add(0, total(findings));
    return lines.toString();
  }

  private static String total(List<PlacedFinding> findings) {
    return findings.isEmpty()
        ? "No finding. That a procedure is right is for its author to say."
        : count(findings, Severity.ERROR)
            + ", "
            + count(findings, Severity.WARNING)
            + ", "
            + count(findings, Severity.REMARK)
            + ".";
  }

  private static String count(List<PlacedFinding> findings, Severity severity) {
    long count = findings.stream().filter(f -> f.finding().rule().severity() == severity).count();
    return count + " " + word(severity) + (count == 1 ? "" : "s");
  }

  /** How heavy a finding is, in a word. */
  public static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }
}
