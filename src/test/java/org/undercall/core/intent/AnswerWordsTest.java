package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.core.reply.Wanted;
import org.undercall.port.Fault;

@DisplayName("The words of an answer")
class AnswerWordsTest {
  private static final AnswerWords NUMBERS =
      AnswerWords.of(EnumSet.of(AnswerCommand.BACK))
          .withNumbers(Set.of(SpokenUnit.NEWTON_METRES, SpokenUnit.DEGREES));

  private static AnswerWords all() {
    AnswerWords words =
        AnswerWords.of(EnumSet.allOf(AnswerCommand.class))
            .withNumbers(EnumSet.allOf(SpokenUnit.class))
            .withMarkings()
            .withOrders(4)
            .withReady()
            .withAnswers(AnswerTable.NAMES)
            .withThreads(List.of("M12x1.5", "M6x1", "M10x1.25", "M4x0.7"));
    for (Wanted wanted : Wanted.values()) {
      words = words.withAnswers(wanted.choices());
    }
    return words;
  }

  @Test
  @DisplayName("are all known to the model")
  void known() throws Fault {
    Set<String> words = new TreeSet<>();
    all().phrases().forEach(phrase -> words.addAll(List.of(phrase.split(" ", -1))));
    assertTrue(words.size() > 100, words.size() + " words");
    assertEquals(List.of(), TestModel.shared().unknownWords(words));
  }

  @Test
  @DisplayName("are understood if they are listened for")
  void understood() {
    List<String> not =
        all().phrases().stream()
            .filter(phrase -> all().read(List.of(phrase.split(" ", -1))).isEmpty())
            .toList();
    assertEquals(List.of(), not);
  }

  @Test
  @DisplayName("may go on where a longer answer begins with them, and where a number does")
  void next() {
    assertEquals(Optional.of(Continuation.NOTHING), NUMBERS.next("five two newton meters"));
    assertEquals(Optional.of(Continuation.NUMBER), NUMBERS.next("five two"));
    assertEquals(Optional.of(Continuation.MORE), all().next("yes"));
    assertEquals(Optional.empty(), NUMBERS.next("go back"));
    assertEquals(Optional.empty(), NUMBERS.next(""));
  }

  @Test
  @DisplayName("are heard a second time if there is a number in them, or no meaning")
  void secondLook() {
    assertTrue(NUMBERS.phrases(RecognisedPhrase.typed("five two"), 0.6).isPresent());
    assertTrue(NUMBERS.phrases(RecognisedPhrase.typed("step back"), 0.6).isPresent());
    assertTrue(NUMBERS.phrases(RecognisedPhrase.typed("go back one step"), 0.6).isPresent());
    AnswerWords none = AnswerWords.of(EnumSet.of(AnswerCommand.BACK));
    assertEquals(Optional.empty(), none.phrases(RecognisedPhrase.typed("go back one step"), 0.6));
    assertEquals(Optional.empty(), NUMBERS.phrases(RecognisedPhrase.typed("[unk]"), 0.6));
  }
}
