package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Numbers that sound like another one: thirteen and thirty, up to nineteen and ninety.
 *
 * <p>The pair also counts at the end of a larger number (115 and 150) and before decimals (13.5 and
 * 30.5). 15 and 50 are on record as confused (Pennsylvania patient safety reports, June 2006); the
 * other pairs follow by sound.
 */
public final class ConfusableNumbers {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private ConfusableNumbers() {}

  /** Whether the number has a twin that sounds like it. */
  public static boolean isConfusable(BigDecimal number) {
    return twin(number).isPresent();
  }

  /** The number that sounds like this one, for example 150 for 115. */
  public static Optional<BigDecimal> twin(BigDecimal number) {
    int ending = number.abs().toBigInteger().remainder(HUNDRED.toBigInteger()).intValueExact();
    int twin;
    if (ending >= 13 && ending <= 19) {
      twin = ending % 10 * 10;
    } else if (ending >= 30 && ending % 10 == 0) {
      twin = 10 + ending / 10;
    } else {
      return Optional.empty();
    }
    int change = number.signum() * (twin - ending);
    return Optional.of(number.add(BigDecimal.valueOf(change)));
  }
}
