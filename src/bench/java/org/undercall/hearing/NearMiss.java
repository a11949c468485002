package org.undercall.hearing;

import java.math.BigDecimal;
import java.util.Set;
import java.util.TreeSet;
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

  /** All specifications that differ from the value in this way, each once. */
  Set<Integer> of(int said) {
    String digits = Integer.toString(said);
    Set<Integer> found = new TreeSet<>();
    switch (this) {
      case ONE_DIGIT -> {
        for (int at = 0; at < digits.length(); at++) {
          for (int digit = 0; digit <= 9; digit++) {
            add(digits.substring(0, at) + digit + digits.substring(at + 1), said, found);
          }
        }
      }
      case SWAPPED -> {
        for (int at = 0; at + 1 < digits.length(); at++) {
          StringBuilder swapped = new StringBuilder(digits);
          swapped.setCharAt(at, digits.charAt(at + 1));
          swapped.setCharAt(at + 1, digits.charAt(at));
          add(swapped.toString(), said, found);
        }
      }
      case TEEN_OR_TY ->
          ConfusableNumbers.twin(BigDecimal.valueOf(said))
              .ifPresent(twin -> add(Integer.toString(twin.intValue()), said, found));
      case ONE_MORE -> {
        for (int at = 0; at <= digits.length(); at++) {
          for (int digit = 0; digit <= 9; digit++) {
            add(digits.substring(0, at) + digit + digits.substring(at), said, found);
          }
        }
      }
      case ONE_LESS -> {
        for (int at = 0; at < digits.length(); at++) {
          add(digits.substring(0, at) + digits.substring(at + 1), said, found);
        }
      }
      case A_HUNDRED -> add(said < 100 ? Integer.toString(said + 100) : "", said, found);
    }
    return found;
  }

  private static void add(String digits, int said, Set<Integer> found) {
    if (!digits.isEmpty() && !digits.startsWith("0")) {
      int value = Integer.parseInt(digits);
      if (value != said && value <= LARGEST) {
        found.add(value);
      }
    }
  }
}
