package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read straight away is what the general parser reads. */
class WrittenTimeTest {
  private static final int ROUNDS = 20_000;
  private static final String LETTERS = "0123456789-+:.TZtz ,٣";

  /** The value, or nothing if the text is refused. */
  private static <T> Optional<T> read(Function<String, T> reader, String text) {
    try {
      return Optional.of(reader.apply(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static OffsetDateTime inYears(OffsetDateTime time) {
    if (time.getYear() < 1 || time.getYear() > 9999) {
      throw new DateTimeException("far");
    }
    return time;
  }

  private static void assertAsParser(String text) {
    assertEquals(
        read(t -> inYears(OffsetDateTime.parse(t)), text), read(WrittenTime::wall, text), text);
    assertEquals(
        read(t -> inYears(Instant.parse(t).atOffset(ZoneOffset.UTC)).toInstant(), text),
        read(WrittenTime::instant, text),
        text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-03-01T08:05:09+01:00",
        "2026-03-01T08:05:09.1Z",
        "2026-03-01T08:05:09.123456789-18:00",
        "2026-03-01T08:05:09.1234567891Z",
        "2026-03-01T08:05:09.Z",
        "2026-03-01T08:05Z",
        "2026-03-01t08:05:09z",
        "2026-02-29T08:05:09Z",
        "2024-02-29T08:05:09Z",
        "2026-13-01T08:05:09Z",
        "2026-00-10T08:05:09Z",
        "2026-04-31T08:05:09Z",
        "2026-03-01T24:00:00Z",
        "2026-03-01T24:00:00+00:00",
        "2026-03-01T23:59:60Z",
        "2026-03-01T08:60:09Z",
        "2026-03-01T08:05:09+18:01",
        "2026-03-01T08:05:09+19:00",
        "2026-03-01T08:05:09+01:60",
        "2026-03-01T08:05:09-00:00",
        "2026-03-01T08:05:09+01:00:30",
        "2026-03-01T08:05:09+01",
        "2026-03-01T08:05:09+0100",
        "2026-03-01T08:05:09",
        "0000-03-01T08:05:09Z",
        "0001-01-01T00:00:00+18:00",
        "9999-12-31T23:59:59.999999999-18:00",
        "10000-01-01T00:00:00Z",
        "+10000-01-01T00:00:00Z",
        "-0001-01-01T00:00:00Z",
        "٢٠٢٦-03-01T08:05:09Z",
        " 2026-03-01T08:05:09Z",
        "2026-03-01T08:05:09Z ",
        "2026-03-01T08:05:09Z\n",
        "2026-03-01",
        ""
      })
  void everyFormIsReadOrRefusedAsByTheParser(String text) {
    assertAsParser(text);
  }

  @Test
  void everyTimeThatIsWrittenAndEveryChangeToItIsReadOrRefusedAsByTheParser() {
    Random random = new Random(5);
    for (int i = 0; i < ROUNDS; i++) {
      OffsetDateTime time =
          OffsetDateTime.ofInstant(
              Instant.ofEpochSecond(
                  random.nextLong(-60_000_000_000L, 250_000_000_000L),
                  i % 2 == 0 ? 0 : random.nextInt(1_000_000_000)),
              i % 3 == 0 ? ZoneOffset.UTC : ZoneOffset.ofHoursMinutes(i % 19 - 9, 0));
      String text = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
      assertAsParser(text);
      StringBuilder changed = new StringBuilder(text);
      changed.setCharAt(
          random.nextInt(text.length()), LETTERS.charAt(random.nextInt(LETTERS.length())));
      assertAsParser(changed.toString());
    }
  }
}
