package org.undercall.core.intent;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.term.NumberNames;

/** The number words that can be heard, each with what it is worth alone. */
final class NumberWords {
  static final String OH = "oh";
  static final String A = "a";
  static final String AND = "and";
  static final String HUNDRED = "hundred";
  static final String THOUSAND = "thousand";
  static final String POINT = "point";

  static final List<String> DIGITS = NumberNames.DIGITS;
  static final List<String> TEENS = NumberNames.TEENS;
  static final List<String> TENS = NumberNames.TENS;

  /** The words that join others to a number. */
  static final List<String> JOINING = List.of(OH, A, AND, HUNDRED, THOUSAND, POINT);

  /** All number words. */
  static final Set<String> ALL =
      Stream.of(DIGITS, TEENS, TENS, JOINING)
          .flatMap(List::stream)
          .collect(Collectors.toUnmodifiableSet());

  private NumberWords() {}

  /** The digit, "oh" counting as zero; -1 if the word is none. */
  static int digit(String word) {
    return word.equals(OH) ? 0 : DIGITS.indexOf(word);
  }

  /** A digit from 1 to 9; -1 if the word is none. */
  static int unit(String word) {
    int digit = DIGITS.indexOf(word);
    return digit == 0 ? -1 : digit;
  }

  /** A number from 10 to 19; -1 if the word is none. */
  static int teen(String word) {
    int index = TEENS.indexOf(word);
    return index < 0 ? -1 : 10 + index;
  }

  /** One of 20, 30 to 90; -1 if the word is none. */
  static int tens(String word) {
    int index = TENS.indexOf(word);
    return index < 0 ? -1 : 10 * (index + 2);
  }
}
