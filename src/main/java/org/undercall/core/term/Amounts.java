package org.undercall.core.term;

import java.math.BigDecimal;

/** Keeps decimal amounts in one form, so that equal amounts are equal records. */
final class Amounts {
  private Amounts() {}

  /** The amount without trailing zeros and without a negative scale: 110.0 becomes 110. */
  static BigDecimal plain(BigDecimal amount) {
    BigDecimal stripped = amount.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
