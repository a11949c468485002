package org.undercall.adapter.speaker;

import java.util.regex.Pattern;

/** How the digits of a value are read. Never as one number: fifteen and fifty sound alike. */
public enum NumberStyle {
  /** Each digit on its own, with a short pause after it. */
  APART,
  /** In one go, up to three digits without a pause. */
  GROUPED;

  private static final String DIGIT =
      "(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|twelve|point)";
  private static final Pattern RUN = Pattern.compile("(?i)\\b" + DIGIT + "(?:, " + DIGIT + "\\b)+");

  /** The words with their runs of digits in this style. */
  String shaped(String words) {
    return this == APART ? words : RUN.matcher(words).replaceAll(run -> grouped(run.group()));
  }

  /** Groups of three from the end; what comes before them is a shorter group. */
  private static String grouped(String run) {
    String[] digits = run.split(", ", -1);
    StringBuilder grouped = new StringBuilder(digits[0]);
    for (int i = 1; i < digits.length; i++) {
      grouped.append((digits.length - i) % 3 == 0 ? ", " : " ").append(digits[i]);
    }
    return grouped.toString();
  }
}
