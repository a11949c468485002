package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.intent.OwnWords.Trouble;

@DisplayName("Own words")
class OwnWordsTest {
  private static final OwnWords OWN =
      OwnWords.of(
          Map.of(
              "coffee time for me",
              IntentKind.HOLD,
              "done with this one",
              IntentKind.STEP_COMPLETED));

  @ParameterizedTest
  @CsvSource({
    "STEP_COMPLETED, done, FORM",
    "STEP_COMPLETED, Done with it, FORM",
    "STEP_COMPLETED, done  with it, FORM",
    "STEP_COMPLETED, done with 2, FORM",
    "STEP_COMPLETED, a b c d e f g h i, FORM",
    "VALUE_CALLED, my number here, NO_FIXED_WORDING",
    "NOTE_TEXT, my number here, NO_FIXED_WORDING",
    "HOLD, say again, KNOWN",
    "HOLD, one seven five, KNOWN",
    "HOLD, torque is reached, TOO_CLOSE",
    "HOLD, torque turned, TOO_CLOSE",
    "HOLD, left side at ride height now, TOO_CLOSE",
    "HOLD, at ride height, TOO_CLOSE",
    "HOLD, new bolts fitted, TOO_CLOSE"
  })
  @DisplayName("that could be mistaken, or never heard, are refused")
  void refused(IntentKind kind, String wording, Trouble trouble) {
    List<OwnWords.Problem> problems = OwnWords.problems(Map.of(wording, kind));
    assertEquals(List.of(trouble), problems.stream().map(OwnWords.Problem::trouble).toList());
    assertThrows(IllegalArgumentException.class, () -> OwnWords.of(Map.of(wording, kind)));
  }

  @Test
  @DisplayName("may be close to the program's words of the same meaning, not to other own words")
  void close() {
    assertEquals(
        List.of(), OwnWords.problems(Map.of("torque was reached", IntentKind.TORQUE_COMPLETED)));
    assertEquals(
        2,
        OwnWords.problems(
                Map.of("coffee time now", IntentKind.HOLD, "coffee time over", IntentKind.RESUME))
            .size());
  }

  @Test
  @DisplayName("are listened for where what they stand for is")
  void listened() {
    List<String> working = Phrasebook.wordList(Set.of(IntentKind.STEP_COMPLETED));
    List<String> with = OWN.with(working);
    assertTrue(with.contains("done with this one"));
    assertFalse(with.contains("coffee time for me"));
    assertEquals(working.size() + 1, with.size());
    assertEquals(List.of("that is correct"), OwnWords.none().with(List.of("that is correct")));
  }

  @Test
  @DisplayName("become the program's words, in the same time and as sure as their least sure word")
  void translated() {
    RecognisedPhrase heard =
        new RecognisedPhrase(
            List.of(
                new RecognisedPhrase.Word("coffee", 0.9, 1, 1.2),
                new RecognisedPhrase.Word("time", 0.7, 1.2, 1.4),
                new RecognisedPhrase.Word("for", 1, 1.4, 1.5),
                new RecognisedPhrase.Word("me", 1, 1.5, 2)));
    RecognisedPhrase standard = new RecognisedPhrase(OWN.inStandard(heard.words()));
    assertEquals(0.7, standard.confidence());
    assertEquals(1, standard.words().get(0).start());
    assertEquals(2, standard.words().get(standard.words().size() - 1).end(), 1e-9);
    Set<IntentKind> all = EnumSet.allOf(IntentKind.class);
    all.remove(IntentKind.NOTE_TEXT);
    assertEquals(IntentKind.HOLD, Interpreter.interpret(standard, all, 0.6).kind());
    RecognisedPhrase other = RecognisedPhrase.typed("coffee time for you");
    assertEquals(other.words(), OWN.inStandard(other.words()));
  }
}
