package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.port.Fault;

@DisplayName("What a phrase is weighed against")
class RivalsTest {
  private static final Set<IntentKind> ALL = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));

  private static Intent meaning(String words) {
    return Interpreter.interpret(RecognisedPhrase.typed(words), ALL, 0.6);
  }

  private static List<String> rivals(String phrase) {
    return Witness.rivals(RecognisedPhrase.typed(phrase), ALL, 0.6);
  }

  private static List<String> closing() {
    return ALL.stream()
        .filter(IntentKind::closes)
        .flatMap(kind -> Phrasebook.withoutNumber(kind).stream())
        .toList();
  }

  @Test
  @DisplayName("means something else, and closes nothing if a word was put in")
  void somethingElse() {
    for (String phrase : closing()) {
      List<String> rivals = rivals(phrase);
      assertEquals(phrase, rivals.get(0));
      for (String rival : rivals.subList(1, rivals.size())) {
        assertNotEquals(meaning(phrase), meaning(rival), rival);
        boolean more = rival.split(" ", -1).length > phrase.split(" ", -1).length;
        assertFalse(more && meaning(rival).kind().closes(), rival);
      }
    }
  }

  @Test
  @DisplayName("is the phrase with a denial at any place, the other side and the contrary")
  void around() {
    assertTrue(rivals("torque reached").contains("torque not reached"));
    assertTrue(rivals("torque reached").contains("torque reached [unk]"));
    assertTrue(rivals("left side at ride height").contains("right side at ride height"));
    assertTrue(rivals("new bolt fitted").contains("used bolt fitted"));
    assertTrue(
        rivals("torque reached one seven five").contains("torque not reached one seven five"));
    assertFalse(
        rivals("torque reached one seven five").contains("torque reached when one seven five"));
    assertFalse(
        rivals("torque reached one seven five").contains("torque reached one not seven five"));
    assertEquals(List.of(), rivals("say again"));
  }

  @Test
  @DisplayName("is made of words that the model knows")
  void known() throws Fault {
    Set<String> words = new TreeSet<>();
    closing().forEach(p -> rivals(p).forEach(r -> words.addAll(List.of(r.split(" ", -1)))));
    assertEquals(List.of(), TestModel.shared().unknownWords(words));
  }

  @ParameterizedTest
  @CsvSource({
    "torque reached, 10, torque not reached, 6.9, false, TORQUE_COMPLETED",
    "torque reached, 10, torque not reached, 7.1, false, UNCLEAR",
    "torque reached, 10, torque not reached, 6.9, true, UNCLEAR",
    "torque reached, 10, torque not reached, 5.9, true, UNCLEAR",
    "torque reached, 10, torque not reached, 5.7, true, TORQUE_COMPLETED",
    "walk rich, 10, torque not reached, 6.1, false, UNCLEAR",
    "walk rich, 10, torque not reached, 5.9, false, TORQUE_COMPLETED",
    "walk rich, 10, torque not reached, 5.4, true, UNCLEAR",
    "torque reached, 10, torque not reached, 13.1, false, DENIED",
    "torque reached, 10, torque not reached, 12.9, false, UNCLEAR",
    "torque not reached, 10, torque nearly reached, 6.1, false, DENIED",
    "sort not reached, 10, torque not reached, 6.1, false, DENIED",
    "sort not reached, 10, torque not reached, 5.9, false, TORQUE_COMPLETED",
    "sort not reached, 10, torque not reached, 1, true, DENIED",
    "jack slipped, 10, torque nearly reached, 7, false, DANGER",
    "left side at ride height, 10, right side at ride height, 8, false, UNCLEAR"
  })
  @DisplayName("must be far less likely, farther in poor sound, and if a denial was heard freely")
  void weighed(String free, double own, String rival, double other, boolean poor, IntentKind kind) {
    String phrase = rival.startsWith("right") ? "left side at ride height" : "torque reached";
    Alternative mine = new Alternative(InterpreterTest.heard(phrase, 1).words(), own);
    Alternative its = new Alternative(InterpreterTest.heard(rival, 1).words(), other);
    RecognisedPhrase heard = InterpreterTest.heard(phrase, 0.9);
    HeardTwice both = new HeardTwice(heard, InterpreterTest.heard(free, 0.9));
    RecognisedPhrase weighed = Witness.weighed(both, List.of(mine, its), poor, ALL, 0.6);
    assertEquals(kind, Interpreter.interpret(weighed, ALL, 0.6).kind(), weighed.text());
  }

  @Test
  @DisplayName("is not believed if the phrase itself was not heard again")
  void gone() {
    RecognisedPhrase heard = InterpreterTest.heard("torque reached", 0.9);
    HeardTwice both = new HeardTwice(heard, heard);
    Alternative denied =
        new Alternative(InterpreterTest.heard("torque never reached", 1).words(), 3);
    RecognisedPhrase none = Witness.weighed(both, List.of(), false, ALL, 0.6);
    assertEquals(IntentKind.UNCLEAR, Interpreter.interpret(none, ALL, 0.6).kind());
    RecognisedPhrase other = Witness.weighed(both, List.of(denied), false, ALL, 0.6);
    assertEquals(IntentKind.DENIED, Interpreter.interpret(other, ALL, 0.6).kind());
  }
}
