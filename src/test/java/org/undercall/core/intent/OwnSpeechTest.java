package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A phrase that was heard while the voice spoke")
class OwnSpeechTest {
  @ParameterizedTest(name = "{1} over: {0}")
  @CsvSource({
    "say check passed, check passed, true",
    "boot whole, check passed, false",
    "torque eight zero newton metres, torque reached eight zero, true",
    "torque eight zero newton metres, torque reached six two, false",
    "confirm ride height right, wheels carry the car, false",
    "confirm ride height right, right wheels carry the car, true",
    "confirm ride height right, left wheels carry the car, false",
    "right bush bolt, right suspension hangs free, true",
    "right bush bolt, right knuckle jacked body lifting, true",
    "right wheels carry the car, right side at ride height, false",
    "read it back right side at ride height, right side at ride height, true",
    "step completed torque reached, car is coming down, false",
  })
  @DisplayName("does not count if the voice may have said what matters of it")
  void mayBe(String spoken, String heard, boolean own) {
    RecognisedPhrase phrase = RecognisedPhrase.typed(heard);
    Intent intent =
        Interpreter.interpret(phrase, EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT)), 0);
    assertEquals(
        own, OwnSpeech.mayBe(phrase, intent, Set.of(spoken.split(" ", -1))), intent.toString());
  }
}
