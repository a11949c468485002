package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.intent.NumberReading.Read;
import org.undercall.core.intent.NumberReading.Refusal;
import org.undercall.core.intent.NumberReading.Refused;

class SpokenNumbersTest {

  private static NumberReading read(String words) {
    return SpokenNumbers.read(words.isEmpty() ? List.of() : List.of(words.split(" ", -1)));
  }

  private static Optional<BigDecimal> value(List<String> words) {
    return SpokenNumbers.read(words) instanceof Read read
        ? Optional.of(read.number().value())
        : Optional.empty();
  }

  @Nested
  class OneNumber {
    @ParameterizedTest
    @CsvSource({
      "one seven five, 175, DIGIT_BY_DIGIT",
      "one seventy five, 175, WORDS",
      "a hundred and seventy five, 175, WORDS",
      "one hundred seventy five, 175, WORDS",
      "one ten, 110, WORDS",
      "one oh five, 105, DIGIT_BY_DIGIT",
      "two two oh, 220, DIGIT_BY_DIGIT",
      "two twenty, 220, WORDS",
      "one fifty, 150, WORDS",
      "one fifteen, 115, WORDS",
      "twenty five, 25, WORDS",
      "zero, 0, DIGIT_BY_DIGIT",
      "seven point five, 7.5, DIGIT_BY_DIGIT",
      "seven point zero, 7, DIGIT_BY_DIGIT",
      "twelve point seven five, 12.75, WORDS",
      "zero point five, 0.5, DIGIT_BY_DIGIT",
      "point five, 0.5, DIGIT_BY_DIGIT",
      "seven point oh oh five, 7.005, DIGIT_BY_DIGIT",
      "a hundred, 100, WORDS",
      "a thousand and five, 1005, WORDS",
      "nine thousand nine hundred and ninety nine, 9999, WORDS",
      "twelve hundred and fifty, 1250, WORDS"
    })
    void isReadWithItsStyle(String words, BigDecimal value, SpokenNumber.Style style) {
      assertEquals(new Read(new SpokenNumber(value, style)), read(words));
    }
  }

  @Nested
  class Refusals {
    @ParameterizedTest
    @ValueSource(
        strings = {
          "twenty one five",
          "seventeen five",
          "one hundred one hundred",
          "one hundred one ten",
          "twelve fifty",
          "twenty five ten",
          "twenty one fifty",
          "zero seven",
          "one two three four five",
          "one point five point five",
          "one point two three four five"
        })
    void severalNumbersInARowAreAmbiguous(String words) {
      assertEquals(new Refused(Refusal.AMBIGUOUS), read(words));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "",
          "oh",
          "a",
          "and",
          "point",
          "hundred",
          "hundred and ten",
          "oh five",
          "five point",
          "ten and five",
          "one hundred and",
          "a five",
          "step five",
          "[unk] five",
          "fifty hundred",
          "-5"
        })
    void otherWordsAreNoNumber(String words) {
      assertEquals(new Refused(Refusal.NOT_A_NUMBER), read(words));
    }
  }

  @Nested
  class EveryNumber {
    @Test
    void from0To9999ReadsBackToItselfInEachWording() {
      int wordings = 0;
      for (int number = 0; number <= NumberWordings.LARGEST; number++) {
        for (String wording : NumberWordings.of(number)) {
          assertEquals(
              Optional.of(BigDecimal.valueOf(number)),
              value(List.of(wording.split(" ", -1))),
              wording);
          wordings++;
        }
      }
      System.out.println("wordings of 0 to 9999 read back: " + wordings);
      assertTrue(wordings > 37_000, "wordings: " + wordings);
    }
  }

  /** Every string of up to four number words, against a list made the other way round. */
  @Nested
  class EveryStringOfUpToFourNumberWords {
    private final Map<String, Set<String>> meanings = new HashMap<>();
    private int read;
    private int ambiguous;
    private int noNumber;

    @Test
    void isReadAsItsOnlyMeaningOrRefused() {
      for (int number = 0; number <= NumberWordings.LARGEST; number++) {
        for (String wording : NumberWordings.of(number)) {
          meanings.computeIfAbsent(wording, w -> new TreeSet<>()).add(Integer.toString(number));
        }
      }
      meanings.forEach((words, values) -> assertEquals(1, values.size(), words + values));

      extend(List.of());

      System.out.printf(
          "strings of 1 to 4 number words: %d read, %d ambiguous, %d no number%n",
          read, ambiguous, noNumber);
      assertTrue(read > 0 && ambiguous > 0 && noNumber > 0);
    }

    private void extend(List<String> words) {
      if (!words.isEmpty()) {
        check(words);
      }
      if (words.size() < 4) {
        for (String word : vocabulary()) {
          List<String> longer = new ArrayList<>(words);
          longer.add(word);
          extend(longer);
        }
      }
    }

    private void check(List<String> words) {
      NumberReading reading = SpokenNumbers.read(words);
      Optional<BigDecimal> expected = expected(words);
      Optional<BigDecimal> actual =
          reading instanceof Read number ? Optional.of(number.number().value()) : Optional.empty();
      if (!expected.equals(actual)) {
        assertEquals(expected, actual, String.join(" ", words));
      }
      if (actual.isPresent()) {
        read++;
      } else if (reading.equals(new Refused(Refusal.AMBIGUOUS))) {
        ambiguous++;
      } else {
        noNumber++;
      }
    }

    private Optional<BigDecimal> expected(List<String> words) {
      String text = String.join(" ", words);
      int point = words.indexOf("point");
      if (point < 0) {
        return meaning(text).map(BigDecimal::new);
      }
      StringBuilder decimals = new StringBuilder();
      for (String word : words.subList(point + 1, words.size())) {
        if (NumberWords.digit(word) < 0) {
          return Optional.empty();
        }
        decimals.append(NumberWords.digit(word));
      }
      if (decimals.isEmpty() || decimals.length() > 3) {
        return Optional.empty();
      }
      Optional<String> whole =
          point == 0 ? Optional.of("0") : meaning(String.join(" ", words.subList(0, point)));
      return whole.map(w -> plain(w + "." + decimals));
    }

    private static BigDecimal plain(String number) {
      BigDecimal stripped = new BigDecimal(number).stripTrailingZeros();
      return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private Optional<String> meaning(String text) {
      return Optional.ofNullable(meanings.get(text)).map(values -> values.iterator().next());
    }

    private static List<String> vocabulary() {
      List<String> words = new ArrayList<>(NumberWords.DIGITS);
      words.addAll(NumberWords.TEENS);
      words.addAll(NumberWords.TENS);
      words.addAll(NumberWords.JOINING);
      return words;
    }
  }
}
