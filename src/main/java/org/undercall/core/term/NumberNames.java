package org.undercall.core.term;

import java.util.List;

/** The English names of whole numbers below a hundred. */
public final class NumberNames {
  /** 0 to 9. */
  public static final List<String> DIGITS =
      List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

  /** 10 to 19. */
  public static final List<String> TEENS =
      List.of(
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");

  /** 20 to 90 in tens. */
  public static final List<String> TENS =
      List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

  private NumberNames() {}

  /**
   * The name of a number, for example "fifty-two".
   *
   * @param number 0 to 99
   */
  public static String of(int number) {
    if (number < 10) {
      return DIGITS.get(number);
    }
    if (number < 20) {
      return TEENS.get(number - 10);
    }
    String tens = TENS.get(number / 10 - 2);
    return number % 10 == 0 ? tens : tens + "-" + DIGITS.get(number % 10);
  }
}
