package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Among alternatives")
class MeaningsTest {
  private static final Set<IntentKind> VALUES =
      Set.of(IntentKind.VALUE_CALLED, IntentKind.HOLD, IntentKind.TORQUE_COMPLETED);

  private static Alternative heard(String words, double score) {
    return new Alternative(RecognisedPhrase.typed(words).words(), score);
  }

  private static Optional<Meanings.Choice> choice(Alternative... alternatives) {
    return Meanings.likeliest(List.of(alternatives), VALUES);
  }

  private static String words(Meanings.Choice choice) {
    return new RecognisedPhrase(choice.words()).text();
  }

  @Nested
  @DisplayName("the likeliest meaning")
  class Likeliest {
    @Test
    @DisplayName("has all of the likelihood if nothing else could have been meant")
    void alone() {
      Meanings.Choice choice = choice(heard("one seven five", 100)).orElseThrow();
      assertEquals(1, choice.share());
      assertTrue(choice.digits());
    }

    @Test
    @DisplayName("shares it with another value, by the natural logarithms of their likelihood")
    void shared() {
      Meanings.Choice choice =
          choice(heard("one seven five", 100), heard("one seven nine", 99)).orElseThrow();
      assertEquals(Math.E / (Math.E + 1), choice.share(), 1e-9);
    }

    @Test
    @DisplayName("is not weakened by other words for the same value")
    void sameMeaning() {
      Meanings.Choice choice =
          choice(heard("two oh five", 100), heard("two zero five", 99.5)).orElseThrow();
      assertEquals(1, choice.share());
    }

    @Test
    @DisplayName("is weakened by words that mean nothing")
    void nonsense() {
      Meanings.Choice choice =
          choice(heard("take a break now", 94), heard("take take", 100)).orElseThrow();
      assertEquals(0.5, choice.share(), 1e-9);
      assertFalse(choice.digits());
    }

    @Test
    @DisplayName("counts as a whole phrase over words that mean nothing and are hardly likelier")
    void whole() {
      assertEquals(
          "take a break now",
          words(choice(heard("take a", 101), heard("take a break now", 100)).orElseThrow()));
    }

    @Test
    @DisplayName("counts less as a phrase of two words")
    void two() {
      Alternative two = heard("torque reached", 100);
      assertEquals("torque reached", words(choice(two, heard("torque", 102)).orElseThrow()));
      assertEquals(Optional.empty(), choice(two, heard("torque", 104)));
      Alternative three = heard("take a break now", 100);
      assertEquals("take a break now", words(choice(three, heard("torque", 104)).orElseThrow()));
    }

    @Test
    @DisplayName("does not count if words that mean nothing are much likelier")
    void nothing() {
      assertEquals(
          Optional.empty(), choice(heard("take take", 107), heard("take a break now", 100)));
      assertEquals(Optional.empty(), choice());
    }
  }

  @Nested
  @DisplayName("a digit more")
  class Digits {
    @Test
    @DisplayName("is worth the likelihood that a list of words takes from it")
    void worth() {
      Meanings.Choice choice =
          choice(heard("one five", 100), heard("one seven five", 98)).orElseThrow();
      assertEquals("one seven five", words(choice));
      assertEquals(1 / (1 + Math.exp(-1.5)), choice.share(), 1e-9);
    }

    @Test
    @DisplayName("is worth no more than the second half of tens that sound like it")
    void tensAreTwo() {
      Meanings.Choice choice =
          choice(heard("nine three eight", 100), heard("ninety eight", 99)).orElseThrow();
      assertEquals("nine three eight", words(choice));
      assertEquals(1 / (1 + Math.exp(-1)), choice.share(), 1e-9);
    }

    @Test
    @DisplayName("is worth nothing beyond three")
    void four() {
      Meanings.Choice choice =
          choice(heard("one seven five", 100), heard("one one seven five", 99)).orElseThrow();
      assertEquals("one seven five", words(choice));
    }

    @Test
    @DisplayName("is worth nothing against tens and teens")
    void tens() {
      Meanings.Choice choice =
          choice(heard("seventy one", 100), heard("seven three one", 99)).orElseThrow();
      assertEquals("seventy one", words(choice));
      assertFalse(choice.digits());
    }
  }

  @Test
  @DisplayName("the confidence is at its limit where the share is just enough, and 1 at all of it")
  void confidence() {
    Certainty quiet = new Certainty(40, false);
    Certainty noisy = new Certainty(10, false);
    Meanings.Choice even = new Meanings.Choice(List.of(), 0.7, true);
    assertEquals(0.6, quiet.confidence(even, 0.6), 1e-9);
    assertTrue(noisy.confidence(even, 0.6) < 0.6);
    assertTrue(new Certainty(40, true).confidence(even, 0.6) < 0.6);
    assertEquals(1, noisy.confidence(new Meanings.Choice(List.of(), 1, true), 0.6), 1e-9);
  }

  @Test
  @DisplayName("two digits alone must be nearly certain, even in quiet")
  void twoDigits() {
    Certainty quiet = new Certainty(40, false);
    List<RecognisedPhrase.Word> two = heard("four one", 1).words();
    List<RecognisedPhrase.Word> three = heard("two four one", 1).words();
    assertTrue(quiet.confidence(new Meanings.Choice(two, 0.985, true), 0.6) < 0.6);
    assertTrue(quiet.confidence(new Meanings.Choice(two, 0.995, true), 0.6) > 0.6);
    assertTrue(quiet.confidence(new Meanings.Choice(three, 0.985, true), 0.6) > 0.6);
  }

  @Test
  @DisplayName("so must digits that sound like tens: seven three eight, seventy eight")
  void tensAlike() {
    Certainty quiet = new Certainty(40, false);
    for (String words : List.of("seven three eight", "tightened to seven three eight")) {
      List<RecognisedPhrase.Word> alike = heard(words, 1).words();
      assertTrue(quiet.confidence(new Meanings.Choice(alike, 0.985, true), 0.6) < 0.6, words);
      assertTrue(quiet.confidence(new Meanings.Choice(alike, 0.995, true), 0.6) > 0.6, words);
    }
    for (String words : List.of("one three eight", "seven four eight", "seven three eight five")) {
      List<RecognisedPhrase.Word> other = heard(words, 1).words();
      assertTrue(quiet.confidence(new Meanings.Choice(other, 0.985, true), 0.6) > 0.6, words);
    }
  }

  @Test
  @DisplayName("the poorer the sound, the surer a choice must be; words need more than digits")
  void needed() {
    double[] byNoise = {50, 25, 10};
    double last = 0;
    for (double decibels : byNoise) {
      double needed = new Certainty(decibels, false).needed(true);
      assertTrue(needed > last, decibels + " dB");
      assertTrue(new Certainty(decibels, false).needed(false) >= needed, decibels + " dB");
      last = needed;
    }
  }
}
