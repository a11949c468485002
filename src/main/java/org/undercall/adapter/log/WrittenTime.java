package org.undercall.adapter.log;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times as a log has them. The form that the program writes is read straight away; any other form
 * of ISO 8601 goes to the general parser, which takes many times as long.
 */
final class WrittenTime {
  private static final Pattern WRITTEN =
      Pattern.compile(
          "([0-9]{4})-([0-9]{2})-([0-9]{2})T([01][0-9]|2[0-3]):([0-5][0-9]):([0-5][0-9])"
              + "(?:\\.([0-9]{1,9}))?(Z|[+-][0-9]{2}:[0-9]{2})");
  private static final int NANO = 7;
  private static final int OFFSET = 8;
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

  private static Optional<OffsetDateTime> written(String text) {
    Matcher parts = WRITTEN.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    int[] numbers = new int[NANO];
    for (int i = 1; i < NANO; i++) {
      numbers[i] = Integer.parseInt(text, parts.start(i), parts.end(i), 10);
    }
    String nano =
        parts.group(NANO) == null ? "0" : (parts.group(NANO) + "00000000").substring(0, 9);
    return Optional.of(
        OffsetDateTime.of(
            numbers[1],
            numbers[2],
            numbers[3],
            numbers[4],
            numbers[5],
            numbers[6],
            Integer.parseInt(nano),
            ZoneOffset.of(parts.group(OFFSET))));
  }

  private static OffsetDateTime inYears(OffsetDateTime time) {
    if (time.getYear() < 1 || time.getYear() > LAST_YEAR) {
      throw new DateTimeException("year " + time.getYear());
    }
    return time;
  }
}
