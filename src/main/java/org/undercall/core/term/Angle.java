package org.undercall.core.term;

import java.math.BigDecimal;

/**
 * An angle of turn.
 *
 * @param degrees more than zero, in degrees
 */
public record Angle(BigDecimal degrees) {
  public Angle {
    degrees = Amounts.plain(degrees);
    if (degrees.signum() <= 0) {
      throw new IllegalArgumentException("an angle of turn is more than zero: " + degrees);
    }
  }

  /** An angle from the decimal text of its degrees. */
  public static Angle degrees(String degrees) {
    return new Angle(new BigDecimal(degrees));
  }

  /** The degrees and their sign, for example {@code 90°}. */
  @Override
  public String toString() {
    return degrees.toPlainString() + "°";
  }
}
