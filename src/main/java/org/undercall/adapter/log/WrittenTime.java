package org.undercall.adapter.log;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Times as a log has them. The form that the program writes is read straight away; any other form
 * of ISO 8601 goes to the general parser, which takes many times as long.
 */
final class WrittenTime {
  private static final String SECONDS = "0000-00-00T00:00:00";
  private static final String NANOS = SECONDS + ".000000000";
  private static final String OFFSET = "+00:00";
  private static final int LAST_YEAR = 9999;

  private WrittenTime() {}

  /**
   * Date, time and offset.
   *
   * @throws DateTimeException if the text is no such time, or of another year than 1 to 9999, which
   *     does not fit into milliseconds
   */
  static OffsetDateTime wall(String text) {
    return inYears(written(text).orElseGet(() -> OffsetDateTime.parse(text)));
  }

  /**
   * An instant.
   *
   * @throws DateTimeException as {@link #wall}
   */
  static Instant instant(String text) {
    Optional<OffsetDateTime> written = text.endsWith("Z") ? written(text) : Optional.empty();
    return inYears(written.orElseGet(() -> Instant.parse(text).atOffset(ZoneOffset.UTC)))
        .toInstant();
  }

  /** The time if it has the form that the program writes: seconds, nine digits at most, offset. */
  private static Optional<OffsetDateTime> written(String text) {
    int end = text.length() - (text.endsWith("Z") ? 1 : OFFSET.length());
    return isWritten(text, end)
        ? Optional.of(
            OffsetDateTime.of(
                number(text, 0, 4),
                number(text, 5, 7),
                number(text, 8, 10),
                number(text, 11, 13),
                number(text, 14, 16),
                number(text, 17, 19),
                nano(text, end),
                ZoneOffset.of(text.substring(end))))
        : Optional.empty();
  }

  private static boolean isWritten(String text, int end) {
    return end >= SECONDS.length()
        && end <= NANOS.length()
        && end != SECONDS.length() + 1
        && hasForm(text, 0, end, NANOS)
        && (text.endsWith("Z") || hasForm(text, end, text.length(), OFFSET))
        && number(text, 11, 13) < 24
        && number(text, 14, 16) < 60
        && number(text, 17, 19) < 60;
  }

  private static int nano(String text, int end) {
    String digits = text.substring(Math.min(end, SECONDS.length() + 1), end);
    return number(digits + "000000000", 0, 9);
  }

  /**
   * Whether a part of a text has digits where a form has them, and its signs where it has those.
   */
  private static boolean hasForm(String text, int start, int end, String form) {
    for (int i = start; i < end; i++) {
      char found = text.charAt(i);
      char wanted = form.charAt(i - start);
      boolean digit = found >= '0' && found <= '9';
      if (wanted == '0' ? !digit : found != wanted && !(wanted == '+' && found == '-')) {
        return false;
      }
    }
    return true;
  }

  private static int number(String text, int start, int end) {
    return Integer.parseInt(text, start, end, 10);
  }

  private static OffsetDateTime inYears(OffsetDateTime time) {
    if (time.getYear() < 1 || time.getYear() > LAST_YEAR) {
      throw new DateTimeException("year " + time.getYear());
    }
    return time;
  }
}
