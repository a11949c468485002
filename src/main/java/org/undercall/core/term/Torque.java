package org.undercall.core.term;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A torque as a specification or a technician states it: an exact decimal amount and its unit.
 *
 * @param amount more than zero, trailing zeros removed, so that 110 and 110.0 are equal
 * @param unit the unit the amount is in
 */
public record Torque(BigDecimal amount, TorqueUnit unit) implements Comparable<Torque> {
  public Torque {
    Objects.requireNonNull(unit, "unit");
    amount = Amounts.plain(amount);
    if (amount.signum() <= 0) {
      throw new IllegalArgumentException("a torque is more than zero: " + amount);
    }
  }

  /** A torque in newton metres, from its decimal text. */
  public static Torque newtonMetres(String amount) {
    return new Torque(new BigDecimal(amount), TorqueUnit.NEWTON_METRE);
  }

  /** The same torque in newton metres, as a double for computing. */
  public double inNewtonMetres() {
    return amount.multiply(unit.newtonMetres()).doubleValue();
  }

  /** Compares by size, whatever the units; so zero does not mean equal units. */
  @Override
  public int compareTo(Torque other) {
    return amount
        .multiply(unit.newtonMetres())
        .compareTo(other.amount.multiply(other.unit.newtonMetres()));
  }

  /** The amount and the symbol, for example {@code 110 N·m}. */
  @Override
  public String toString() {
    return amount.toPlainString() + " " + unit.symbol();
  }
}
