package org.undercall.core.term;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A measured value, or a limit for one.
 *
 * @param amount zero or more, trailing zeros removed
 * @param unit the unit the amount is in
 */
public record Measure(BigDecimal amount, MeasureUnit unit) {
  public Measure {
    Objects.requireNonNull(unit, "unit");
    amount = Amounts.plain(amount);
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a measured value is not negative: " + amount);
    }
  }

  /** A length in millimetres, from its decimal text. */
  public static Measure millimetres(String amount) {
    return new Measure(new BigDecimal(amount), MeasureUnit.MILLIMETRE);
  }

  /** The amount and the symbol, for example {@code 382 mm}. */
  @Override
  public String toString() {
    return amount.toPlainString() + " " + unit.symbol();
  }
}
