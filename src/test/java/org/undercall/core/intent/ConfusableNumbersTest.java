package org.undercall.core.intent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConfusableNumbersTest {

  /** Rows of other kinds (single digits, a count run into a value) are no teen and ty pair. */
  @ParameterizedTest
  @CsvFileSource(resources = "/intent/confusable-numbers.csv", numLinesToSkip = 1)
  void everyPublishedTeenAndTyPairIsEachOthersTwin(int a, int b, String pair, String digits) {
    boolean teenAndTy = b - a == 9 * (a % 10) - 10 && a % 100 > 12 && a % 100 < 20;
    assertEquals(
        teenAndTy,
        ConfusableNumbers.twin(BigDecimal.valueOf(a)).equals(Optional.of(BigDecimal.valueOf(b))),
        pair);
    assertEquals(
        teenAndTy,
        ConfusableNumbers.twin(BigDecimal.valueOf(b)).equals(Optional.of(BigDecimal.valueOf(a))),
        pair);
  }

  @Test
  void exactlyFourteenOfEachHundredAreConfusable() {
    long count =
        IntStream.range(0, 1000)
            .filter(n -> ConfusableNumbers.isConfusable(BigDecimal.valueOf(n)))
            .count();
    assertEquals(140, count);
  }

  @Test
  void theTwinOfATwinIsTheNumberItself() {
    for (int n = 0; n < 10_000; n++) {
      BigDecimal number = BigDecimal.valueOf(n);
      Optional<BigDecimal> twin = ConfusableNumbers.twin(number);
      twin.ifPresent(
          other -> assertEquals(Optional.of(number), ConfusableNumbers.twin(other), number + ""));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"13.5", "30.5", "1150", "230", "219"})
  void theEndingBeforeTheDecimalsCounts(String number) {
    assertTrue(ConfusableNumbers.isConfusable(new BigDecimal(number)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "5", "9", "10", "12", "20", "25", "35", "100", "120", "111", "7.13"})
  void otherNumbersHaveNoTwin(String number) {
    assertFalse(ConfusableNumbers.isConfusable(new BigDecimal(number)));
  }
}
