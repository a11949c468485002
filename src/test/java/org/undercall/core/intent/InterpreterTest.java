package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;
import org.undercall.core.intent.RecognisedPhrase.Word;

class InterpreterTest {

  static RecognisedPhrase heard(String text, double confidence) {
    return new RecognisedPhrase(
        Arrays.stream(text.split(" ", -1))
            .filter(word -> !word.isEmpty())
            .map(word -> new Word(word, confidence, 0, 0))
            .toList());
  }

  private static Intent meaning(String text) {
    return Interpreter.interpret(heard(text, 1), Samples.SPOKEN, 0.8);
  }

  @Nested
  class AWholePhrase {
    @ParameterizedTest
    @EnumSource(IntentKind.class)
    void ofAnyKindMeansThatKindAndNoOther(IntentKind kind) {
      for (Samples.Sample sample : Samples.of(kind)) {
        for (IntentKind other : Samples.SPOKEN) {
          Intent intent = Interpreter.interpret(heard(sample.phrase(), 1), EnumSet.of(other), 0.8);
          Intent expected = other == kind ? sample.intent() : null;
          if (expected == null) {
            assertInstanceOf(Unclear.class, intent, sample.phrase() + " as " + other);
          } else {
            assertEquals(expected, intent, sample.phrase());
          }
        }
      }
    }

    @Test
    void thatIsNotAllowedNowMeansNothing() {
      assertEquals(
          new Unclear(Reason.NOT_A_PHRASE),
          Interpreter.interpret(heard("torque reached", 1), EnumSet.of(IntentKind.REPEAT), 0.8));
      assertEquals(
          new Unclear(Reason.NOT_A_PHRASE),
          Interpreter.interpret(heard("torque reached", 1), Set.of(), 0.8));
    }
  }

  @Nested
  class NoPhrase {
    @Test
    void isASinglePartOfOne() {
      assertEquals(new Unclear(Reason.NOT_A_PHRASE), meaning("torque and"));
      assertEquals(new Unclear(Reason.NOT_A_PHRASE), meaning("torque reached torque reached"));
      assertEquals(new Unclear(Reason.NOT_A_PHRASE), meaning(""));
    }

    @Test
    void isOneWithAForeignWord() {
      assertEquals(new Unclear(Reason.FOREIGN_WORDS), meaning("torque reached [unk]"));
      assertEquals(new Unclear(Reason.FOREIGN_WORDS), meaning("torque reached today"));
    }

    @Test
    void isOneWithAWordOfLowConfidence() {
      List<Word> words = List.of(new Word("torque", 1, 0, 0), new Word("reached", 0.79, 0, 0));
      assertEquals(
          new Unclear(Reason.LOW_CONFIDENCE),
          Interpreter.interpret(new RecognisedPhrase(words), Samples.SPOKEN, 0.8));
      assertEquals(
          new Unclear(Reason.LOW_CONFIDENCE),
          Interpreter.interpret(heard("torque reached", Double.NaN), Samples.SPOKEN, 0.8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"torque", "go", "a", "oh", "point"})
    void isASingleWord(String word) {
      assertEquals(new Unclear(Reason.STRAY_WORDS), meaning(word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"is much is", "the last", "how step", "three", "nine"})
    void isAnythingShortOfAPhraseThatWasHardlyUnderstood(String text) {
      assertEquals(
          new Unclear(Reason.STRAY_WORDS),
          Interpreter.interpret(heard(text, 0.5), Samples.SPOKEN, 0.8));
    }

    @ParameterizedTest
    @CsvSource({"nine, 9", "zero, 0", "eleven, 11", "fifteen, 15", "fifty, 50"})
    void isANumberOfOneWord(String word, BigDecimal number) {
      Unclear unclear = (Unclear) meaning(word);
      assertEquals(Reason.LONE_NUMBER, unclear.reason());
      assertEquals(number, unclear.number().orElseThrow().value());
    }

    @ParameterizedTest
    @CsvSource({
      "fifteen newton meters, 15",
      "one five, 15",
      "it reads fifteen, 15",
      "nine degrees, 9",
      "tightened to nine, 9",
      "point five, 0.5",
      "a hundred, 100"
    })
    void isNotOneThatSaysMoreThanItsOneWord(String text, BigDecimal number) {
      assertEquals(number, ((Intent.OfNumber) meaning(text)).number().value());
    }

    @Test
    void isOneWithSeveralNumbers() {
      assertEquals(new Unclear(Reason.AMBIGUOUS_NUMBER), meaning("twenty one five"));
      assertEquals(
          new Unclear(Reason.AMBIGUOUS_NUMBER),
          meaning("tightened to one hundred one hundred newton meters"));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "go to step zero",
          "go to step seven point five",
          "go to step one thousand",
          "head marking ten",
          "head marking one hundred point nine",
          "change to the whole car",
          "turned through ninety newton meters",
          "at ride height",
          "start zero minutes for the sealant",
          "start one hundred and eighty one minutes for the sealant",
          "start seven point five minutes for the sealant",
          "start ten minutes for the",
          "start minutes for the sealant",
          "stop the timer for the left side",
          "newton meters"
        })
    void isOneWithAFillingThatDoesNotFit(String text) {
      assertEquals(new Unclear(Reason.NOT_A_PHRASE), meaning(text));
    }
  }

  @Nested
  class ANote {
    private final Set<IntentKind> allowed =
        EnumSet.of(IntentKind.NOTE_TEXT, IntentKind.STEP_COMPLETED);

    @Test
    void takesAnyWords() {
      for (String text : List.of("rust on the left arm", "this step is finished", "five [unk]")) {
        assertEquals(
            new Intent.NoteText(text), Interpreter.interpret(heard(text, 0.1), allowed, 0.8));
      }
    }

    @Test
    void needsAWord() {
      assertEquals(
          new Unclear(Reason.NOT_A_PHRASE), Interpreter.interpret(heard("", 1), allowed, 0.8));
      assertEquals(
          new Unclear(Reason.FOREIGN_WORDS),
          Interpreter.interpret(heard("[unk]", 1), allowed, 0.8));
    }
  }

  @Nested
  class TypedText {
    @ParameterizedTest
    @CsvSource({
      "175, one seven five",
      "7.5, seven point five",
      ".5, point five",
      "go to step 12, go to step one two",
      "Head marking 10.9., head marking one zero point nine",
      "110 Nm, one one zero newton meters",
      "110Nm, one one zero newton meters",
      "50 ft-lb, five zero foot pounds",
      "90°, nine zero degrees",
      "382 mm, three eight two millimeters",
      "Twenty-five bar!, twenty five bar",
      "in 5 in, in five inches"
    })
    void isTurnedIntoTheWordsThatWouldBeSpoken(String typed, String words) {
      assertEquals(words, RecognisedPhrase.typed(typed).text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", ".", "!?"})
    void thatIsBlankHasNoWords(String typed) {
      assertEquals(List.of(), RecognisedPhrase.typed(typed).words());
    }

    @ParameterizedTest
    @CsvSource({
      "-0.8, -0.8, , true",
      "−0.8°, -0.8, DEGREES, true",
      "+12′, 12, MINUTES, true",
      "-1°30', -90, MINUTES, true",
      "it reads 1°30', 90, MINUTES, false",
      "-1.5 mm, -1.5, MILLIMETRES, true"
    })
    void withASignOrInMinutesIsAReading(
        String typed, BigDecimal value, SpokenUnit unit, boolean signed) {
      assertEquals(
          new Intent.OfReading(IntentKind.READING_CALLED, value, Optional.ofNullable(unit), signed),
          Interpreter.interpret(RecognisedPhrase.typed(typed), Samples.SPOKEN, 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"7,5", "10000", "007", "--5", "1.2.3", "5x", "1°60'", "-"})
    void thatIsNoPlainNumberIsRefused(String typed) {
      assertInstanceOf(
          Unclear.class, Interpreter.interpret(RecognisedPhrase.typed(typed), Samples.SPOKEN, 1));
    }
  }

  /** One word lost, added or changed. */
  @Nested
  class AMutatedPhrase {
    private final Set<String> wrong = new TreeSet<>();
    private int checked;
    private int otherValue;

    @Test
    void neverBecomesAnotherKindThatChangesTheState() {
      Set<String> words = Phrasebook.words();
      for (IntentKind kind : Samples.SPOKEN) {
        for (Samples.Sample sample : Samples.of(kind)) {
          List<String> phrase = List.of(sample.phrase().split(" ", -1));
          for (int at = 0; at <= phrase.size(); at++) {
            List<String> before = phrase.subList(0, at);
            List<String> after = phrase.subList(Math.min(at + 1, phrase.size()), phrase.size());
            check(sample, before, "", after);
            for (String word : words) {
              check(sample, before, word, after);
              check(sample, before, word, phrase.subList(at, phrase.size()));
            }
          }
        }
      }
      System.out.printf(
          "phrases with one word changed: %d checked, %d of another state-changing kind, "
              + "%d of the same kind with another value%n",
          checked, wrong.size(), otherValue);
      assertEquals(Set.of(), wrong);
    }

    private void check(
        Samples.Sample sample, List<String> before, String word, List<String> after) {
      String text =
          (String.join(" ", before) + " " + word + " " + String.join(" ", after))
              .replace("  ", " ")
              .strip();
      Intent intent = meaning(text);
      checked++;
      boolean other = intent.kind() != sample.intent().kind();
      boolean readBack =
          intent instanceof Intent.OfPosition
              || intent.kind() == IntentKind.HARDWARE_LENGTH
              || intent.kind() == IntentKind.HARDWARE_USES
              || sample.intent().kind() == IntentKind.WRENCH_NAMED;
      if (other && intent.kind().changesState() && !intent.kind().cancelsLoad() && !readBack) {
        wrong.add(sample.phrase() + " -> " + text + " = " + intent.kind());
      } else if (intent.kind() == sample.intent().kind() && !intent.equals(sample.intent())) {
        otherValue++;
      }
    }
  }
}
