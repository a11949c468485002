package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.intent.IntentKind;

@DisplayName("A phrase ends early")
class QuickEndTest {
  private static final Set<IntentKind> ALL = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));
  private static final int FRAME = 30;
  private static final int NEVER = -1;

  private final QuickEnd end = new QuickEnd(new Waits(150, 210, 390, 510, 600, 900));

  QuickEndTest() {
    end.begin(ALL);
  }

  /** How long after the words it ends, in milliseconds; up to 3 s. */
  private int endOf(String words, boolean speech) {
    end.ended(FRAME, true, () -> words);
    for (int millis = FRAME; millis <= 3_000; millis += FRAME) {
      if (end.ended(FRAME, speech, () -> words)) {
        return millis;
      }
    }
    return NEVER;
  }

  @Nested
  @DisplayName("in quiet")
  class Quiet {
    @ParameterizedTest(name = "\"{0}\" after {1} ms")
    @CsvSource({
      "say again, 150",
      "step completed, 150",
      "one seven five newton meters, 150",
      "one seven five, 210",
      "one hundred seventy five, 210",
      "one hundred seventy, 390",
      "one hundred seventeen, 390",
      "torque reached, 510"
    })
    void afterItsWait(String words, int expected) {
      assertEquals(expected, endOf(words, false));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"one", "one seven", "one hundred", "one hundred and", "ten point", "[unk]", ""})
    @DisplayName("never, if the number has hardly begun or the words are no phrase")
    void never(String words) {
      assertEquals(NEVER, endOf(words, false));
    }

    @Test
    @DisplayName("not before the words have settled, however long it was quiet")
    void settled() {
      assertEquals(NEVER, endOf("one seven", false));
      assertFalse(end.ended(FRAME, false, () -> "one seven five"));
      assertFalse(end.ended(FRAME, false, () -> "one seven five"));
      assertFalse(end.ended(FRAME, false, () -> "one seven five"));
      assertTrue(end.ended(FRAME, false, () -> "one seven five"));
    }

    @Test
    @DisplayName("and speech starts the wait anew")
    void speechAgain() {
      for (int millis = 0; millis < 180; millis += FRAME) {
        assertFalse(end.ended(FRAME, false, () -> "one seven five"));
      }
      assertFalse(end.ended(FRAME, true, () -> "one seven five"));
      for (int millis = 0; millis < 180; millis += FRAME) {
        assertFalse(end.ended(FRAME, false, () -> "one seven five"));
      }
      assertTrue(end.ended(FRAME, false, () -> "one seven five"));
    }
  }

  @Nested
  @DisplayName("in noise")
  class Noise {
    @ParameterizedTest(name = "\"{0}\" after {1} ms of the same words")
    @CsvSource({
      "say again, 600",
      "one seven five, 900",
      "one seventy, -1",
      "torque reached, -1",
      "step completed, -1"
    })
    void afterSteadyWords(String words, int expected) {
      assertEquals(expected, endOf(words, true));
    }
  }

  @Nested
  @DisplayName("and holds")
  class Holds {
    @Test
    @DisplayName("if its final words are over too")
    void over() {
      assertEquals(210, endOf("one seven five", false));
      assertTrue(end.holds("one seven five"));
      assertTrue(end.holds("say again"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"one hundred seventy", "one seven", "torque reached", "ten point", ""})
    @DisplayName("not, if they could go on after all")
    void goesOn(String finalWords) {
      assertEquals(210, endOf("one seven five", false));
      assertFalse(end.holds(finalWords));
    }

    @Test
    @DisplayName("not, if another phrase has begun since")
    void begun() {
      endOf("one seven five", false);
      end.begin(ALL);
      assertFalse(end.holds("one seven five"));
    }
  }
}
