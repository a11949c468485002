package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StopPhrasesTest {
  private static final List<String> ALL = StopPhrases.ALL;

  @Test
  void allAreListenedForOverWordsThatAreNotTheirs() {
    assertEquals(ALL, StopPhrases.over("Torque, one one zero newton metres."));
    assertFalse(ALL.isEmpty());
  }

  @Test
  void aPhraseTheProgramSaysItselfIsLeftOut() {
    assertFalse(StopPhrases.over("Say: Stop talking.").contains("stop talking"));
    assertTrue(StopPhrases.over("Say: Stop talking.").contains("be quiet now"));
  }

  @Test
  void aPhraseWhoseWordsAreSpokenApartIsLeftOutToo() {
    assertFalse(StopPhrases.over("Talking of stop, go on.").contains("stop talking"));
  }

  @Test
  void whatCancelsALoadIsAmongThemAndMustBeDecidedOn() {
    assertTrue(StopPhrases.over("Step one.").contains("jack slipped"));
    assertTrue(StopPhrases.cancels("jack slipped"));
    assertFalse(StopPhrases.cancels("stop talking"));
  }

  @Test
  void theyAreFoundAmongOtherWordsButOnlyWhole() {
    assertEquals(Optional.of("stop talking"), StopPhrases.in("[unk] stop talking [unk]", ALL));
    assertEquals(Optional.empty(), StopPhrases.in("stop [unk] talking", ALL));
    assertEquals(Optional.empty(), StopPhrases.in("stop", ALL));
    assertEquals(Optional.empty(), StopPhrases.in("", ALL));
  }

  @Test
  void theSurenessIsThatOfItsOwnWords() {
    RecognisedPhrase heard =
        new RecognisedPhrase(
            List.of(
                new RecognisedPhrase.Word("[unk]", 0.1, 0, 1),
                new RecognisedPhrase.Word("stop", 0.9, 1, 2),
                new RecognisedPhrase.Word("talking", 0.7, 2, 3)));
    assertEquals(0.7, StopPhrases.confidence(heard, "stop talking"));
    assertEquals(0, StopPhrases.confidence(heard, "be quiet now"));
  }
}
