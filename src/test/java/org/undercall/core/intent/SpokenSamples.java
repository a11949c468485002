package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Gives measurements phrases to say. */
public final class SpokenSamples {
  private SpokenSamples() {}

  /** The digit that a word says, -1 if it says none. */
  public static int digit(String word) {
    return NumberWords.digit(word);
  }

  /** The digits of a number as words. */
  public static String digits(int number) {
    List<String> words = new ArrayList<>();
    for (char digit : Integer.toString(number).toCharArray()) {
      words.add(NumberWords.DIGITS.get(digit - '0'));
    }
    return String.join(" ", words);
  }

  /** Every way to say a number. */
  public static Set<String> wordings(int number) {
    return NumberWordings.of(number);
  }
}
