package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A denial")
class DenialsTest {
  private static final Set<IntentKind> ALL = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));

  private static Intent meaning(String words) {
    return Interpreter.interpret(RecognisedPhrase.typed(words), ALL, 0.6);
  }

  private static RecognisedPhrase heard(String words) {
    return InterpreterTest.heard(words, 0.9);
  }

  @ParameterizedTest
  @CsvSource({
    "torque not reached, TORQUE_COMPLETED",
    "the torque hasn't been reached, TORQUE_COMPLETED",
    "is torque reached, TORQUE_COMPLETED",
    "wrench has not clicked, TORQUE_COMPLETED",
    "wrench didn't click, TORQUE_COMPLETED",
    "angle only half turned, ANGLE_COMPLETED",
    "check not passed, CHECK_PASSED",
    "step isn't completed yet, STEP_COMPLETED",
    "that is not correct, READ_BACK_RIGHT",
    "wheels do not carry the car, WHEELS_CARRY",
    "left side is not at ride height, RIDE_HEIGHT_READ_BACK",
    "suspension doesn't hang free, HANGS_FREE",
    "used bolt fitted, NEW_HARDWARE",
    "new nut not fitted, NEW_HARDWARE"
  })
  @DisplayName("is understood as one of what it denies")
  void understood(String words, IntentKind denied) {
    assertEquals(new Intent.Denied(denied), meaning(words));
  }

  @ParameterizedTest
  @CsvSource({
    "that was not work [unk], that was not witnessed, WITNESSED",
    "not [unk] end of work, the torque was not reached, TORQUE_COMPLETED",
    "that was not correct, that was not correct, READ_BACK_RIGHT"
  })
  @DisplayName("whose word the list lacks is one of what was heard freely")
  void freely(String listed, String free, IntentKind denied) {
    RecognisedPhrase judged = Witness.judged(new HeardTwice(heard(listed), heard(free)), ALL, 0.6);
    assertEquals(new Intent.Denied(denied), Interpreter.interpret(judged, ALL, 0.6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"not today", "no", "never mind the radio"})
  @DisplayName("of nothing that can be said is no phrase")
  void ofNothing(String words) {
    assertFalse(meaning(words) instanceof Intent.Denied, words);
  }

  @ParameterizedTest
  @CsvSource({
    "torque reached, torque reached, TORQUE_COMPLETED",
    "torque reached, talk reached, TORQUE_COMPLETED",
    "one seven five, one seven five, VALUE_CALLED",
    "one seven five, not one seven five, UNCLEAR",
    "torque reached one seven five, torque not reached one seven five, DENIED",
    "torque reached, jack slipped, DANGER",
    "[unk], the wrench has not clicked, DENIED",
    "help, happy, UNCLEAR",
    "newton help me right, you didn't hear me right, UNCLEAR",
    "[unk], oh no the jack slipped, DANGER",
    "[unk], i want eight so the car fell with it, UNCLEAR",
    "[unk] car no, get me an americano, UNCLEAR",
    "[unk] end it is going two eight again, it is going to rain again, UNCLEAR",
    "torque not reached, talk not reached, DENIED",
    "[unk], done, SHORT_ANSWER",
    "[unk], tightened to torque, UNCLEAR"
  })
  @DisplayName(
      "that is heard freely is believed against a phrase, and a phrase is never made by it")
  void witness(String listed, String free, String kind) {
    assertTrue(Witness.isWanted(heard(listed), ALL, 0.6), listed);
    RecognisedPhrase judged = Witness.judged(new HeardTwice(heard(listed), heard(free)), ALL, 0.6);
    IntentKind found = Interpreter.interpret(judged, ALL, 0.6).kind();
    assertEquals(kind, found.name(), judged.text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"jack slipped", "jack moved", "the car dropped"})
  @DisplayName("is not listened for where the car, the jack or a stand is named")
  void obeyedAtOnce(String words) {
    assertFalse(Witness.isWanted(heard(words), ALL, 0.6), words);
  }

  @ParameterizedTest
  @CsvSource({
    "torque not reached, NOTE",
    "check has not passed, CHECK_PASSED",
    "step not quite completed, STEP_COMPLETED"
  })
  @DisplayName("of what closes is refused as an own wording for anything")
  void ownWording(String wording, IntentKind kind) {
    assertEquals(1, OwnWords.problems(java.util.Map.of(wording, kind)).size());
  }

  @Test
  @DisplayName("is not needed to cancel a load: half the certainty does, among any words")
  void cancels() {
    for (String words : List.of("jack slipped", "oh the jack slipped again", "car moved")) {
      Intent intent = Interpreter.interpret(InterpreterTest.heard(words, 0.35), ALL, 0.6);
      assertTrue(intent.kind().cancelsLoad(), words);
    }
    assertEquals(
        IntentKind.JACK_MOVED,
        Interpreter.interpret(
                heard("then jack moved a bit"),
                EnumSet.of(IntentKind.NOTE_TEXT, IntentKind.JACK_MOVED),
                0.6)
            .kind());
  }
}
