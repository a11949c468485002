package org.undercall.hearing;

import java.math.BigDecimal;
import java.util.OptionalInt;
import java.util.Random;
import org.undercall.core.intent.ConfusableNumbers;

/** How a specification differs from what was said. */
enum NearMiss {
  ONE_DIGIT("one digit is another"),
  SWAPPED("two neighbouring digits change places"),
  TEEN_OR_TY("-teen for -ty or the other way"),
  ONE_MORE("has one digit more than was said"),
  ONE_LESS("has one digit less than was said"),
  A_HUNDRED("is a hundred more, as 175 when 75 was said");

  private static final int LARGEST = 9_999;

  private final String title;

  NearMiss(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }

  /** A specification that differs from the value in this way; empty if there is none. */
  OptionalInt of(int said, Random random) {
    StringBuilder digits = new StringBuilder(Integer.toString(said));
    switch (this) {
      case ONE_DIGIT -> {
        int at = random.nextInt(digits.length());
        digits.setCharAt(at, (char) ('0' + (digits.charAt(at) - '0' + 1 + random.nextInt(9)) % 10));
      }
      case SWAPPED -> swap(digits, random);
      case TEEN_OR_TY -> {
        return valid(
            ConfusableNumbers.twin(BigDecimal.valueOf(said))
                .map(BigDecimal::intValue)
                .map(twin -> Integer.toString(twin))
                .orElse(""),
            said);
      }
      case ONE_MORE -> digits.insert(random.nextInt(digits.length() + 1), random.nextInt(10));
      case ONE_LESS -> digits.deleteCharAt(random.nextInt(digits.length()));
      case A_HUNDRED -> {
        return valid(said < 100 ? Integer.toString(said + 100) : "", said);
      }
    }
    return valid(digits.toString(), said);
  }

  private static void swap(StringBuilder digits, Random random) {
    if (digits.length() > 1) {
      int at = random.nextInt(digits.length() - 1);
      char first = digits.charAt(at);
      digits.setCharAt(at, digits.charAt(at + 1));
      digits.setCharAt(at + 1, first);
    }
  }

  private static OptionalInt valid(String digits, int said) {
    if (digits.isEmpty() || digits.startsWith("0")) {
      return OptionalInt.empty();
    }
    int value = Integer.parseInt(digits);
    return value == said || value > LARGEST ? OptionalInt.empty() : OptionalInt.of(value);
  }
}
