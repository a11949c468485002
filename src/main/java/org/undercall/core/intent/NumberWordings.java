package org.undercall.core.intent;

import static org.undercall.core.intent.NumberWords.DIGITS;
import static org.undercall.core.intent.NumberWords.TEENS;
import static org.undercall.core.intent.NumberWords.TENS;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Every way to say a whole number from 0 to 9999 that {@link SpokenNumbers} reads. */
final class NumberWordings {
  static final int LARGEST = 9999;

  private NumberWordings() {}

  /** All wordings, sorted. */
  static Set<String> of(int number) {
    if (number < 0 || number > LARGEST) {
      throw new IllegalArgumentException("a spoken number is 0 to " + LARGEST + ": " + number);
    }
    Set<String> wordings = new LinkedHashSet<>();
    addDigits(wordings, Integer.toString(number));
    if (number > 0 && number < 100) {
      wordings.add(small(number));
    }
    if (number >= 100 && number < 1000 && number % 100 >= 10) {
      wordings.add(DIGITS.get(number / 100) + " " + small(number % 100));
    }
    if (number >= 1000) {
      addThousands(wordings, number);
    } else if (number >= 100) {
      addRest(wordings, DIGITS.get(number / 100) + " hundred", number % 100);
    }
    for (String wording : Set.copyOf(wordings)) {
      if (wording.startsWith("one hundred") || wording.startsWith("one thousand")) {
        wordings.add("a" + wording.substring("one".length()));
      }
    }
    return wordings.stream().sorted().collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Digit by digit, every zero but the first as "zero" or as "oh". */
  private static void addDigits(Set<String> wordings, String digits) {
    Set<String> all = new LinkedHashSet<>(Set.of(DIGITS.get(digits.charAt(0) - '0')));
    for (char digit : digits.substring(1).toCharArray()) {
      Set<String> longer = new LinkedHashSet<>();
      for (String start : all) {
        longer.add(start + " " + DIGITS.get(digit - '0'));
        if (digit == '0') {
          longer.add(start + " oh");
        }
      }
      all = longer;
    }
    wordings.addAll(all);
  }

  private static void addThousands(Set<String> wordings, int number) {
    int hundreds = number / 100 % 10;
    String thousand = DIGITS.get(number / 1000) + " thousand";
    String more = hundreds == 0 ? "" : " " + DIGITS.get(hundreds) + " hundred";
    addRest(wordings, thousand + more, number % 100);
    if (number / 1000 == 1 && hundreds > 0) {
      addRest(wordings, small(number / 100) + " hundred", number % 100);
    }
  }

  private static void addRest(Set<String> wordings, String start, int rest) {
    if (rest == 0) {
      wordings.add(start);
    } else {
      wordings.add(start + " and " + small(rest));
      wordings.add(start + " " + small(rest));
    }
  }

  /** A number from 1 to 99. */
  private static String small(int number) {
    if (number < 10) {
      return DIGITS.get(number);
    }
    if (number < 20) {
      return TEENS.get(number - 10);
    }
    String tens = TENS.get(number / 10 - 2);
    return number % 10 == 0 ? tens : tens + " " + DIGITS.get(number % 10);
  }
}
