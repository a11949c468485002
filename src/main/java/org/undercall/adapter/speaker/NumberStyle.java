package org.undercall.adapter.speaker;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.undercall.core.intent.ConfusableNumbers;
import org.undercall.core.term.NumberNames;

/** How the digits of a value are read. */
public enum NumberStyle {
  /** Each digit on its own, with a short pause after it. */
  APART {
    @Override
    String read(List<String> digits) {
      return String.join(", ", digits);
    }
  },
  /** Each digit on its own, up to three without a pause. */
  GROUPED {
    @Override
    String read(List<String> digits) {
      int end = digits.contains("point") ? digits.indexOf("point") : digits.size();
      StringBuilder grouped = new StringBuilder(digits.get(0));
      for (int i = 1; i < digits.size(); i++) {
        boolean group = i < end && (end - i) % 3 == 0;
        grouped.append(group ? ", " : " ").append(digits.get(i));
      }
      return grouped.toString();
    }
  },
  /**
   * As people say it, "one seventy-five", up to three digits; a number that sounds like another
   * one, such as fifty and fifteen, by its digits.
   */
  NATURAL {
    @Override
    String read(List<String> digits) {
      int point = digits.indexOf("point");
      List<String> whole = point < 0 ? digits : digits.subList(0, point);
      if (whole.isEmpty() || whole.size() > 3 || !NumberNames.DIGITS.containsAll(whole)) {
        return GROUPED.read(digits);
      }
      int value =
          whole.stream().mapToInt(NumberNames.DIGITS::indexOf).reduce(0, (v, d) -> 10 * v + d);
      boolean odd = value < 10 || (value % 100 < 10 && value % 100 > 0);
      if (odd || ConfusableNumbers.isConfusable(BigDecimal.valueOf(value))) {
        return GROUPED.read(digits);
      }
      String spoken = spoken(value);
      return point < 0
          ? spoken
          : spoken + " " + String.join(" ", digits.subList(point, digits.size()));
    }
  };

  private static final String DIGIT =
      "(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|twelve|point)";
  private static final Pattern RUN =
      Pattern.compile("(?<![-\\w])(?i)" + DIGIT + "(?: " + DIGIT + "\\b)+");

  /** The words with their runs of digits in this style. */
  String shaped(String words) {
    return RUN.matcher(words)
        .replaceAll(
            run -> {
              String read = read(List.of(run.group().toLowerCase(Locale.ROOT).split(" ", -1)));
              boolean capital = Character.isUpperCase(run.group().charAt(0));
              return capital ? Character.toUpperCase(read.charAt(0)) + read.substring(1) : read;
            });
  }

  /** A run of digits in small letters, at least two. */
  abstract String read(List<String> digits);

  /** A number from 10 to 999 whose last two digits are none, or ten and more and no teen. */
  private static String spoken(int value) {
    int rest = value % 100;
    String hundreds = value < 100 ? "" : NumberNames.of(value / 100) + " ";
    return hundreds + (rest == 0 ? "hundred" : NumberNames.of(rest));
  }
}
