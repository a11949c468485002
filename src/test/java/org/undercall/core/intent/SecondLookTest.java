package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A second look")
class SecondLookTest {
  private static final Set<IntentKind> ALLOWED =
      Set.of(IntentKind.VALUE_CALLED, IntentKind.TORQUE_COMPLETED, IntentKind.HOLD);

  private static Optional<List<String>> phrases(String words, double confidence) {
    List<RecognisedPhrase.Word> heard =
        List.of(words.split(" ", -1)).stream()
            .map(word -> new RecognisedPhrase.Word(word, confidence, 0, 0))
            .toList();
    return SecondLook.phrases(new RecognisedPhrase(heard), ALLOWED, 0.6);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"one seven five", "seven", "[unk] seven five", "one seventy newton meters"})
  @DisplayName("is taken at every value, with all numbers to listen for")
  void values(String words) {
    List<String> list = phrases(words, 1).orElseThrow();
    assertTrue(
        list.containsAll(List.of("one seven five", "nine nine nine", "seventy", "ten bar")), words);
    assertTrue(list.stream().noneMatch(phrase -> phrase.startsWith("torque")));
  }

  @Test
  @DisplayName("keeps the words before a value as they are")
  void framed() {
    List<String> list = phrases("torque reached one five", 1).orElseThrow();
    assertTrue(list.contains("torque reached one seven five"));
    assertTrue(list.stream().allMatch(phrase -> phrase.startsWith("torque reached ")));
  }

  @Test
  @DisplayName("is not taken at a phrase that was understood")
  void understood() {
    assertEquals(Optional.empty(), phrases("take a break now", 1));
    assertEquals(Optional.empty(), phrases("torque reached", 0.7));
  }

  @Test
  @DisplayName("is taken at a phrase that was not understood, with all phrases to listen for")
  void unclear() {
    Optional<List<String>> all = Optional.of(Phrasebook.wordList(ALLOWED));
    assertEquals(all, phrases("take a break now", 0.5));
    assertEquals(all, phrases("take [unk] now", 1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"take six seven", "free hundred and thirteen", "nine take six", "a by nine five"})
  @DisplayName("is taken at words that are mostly a number, with all numbers to listen for")
  void mostlyNumber(String words) {
    List<String> list = phrases(words, 1).orElseThrow();
    assertTrue(list.containsAll(List.of("six six seven", "nine six", "seventy")), words);
    assertTrue(list.stream().noneMatch(phrase -> phrase.startsWith("take")), words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"take a break two", "torque six", "torque reached take six"})
  @DisplayName("listens for all phrases where a number is not most of it")
  void hardlyNumber(String words) {
    assertEquals(Optional.of(Phrasebook.wordList(ALLOWED)), phrases(words, 1), words);
  }

  @Test
  @DisplayName("is not taken at foreign words alone")
  void foreign() {
    assertEquals(Optional.empty(), phrases("[unk] [unk]", 1));
  }

  private static Optional<List<String>> ofNote(String words) {
    return SecondLook.phrases(
        RecognisedPhrase.typed(words),
        Set.of(IntentKind.NOTE_TEXT, IntentKind.VALUE_CALLED, IntentKind.DANGER),
        0.6);
  }

  @Test
  @DisplayName("at a note of a few words is for calls of danger, at a longer one for nothing")
  void note() {
    List<String> calls = ofNote("part is moving").orElseThrow();
    assertTrue(calls.contains("car is moving"), calls.toString());
    assertFalse(calls.contains("torque reached"), calls.toString());
    assertEquals(Optional.empty(), ofNote("the left bush is torn all the way through"));
  }
}
