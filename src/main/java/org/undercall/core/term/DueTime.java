package org.undercall.core.term;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the words of a procedure come to.
 *
 * @param when of which kind
 * @param days after the day of the hand-over; 0 before driving, empty for other kinds
 * @param kilometres the distance in kilometres; empty for other kinds and for miles
 */
public record DueTime(DueTime.When when, OptionalInt days, Optional<BigDecimal> kilometres) {
  /** When something is due, the first first. */
  public enum When {
    /** Before the car is driven: at the end of the work. */
    BEFORE_DRIVING,
    /** After so many days. */
    DAYS,
    /** After a distance: a calendar has no day for it. */
    DISTANCE,
    /** At another time, which the words tell and the program does not read. */
    OTHER
  }

  private static final Pattern DISTANCE =
      Pattern.compile("([0-9][0-9,.]*)?\\s*(?<![a-z])(km|kilomet(?:er|re)s?|miles?)\\b");
  private static final Pattern SPAN =
      Pattern.compile("\\b([0-9]{1,3}|a|an|one|two|three) (day|week|month)s?\\b");
  private static final Pattern NEXT_DAY =
      Pattern.compile("\\b(tomorrow|next (working )?(day|morning)|day after|morning after)\\b");
  private static final Pattern DRIVEN =
      Pattern.compile(
          "\\b(before|not until)\\b.*\\b(driv\\w*|drove|moved?|road|leaves?|handed|given|goes|go"
              + "|returned|collected|used?|test run)\\b");
  private static final int WEEK = 7;
  private static final int MONTH = 30;

  /**
   * Reads the words. What stands before driving is looked for first, so that an item with both is
   * held to be the nearer one; what is not understood is another time.
   */
  public static DueTime of(String words) {
    String text = words.toLowerCase(Locale.ROOT);
    if (DRIVEN.matcher(text).find()) {
      return new DueTime(When.BEFORE_DRIVING, OptionalInt.of(0), Optional.empty());
    }
    Matcher distance = DISTANCE.matcher(text);
    if (distance.find()) {
      return new DueTime(When.DISTANCE, OptionalInt.empty(), kilometres(distance));
    }
    if (NEXT_DAY.matcher(text).find()) {
      return new DueTime(When.DAYS, OptionalInt.of(1), Optional.empty());
    }
    Matcher span = SPAN.matcher(text);
    return span.find()
        ? new DueTime(When.DAYS, OptionalInt.of(days(span)), Optional.empty())
        : new DueTime(When.OTHER, OptionalInt.empty(), Optional.empty());
  }

  private static Optional<BigDecimal> kilometres(Matcher distance) {
    String number = distance.group(1) == null ? "" : distance.group(1).replace(",", "");
    boolean plain = number.matches("[0-9]{1,7}(\\.[0-9]{1,2})?"); // 1.000 may be a thousand.
    return plain && distance.group(2).startsWith("k")
        ? Optional.of(new BigDecimal(number))
        : Optional.empty();
  }

  private static int days(Matcher span) {
    int count =
        switch (span.group(1)) {
          case "a", "an", "one" -> 1;
          case "two" -> 2;
          case "three" -> 3;
          default -> Integer.parseInt(span.group(1));
        };
    return switch (span.group(2)) {
      case "week" -> count * WEEK;
      case "month" -> count * MONTH;
      default -> count;
    };
  }
}
