package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.core.intent.Intent.Unclear;

class PhrasebookTest {
  private static final EnumSet<IntentKind> ALL = EnumSet.allOf(IntentKind.class);

  private static Set<String> pairs(List<String> phrases) {
    Set<String> pairs = new HashSet<>();
    phrases.forEach(phrase -> pairs.addAll(WordList.pairs(phrase)));
    return pairs;
  }

  @Nested
  class Wordings {
    @Test
    void existForEverySpokenKindAndForNoOther() {
      for (IntentKind kind : IntentKind.values()) {
        assertEquals(
            Samples.SPOKEN.contains(kind), !Phrasebook.wordings(kind).isEmpty(), kind + "");
      }
    }

    @Test
    void areAtLeastTwoWordsUnlessANumberIsCalled() {
      for (IntentKind kind : Samples.SPOKEN) {
        for (Wording wording : Phrasebook.compiledWordings(kind)) {
          int words = wording.before().size() + wording.after().size();
          boolean more =
              wording.slot().isPresent()
                  && (words > 0
                      || kind == IntentKind.VALUE_CALLED
                      || kind == IntentKind.READING_CALLED
                      || kind == IntentKind.TROUBLE
                      || kind == IntentKind.SEVERAL
                      || kind == IntentKind.FINDING);
          boolean closesNothing = kind == IntentKind.DANGER || kind.isShort();
          assertTrue(words >= 2 || more || closesNothing, wording.toString());
        }
      }
    }

    /** What stands in these is read back before it counts. */
    private static final Set<Slot> READ_BACK = EnumSet.of(Slot.POSITION, Slot.ALL, Slot.TIMES);

    @Test
    void ofStateChangesHaveTwoFixedWordsAroundASlot() {
      for (IntentKind kind : Samples.SPOKEN) {
        for (Wording wording : Phrasebook.compiledWordings(kind)) {
          int fixed = wording.before().size() + wording.after().size();
          boolean readBack =
              wording.slot().filter(READ_BACK::contains).isPresent()
                  || kind == IntentKind.HARDWARE_LENGTH;
          boolean whole = kind == IntentKind.SEVERAL;
          assertTrue(fixed >= 2 || readBack || whole || !kind.changesState(), wording.toString());
        }
      }
    }

    @Test
    void showTheirSlots() {
      assertTrue(
          Phrasebook.wordings(IntentKind.TORQUE_COMPLETED)
              .contains("tightened to <number> [newton meters | foot pounds | inch pounds]"));
      assertTrue(Phrasebook.wordings(IntentKind.GO_TO_STEP).contains("go to step <step>"));
    }
  }

  @Nested
  class Kinds {
    @Test
    void thatCloseAlsoChangeTheState() {
      for (IntentKind kind : IntentKind.values()) {
        assertTrue(!kind.closes() || kind.changesState(), kind + "");
      }
    }

    @Test
    void thatOnlyAskDoNeither() {
      for (IntentKind kind :
          List.of(
              IntentKind.REPEAT,
              IntentKind.WHAT_IS_LEFT,
              IntentKind.WHERE_AM_I,
              IntentKind.VALUE_CALLED,
              IntentKind.NOTE_TEXT,
              IntentKind.UNCLEAR)) {
        assertFalse(kind.changesState(), kind + "");
      }
    }
  }

  @Nested
  class TheWordList {
    @Test
    void ofAllKindsStaysSmall() {
      int size = Phrasebook.wordList(ALL).size();
      System.out.println("word list of all kinds: " + size + " phrases");
      assertTrue(size < 2_050, "phrases: " + size);
    }

    @ParameterizedTest
    @EnumSource(IntentKind.class)
    void ofAKindIsNeverEmptyAndHoldsOnlyPhrasesOfThatKind(IntentKind kind) {
      List<String> phrases = Phrasebook.wordList(EnumSet.of(kind));
      Set<IntentKind> expected =
          Samples.SPOKEN.contains(kind) && !kind.isShort()
              ? EnumSet.of(kind)
              : EnumSet.of(IntentKind.REPEAT);
      assertFalse(phrases.isEmpty());
      for (String phrase : phrases) {
        Intent intent = Interpreter.interpret(InterpreterTest.heard(phrase, 1), expected, 1);
        boolean lone = intent instanceof Unclear u && u.reason() == Unclear.Reason.LONE_NUMBER;
        assertTrue(expected.contains(intent.kind()) || lone, phrase);
      }
    }

    @Test
    void isLowerCaseWithoutDoublesAndInAFixedOrder() {
      List<String> phrases = Phrasebook.wordList(ALL);
      assertEquals(phrases, Phrasebook.wordList(Set.copyOf(ALL)));
      assertEquals(phrases.size(), new HashSet<>(phrases).size());
      for (String phrase : phrases) {
        assertEquals(phrase.strip().toLowerCase(Locale.ROOT), phrase);
        assertFalse(phrase.contains(RecognisedPhrase.UNKNOWN));
      }
      assertFalse(Phrasebook.wordList(Set.of()).isEmpty());
    }

    @Test
    void holdsEveryPairOfNeighbouringWordsOfEveryWholeNumber() {
      Set<String> heard = pairs(Phrasebook.wordList(EnumSet.of(IntentKind.TORQUE_COMPLETED)));
      for (int number = 0; number <= NumberWordings.LARGEST; number++) {
        for (String wording : NumberWordings.of(number)) {
          List<String> pairs = WordList.pairs("tightened to " + wording);
          assertTrue(heard.containsAll(pairs), wording);
        }
      }
    }

    @Test
    void holdsEveryPropertyClassAsAWholePhrase() {
      List<String> heard = Phrasebook.wordList(EnumSet.of(IntentKind.HEAD_MARKING));
      Stream.of("four point six", "six point eight", "ten point nine", "twelve point nine")
          .forEach(m -> assertTrue(pairs(heard).containsAll(WordList.pairs("head marking " + m))));
    }
  }

  @Test
  void everySingleWordIsInTheWordsOfTheBook() {
    for (String phrase : Phrasebook.wordList(ALL)) {
      assertTrue(Phrasebook.words().containsAll(List.of(phrase.split(" ", -1))), phrase);
    }
  }
}
