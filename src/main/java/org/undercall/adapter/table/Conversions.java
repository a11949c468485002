package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.term.TorqueUnit;

/**
 * Leaves out the same torque in other units, in brackets after it: {@code 70 Nm (52 lbf·ft)}. It is
 * left out only if it is the same: otherwise nobody knows which of the two is meant.
 */
final class Conversions {
  private static final String AMOUNT = "([0-9]+(?:[.,][0-9]+)?) ?([^0-9()±+;/]*[A-Za-z])";
  private static final Pattern BOTH =
      Pattern.compile(AMOUNT + " ?[(\\[](?! ?(?:±|\\+/-))([^()\\[\\]]*)[)\\]]");
  private static final Pattern ONE = Pattern.compile(AMOUNT);

  /** Published conversions are rounded to a whole unit, at times to two digits. */
  private static final double ROUNDED = 0.02;

  private Conversions() {}

  static String without(String text) {
    return BOTH.matcher(text)
        .replaceAll(
            m ->
                Matcher.quoteReplacement(
                    same(m.group(1), m.group(2), m.group(3))
                        ? m.group(1) + " " + m.group(2)
                        : m.group()));
  }

  /** Whether a torque stands beside one that is not the same. */
  static boolean disagree(String text) {
    return BOTH.matcher(text)
        .results()
        .anyMatch(
            m ->
                TorqueWord.of(m.group(2)).isPresent() && !same(m.group(1), m.group(2), m.group(3)));
  }

  private static boolean same(String amount, String unit, String others) {
    Optional<BigDecimal> first = newtonMetres(amount, unit);
    return first.isPresent()
        && List.of(others.split(" ?[;/,](?![0-9]) ?", -1)).stream()
            .map(ONE::matcher)
            .allMatch(
                one ->
                    one.matches()
                        && newtonMetres(one.group(1), one.group(2))
                            .filter(other -> close(first.get(), other, one))
                            .isPresent());
  }

  private static boolean close(BigDecimal first, BigDecimal other, Matcher one) {
    double factor = TorqueWord.of(one.group(2)).orElseThrow().newtonMetres().doubleValue();
    int decimals = Math.max(0, new BigDecimal(one.group(1).replace(',', '.')).scale());
    double half = 0.6 * factor * Math.pow(10, -decimals);
    double apart = first.subtract(other).abs().doubleValue();
    return apart <= Math.max(half, ROUNDED * first.doubleValue());
  }

  private static Optional<BigDecimal> newtonMetres(String amount, String unit) {
    return TorqueWord.of(unit)
        .map(TorqueUnit::newtonMetres)
        .map(factor -> factor.multiply(new BigDecimal(amount.replace(',', '.'))));
  }
}
