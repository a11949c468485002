package org.undercall.core.term;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A measured value, or a limit for one.
 *
 * @param amount below zero only where a sign is called, as at an alignment; trailing zeros removed
 * @param unit the unit the amount is in
 */
public record Measure(BigDecimal amount, MeasureUnit unit) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  public Measure {
    Objects.requireNonNull(unit, "unit");
    amount = Amounts.plain(amount);
  }

  /** A length in millimetres, from its decimal text. */
  public static Measure millimetres(String amount) {
    return new Measure(new BigDecimal(amount), MeasureUnit.MILLIMETRE);
  }

  /** The same angle in degrees with up to four decimals; any other value as it is. */
  public Measure inDegrees() {
    return unit == MeasureUnit.MINUTE
        ? new Measure(amount.divide(SIXTY, 4, RoundingMode.HALF_UP), MeasureUnit.DEGREE)
        : this;
  }

  /** The amount and the symbol, for example {@code 382 mm}. */
  @Override
  public String toString() {
    return amount.toPlainString() + " " + unit.symbol();
  }
}
