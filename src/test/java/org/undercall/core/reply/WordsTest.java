package org.undercall.core.reply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TorqueUnit;

@DisplayName("The words of a reply")
class WordsTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "15, 'one five'",
    "50, 'five zero'",
    "110, 'one one zero'",
    "7.5, 'seven point five'",
    "0.25, 'zero point two five'"
  })
  @DisplayName("read a value digit by digit, so that no teen is taken for a ten")
  void digits(BigDecimal value, String words) {
    assertEquals(words, Words.digits(value));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"8.8, 'eight point eight'", "10.9, 'ten point nine'", "12.9, 'twelve point nine'"})
  @DisplayName("read a head marking as the trade says it")
  void marking(String marking, String words) {
    assertEquals(words, Words.marking(new HeadMarking(marking)));
  }

  @ParameterizedTest(name = "{0} s: {1}")
  @CsvSource({
    "0, no seconds",
    "1, one second",
    "59, fifty-nine seconds",
    "60, one minute",
    "61, one minute one",
    "15, one five seconds",
    "750, twelve minutes thirty",
    "3600, one hour",
    "3659, one hour",
    "7260, two hours one"
  })
  @DisplayName("tell a time in hours and minutes, or in minutes and seconds")
  void time(long seconds, String words) {
    assertEquals(words, Words.time(seconds));
  }

  @Test
  @DisplayName("name the side first, and no side for the whole car")
  void sides() {
    assertEquals("left, arm bolt", Words.step(new StepRef("arm", Side.LEFT), "arm bolt"));
    assertEquals("right, arm bolt", Words.step(new StepRef("arm", Side.RIGHT), "arm bolt"));
    assertEquals("arm bolt", Words.step(new StepRef("arm", Side.CAR), "arm bolt"));
  }

  @Test
  @DisplayName("spell a thread so that it can be heard")
  void thread() {
    assertEquals("M 12 by 1.5", Words.thread("M12x1.5"));
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(TorqueUnit.class)
  @DisplayName("have one name for each unit of torque")
  void torqueUnits(TorqueUnit unit) {
    assertSpoken(Words.unit(unit));
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(MeasureUnit.class)
  @DisplayName("have one name for each unit that is measured")
  void measureUnits(MeasureUnit unit) {
    assertSpoken(Words.unit(unit));
  }

  @Test
  @DisplayName("have words of their own for each load condition, proof and reason")
  void distinct() {
    assertDistinct(LoadCondition.values().length, LoadCondition.values(), Words::condition);
    assertDistinct(LoadProof.values().length, LoadProof.values(), Words::proof);
    assertDistinct(PutOffReason.values().length, PutOffReason.values(), Words::reason);
  }

  private static <T> void assertDistinct(
      int count, T[] values, java.util.function.Function<T, String> words) {
    assertEquals(count, java.util.Arrays.stream(values).map(words).distinct().count());
    java.util.Arrays.stream(values).map(words).forEach(WordsTest::assertSpoken);
  }

  private static void assertSpoken(String words) {
    assertTrue(words.matches("[a-z]+(,? [a-z]+)*"), words);
  }
}
