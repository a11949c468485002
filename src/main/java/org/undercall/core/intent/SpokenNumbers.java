package org.undercall.core.intent;

import static org.undercall.core.intent.NumberWords.A;
import static org.undercall.core.intent.NumberWords.AND;
import static org.undercall.core.intent.NumberWords.HUNDRED;
import static org.undercall.core.intent.NumberWords.OH;
import static org.undercall.core.intent.NumberWords.POINT;
import static org.undercall.core.intent.NumberWords.THOUSAND;

import java.math.BigDecimal;
import java.util.List;
import org.undercall.core.intent.NumberReading.Read;
import org.undercall.core.intent.NumberReading.Refusal;
import org.undercall.core.intent.NumberReading.Refused;
import org.undercall.core.intent.SpokenNumber.Style;

/**
 * Reads number words, from 0 to 9999 with up to three decimals.
 *
 * <p>These forms are read, and nothing else:
 *
 * <pre>
 * number  = [whole] "point" digit{1,3} | whole
 * whole   = digits | grouped | words
 * digits  = one to four of zero..nine; "oh" for zero, but not first; no leading zero
 * grouped = unit pair                           one seventy five, two twenty, one ten
 * words   = pair | unit
 *         | (unit | "a") "hundred" [["and"] rest]
 *         | (eleven..nineteen) "hundred" [["and"] rest]
 *         | (unit | "a") "thousand" [["and"] rest]
 *         | (unit | "a") "thousand" unit "hundred" [["and"] rest]
 * pair    = ten..nineteen | tens [unit]         10 to 99
 * rest    = pair | unit
 * </pre>
 *
 * <p>"Twelve fifty" (1250 or 12.50), "twenty one five" (215, 21.5 or 20 and 15) and the like are
 * left out on purpose: they are refused as ambiguous.
 */
public final class SpokenNumbers {
  private static final int MOST_DIGITS = 4;
  private static final int MOST_DECIMALS = 3;
  private static final int MOST_WORDS = 16;
  private static final int NONE = -1;

  private SpokenNumbers() {}

  /**
   * Reads all the words as one number.
   *
   * @param words lower case
   */
  public static NumberReading read(List<String> words) {
    if (words.isEmpty() || !NumberWords.ALL.containsAll(words)) {
      return new Refused(Refusal.NOT_A_NUMBER);
    }
    SpokenNumber number = number(words);
    if (number != null) {
      return new Read(number);
    }
    return new Refused(isSeveral(words) ? Refusal.AMBIGUOUS : Refusal.NOT_A_NUMBER);
  }

  private static SpokenNumber number(List<String> words) {
    int point = words.indexOf(POINT);
    if (point < 0) {
      return spoken(words, "");
    }
    String decimals = digits(words.subList(point + 1, words.size()));
    if (decimals.isEmpty() || decimals.length() > MOST_DECIMALS) {
      return null;
    }
    return spoken(point == 0 ? List.of("zero") : words.subList(0, point), "." + decimals);
  }

  private static SpokenNumber spoken(List<String> whole, String decimals) {
    int value = digitByDigit(whole);
    Style style = value == NONE ? Style.WORDS : Style.DIGIT_BY_DIGIT;
    if (value == NONE) {
      value = grouped(whole);
    }
    if (value == NONE) {
      value = inWords(whole);
    }
    return value == NONE ? null : new SpokenNumber(new BigDecimal(value + decimals), style);
  }

  /** Whether the words can be cut into two or more numbers. */
  private static boolean isSeveral(List<String> words) {
    int count = words.size();
    if (count < 2 || count > MOST_WORDS) {
      return false;
    }
    boolean[] reached = new boolean[count + 1];
    reached[0] = true;
    for (int end = 1; end <= count; end++) {
      for (int start = 0; start < end && !reached[end]; start++) {
        reached[end] = reached[start] && number(words.subList(start, end)) != null;
      }
    }
    return reached[count];
  }

  /** The digits of the words, empty if one of them is no digit. */
  private static String digits(List<String> words) {
    StringBuilder digits = new StringBuilder();
    for (String word : words) {
      int digit = NumberWords.digit(word);
      if (digit < 0) {
        return "";
      }
      digits.append(digit);
    }
    return digits.toString();
  }

  private static int digitByDigit(List<String> words) {
    String digits = digits(words);
    boolean leadingZero = digits.length() > 1 && digits.startsWith("0");
    if (digits.isEmpty() || digits.length() > MOST_DIGITS || leadingZero) {
      return NONE;
    }
    return words.get(0).equals(OH) ? NONE : Integer.parseInt(digits);
  }

  private static int grouped(List<String> words) {
    if (words.size() < 2) {
      return NONE;
    }
    return sum(100, NumberWords.unit(words.get(0)), pair(words.subList(1, words.size())));
  }

  private static int inWords(List<String> words) {
    int thousand = words.indexOf(THOUSAND);
    if (thousand == 1) {
      return sum(1000, count(words.get(0)), afterThousand(words.subList(2, words.size())));
    }
    return thousand < 0 ? belowThousands(words) : NONE;
  }

  private static int belowThousands(List<String> words) {
    if (words.indexOf(HUNDRED) != 1) {
      return rest(words);
    }
    int hundreds = count(words.get(0));
    if (hundreds == NONE && NumberWords.teen(words.get(0)) > 10) {
      hundreds = NumberWords.teen(words.get(0));
    }
    return sum(100, hundreds, joined(words.subList(2, words.size())));
  }

  private static int afterThousand(List<String> words) {
    if (words.indexOf(HUNDRED) == 1) {
      return sum(100, NumberWords.unit(words.get(0)), joined(words.subList(2, words.size())));
    }
    return joined(words);
  }

  /** What may follow a full hundred or thousand: nothing, or up to 99 with or without "and". */
  private static int joined(List<String> words) {
    if (words.isEmpty()) {
      return 0;
    }
    return rest(words.get(0).equals(AND) ? words.subList(1, words.size()) : words);
  }

  private static int rest(List<String> words) {
    return words.size() == 1 && NumberWords.unit(words.get(0)) > 0
        ? NumberWords.unit(words.get(0))
        : pair(words);
  }

  private static int pair(List<String> words) {
    if (words.isEmpty() || words.size() > 2) {
      return NONE;
    }
    int tens = NumberWords.tens(words.get(0));
    if (words.size() == 1) {
      return tens == NONE ? NumberWords.teen(words.get(0)) : tens;
    }
    int unit = NumberWords.unit(words.get(1));
    return tens == NONE || unit == NONE ? NONE : tens + unit;
  }

  private static int count(String word) {
    return word.equals(A) ? 1 : NumberWords.unit(word);
  }

  private static int sum(int factor, int count, int rest) {
    return count == NONE || rest == NONE ? NONE : factor * count + rest;
  }
}
