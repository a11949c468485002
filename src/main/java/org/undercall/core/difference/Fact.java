package org.undercall.core.difference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.undercall.core.term.TorqueUnit;

/**
 * The value of one field.
 *
 * @param weight how much it matters if it is another
 * @param shown the value as it is printed; blank if there is none
 * @param moment the value as a torque, if it is one
 */
record Fact(Weight weight, String shown, Optional<Moment> moment) {
  /** No value. */
  static final Fact NONE = new Fact(Weight.TEXT, "", Optional.empty());

  /**
   * A torque, or a tolerance of one.
   *
   * @param amount zero or more
   */
  record Moment(BigDecimal amount, TorqueUnit unit) {
    /**
     * How far off, as a share of what is exact, a torque that was converted may be: 1 %, a quarter
     * of the 4 % that ISO 6789 permits a wrench (a choice of this program).
     */
    private static final BigDecimal MOST_OFF = new BigDecimal("0.01");

    /** The torque in another unit, exactly. */
    private BigDecimal in(TorqueUnit other) {
      return amount
          .multiply(unit.newtonMetres())
          .divide(other.newtonMetres(), MathContext.DECIMAL64);
    }

    /** By what share this is off another one; empty if it is none that is converted and rounded. */
    Optional<BigDecimal> roundedFrom(Moment other) {
      BigDecimal exact = other.in(unit);
      BigDecimal apart = exact.subtract(amount).abs();
      boolean equal = exact.setScale(amount.scale(), RoundingMode.HALF_UP).compareTo(amount) == 0;
      boolean none = exact.signum() == 0;
      BigDecimal share = none ? apart : apart.divide(exact, MathContext.DECIMAL32);
      return equal && share.compareTo(MOST_OFF) <= 0 ? Optional.of(share) : Optional.empty();
    }
  }

  /** Whether both say the same. */
  boolean isAs(Fact other) {
    return shown.equals(other.shown);
  }

  /** If both are one torque in two units: by what share it is rounded. */
  Optional<BigDecimal> converted(Fact newer) {
    if (moment.isEmpty() || newer.moment.isEmpty()) {
      return Optional.empty();
    }
    boolean other = moment.get().unit() != newer.moment.get().unit();
    return other ? newer.moment.get().roundedFrom(moment.get()) : Optional.empty();
  }
}
