package org.undercall.core.term;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("When something is due, by its words")
class DueTimeTest {
  @ParameterizedTest
  @CsvSource({
    "before the van is driven away, BEFORE_DRIVING",
    "before the car goes back to its driver, BEFORE_DRIVING",
    "Before driving, BEFORE_DRIVING",
    "'not until a test run, before the 50 km', BEFORE_DRIVING",
    "before it leaves the workshop, BEFORE_DRIVING",
    "before first use, BEFORE_DRIVING",
    "after 50 km, DISTANCE",
    "after 50km, DISTANCE",
    "after 50 km of driving, DISTANCE",
    "over the first 200 kilometres, DISTANCE",
    "after 30 miles, DISTANCE",
    "tomorrow, DAYS",
    "the next morning, DAYS",
    "on the next working day, DAYS",
    "after two weeks, DAYS",
    "at the next inspection, OTHER",
    "after the wheel alignment, OTHER",
    "before the next winter, OTHER",
    "soon, OTHER",
    "'', OTHER"
  })
  @DisplayName("is one of four kinds; what is not understood is none of the first three")
  void kinds(String words, DueTime.When when) {
    assertEquals(when, DueTime.of(words).when());
  }

  @ParameterizedTest
  @CsvSource({"tomorrow, 1", "after 3 days, 3", "in a week, 7", "after two months, 60"})
  @DisplayName("has its days")
  void days(String words, int days) {
    assertEquals(OptionalInt.of(days), DueTime.of(words).days());
  }

  @Test
  @DisplayName("has its kilometres only where the number is plain")
  void kilometres() {
    assertEquals(Optional.of(new BigDecimal("50")), DueTime.of("after 50 km").kilometres());
    assertEquals(Optional.of(new BigDecimal("1000")), DueTime.of("after 1,000 km").kilometres());
    assertEquals(Optional.empty(), DueTime.of("after 1.000 km").kilometres());
    assertEquals(Optional.empty(), DueTime.of("after some km").kilometres());
    assertEquals(Optional.empty(), DueTime.of("after 30 miles").kilometres());
  }
}
