package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.math.BigInteger;

/** The size of a socket or key, as it is stamped on it. */
public final class DriveSize {
  private static final BigDecimal INCH = new BigDecimal("25.4");
  private static final BigDecimal SIXTY_FOURTHS = BigDecimal.valueOf(64);
  private static final BigDecimal HALF = new BigDecimal("0.5");

  private DriveSize() {}

  /** The millimetres of a size in inches. */
  public static BigDecimal ofInches(BigDecimal inches) {
    return inches.multiply(INCH).stripTrailingZeros();
  }

  /**
   * A size with its unit: "18 mm", or "9/16 in" where it is a whole number of 64ths of an inch and
   * no whole or half millimetre.
   *
   * @param millimetres more than zero
   */
  public static String shown(BigDecimal millimetres) {
    boolean metric = millimetres.remainder(HALF).signum() == 0;
    BigDecimal[] parts = millimetres.multiply(SIXTY_FOURTHS).divideAndRemainder(INCH);
    return metric || parts[1].signum() != 0
        ? millimetres.stripTrailingZeros().toPlainString() + " mm"
        : inches(parts[0].toBigInteger()) + " in";
  }

  private static String inches(BigInteger sixtyFourths) {
    BigInteger[] whole = sixtyFourths.divideAndRemainder(BigInteger.valueOf(64));
    if (whole[1].signum() == 0) {
      return whole[0].toString();
    }
    BigInteger common = whole[1].gcd(BigInteger.valueOf(64));
    String part = whole[1].divide(common) + "/" + BigInteger.valueOf(64).divide(common);
    return whole[0].signum() == 0 ? part : whole[0] + " " + part;
  }
}
