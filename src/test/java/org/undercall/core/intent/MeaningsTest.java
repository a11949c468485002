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
      assertTrue(choice.number());
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
      assertFalse(choice.number());
    }

    @Test
    @DisplayName("counts as a whole phrase over words that mean nothing and are hardly likelier")
    void whole() {
      assertEquals(
          "take a break now",
          words(choice(heard("take a", 101), heard("take a break now", 100)).orElseThrow()));
    }

    @Test
    @DisplayName("is a number over number words that are none and hardly likelier")
    void number() {
      Meanings.Choice choice =
          choice(heard("two hundred fifteen nine", 101), heard("two hundred fifty nine", 100))
              .orElseThrow();
      assertEquals("two hundred fifty nine", words(choice));
      assertEquals(1 / (1 + Math.exp(-4)), choice.share(), 1e-9);
      assertEquals(
          Optional.empty(),
          choice(heard("two hundred fifteen nine", 106), heard("two hundred fifty nine", 100)));
    }

    @Test
    @DisplayName("is no number over a lone digit or over other words, if these are likelier")
    void noNumber() {
      assertEquals(Optional.empty(), choice(heard("four work", 110), heard("four one", 100)));
      assertEquals(Optional.empty(), choice(heard("four [unk]", 110), heard("four one", 100)));
      assertEquals(Optional.empty(), choice(heard("four", 110), heard("four one", 100)));
    }

    @Test
    @DisplayName("is a number over number words that are none, after words of a phrase too")
    void framed() {
      Meanings.Choice choice =
          choice(
                  heard("torque reached seventy seventeen", 102),
                  heard("torque reached seventy seven", 100))
              .orElseThrow();
      assertEquals("torque reached seventy seven", words(choice));
    }

    @Test
    @DisplayName("is a value of three digits over one of four that is hardly likelier")
    void four() {
      Meanings.Choice choice =
          choice(heard("one three six", 100), heard("one two three six", 101)).orElseThrow();
      assertEquals("one three six", words(choice));
      assertEquals(1 / (1 + Math.exp(-2)), choice.share(), 1e-9);
      assertEquals(
          "one two three six",
          words(
              choice(heard("one three six", 100), heard("one two three six", 104)).orElseThrow()));
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
    @DisplayName("counts tens as two against more words, not against as many")
    void tensAsTwo() {
      Meanings.Choice more =
          choice(heard("nine three eight", 100), heard("ninety eight", 99)).orElseThrow();
      assertEquals(1 / (1 + Math.exp(-1)), more.share(), 1e-9);
      Meanings.Choice asMany =
          choice(heard("six seven", 100), heard("six seventy", 94)).orElseThrow();
      assertEquals(1 / (1 + Math.exp(-6)), asMany.share(), 1e-9);
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
    }
  }

  private static double confidence(String first, double share, boolean number) {
    return Certainty.confidence(
        new Meanings.Choice(List.of(), share, number), RecognisedPhrase.typed(first), 0.6);
  }

  @Test
  @DisplayName(
      "the confidence is at its limit where the certainty is just enough, and 1 at all of it")
  void confidence() {
    assertEquals(0.6, confidence("take a", 0.9, false), 1e-9);
    assertEquals(1, confidence("take a", 1, false), 1e-9);
    assertEquals(1, confidence("one seven five", 1, true), 1e-9);
    assertEquals(0, confidence("one seven five", 0, true), 1e-9);
  }

  @Test
  @DisplayName("the more of the likelihood a number has, the surer it is; half of it is not enough")
  void shares() {
    double last = 0;
    for (double share : new double[] {0.1, 0.5, 0.9, 0.97, 0.99, 0.999}) {
      double now = confidence("one seven five", share, true);
      assertTrue(now > last, "share " + share);
      assertEquals(share > 0.98, now >= 0.6, "share " + share);
      last = now;
    }
  }

  @Test
  @DisplayName("what was not heard as a number at first must be surer to be one")
  void badly() {
    assertTrue(confidence("take six seven", 0.99, true) < 0.6);
    assertTrue(confidence("take six seven", 0.999, true) > 0.6);
    assertTrue(confidence("[unk] six seven", 0.99, true) > 0.6);
    assertTrue(confidence("torque reached six seven", 0.99, true) > 0.6);
  }
}
