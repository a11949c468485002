package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What could follow")
class ContinuationsTest {
  private static final Set<IntentKind> ALL = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));

  private static Optional<Continuation> after(String words) {
    return Continuations.of(words, ALL);
  }

  @Nested
  @DisplayName("a phrase")
  class Phrases {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "say again",
          "cancel that",
          "open step two again",
          "put off for ride height",
          "change to the left side",
          "one seven five newton meters",
          "go to step twenty one",
          "go to step one zero five"
        })
    @DisplayName("is nothing, if it is whole")
    void nothing(String words) {
      assertEquals(Optional.of(Continuation.NOTHING), after(words));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "step completed",
          "tightened to torque",
          "left side at ride height",
          "head marking eight point eight",
          "torque reached one seven five newton meters"
        })
    @DisplayName("is a denial, if it is whole and closes or confirms something")
    void denial(String words) {
      assertEquals(Optional.of(Continuation.DENIAL), after(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"torque reached", "angle turned", "wrench clicked"})
    @DisplayName("is more, if a longer one begins with it")
    void more(String words) {
      assertEquals(Optional.of(Continuation.MORE), after(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"step", "one hundred and", "ten point", "ten newton", "[unk]", ""})
    @DisplayName("is not told as long as the words are none")
    void unfinished(String words) {
      assertEquals(Optional.empty(), after(words));
    }

    @Test
    @DisplayName("depends on what may be said now")
    void allowed() {
      assertEquals(
          Optional.of(Continuation.NOTHING),
          Continuations.of("say again", EnumSet.of(IntentKind.REPEAT)));
      assertEquals(
          Optional.empty(), Continuations.of("say again", EnumSet.of(IntentKind.STEP_COMPLETED)));
      assertEquals(
          Optional.empty(), Continuations.of("say again", EnumSet.allOf(IntentKind.class)));
    }
  }

  @Nested
  @DisplayName("a number")
  class Numbers {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
      "one, NUMBER",
      "one seven, NUMBER",
      "one seven five, UNIT",
      "one seven five oh, UNIT",
      "one hundred, NUMBER",
      "a hundred, NUMBER",
      "one thousand, NUMBER",
      "one thousand two hundred, NUMBER",
      "one hundred seventy, DIGIT",
      "one hundred and seventy, DIGIT",
      "one seventy, DIGIT",
      "seventy, DIGIT",
      "eighteen, DIGIT",
      "one eighteen, DIGIT",
      "one hundred eighteen, DIGIT",
      "one hundred ten, UNIT",
      "seventy five, UNIT",
      "one hundred seventy five, UNIT",
      "zero, NUMBER",
      "ten, MORE",
      "eleven, MORE",
      "ten point five, DIGIT",
      "ten point five oh, UNIT",
      "it reads one seven, NUMBER",
      "torque reached one hundred, NUMBER",
      "go to step one, DIGIT"
    })
    void afterNumber(String words, Continuation expected) {
      assertEquals(Optional.of(expected), after(words));
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 17, 20, 75, 100, 110, 175, 300, 1000, 1250})
    @DisplayName("is at least a unit, in whatever words it is said")
    void neverNothing(int number) {
      for (String words : NumberWordings.of(number)) {
        assertTrue(
            after(words).orElseThrow().compareTo(Continuation.NOTHING) > 0,
            () -> words + ": " + after(words));
      }
    }

    @Test
    @DisplayName("is at least a digit if its words begin a longer one below a thousand")
    void prefixes() {
      for (int number = 1; number < 1000; number++) {
        for (String words : NumberWordings.of(number)) {
          requirePrefixesWait(words);
        }
      }
    }

    private void requirePrefixesWait(String words) {
      for (int cut = words.indexOf(' '); cut > 0; cut = words.indexOf(' ', cut + 1)) {
        String begun = words.substring(0, cut);
        Optional<Continuation> next = after(begun);
        assertTrue(
            next.isEmpty() || next.get().compareTo(Continuation.DIGIT) >= 0,
            () -> begun + " of " + words + ": " + next);
      }
    }
  }
}
