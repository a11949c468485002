package org.undercall.core.term;

import java.math.BigDecimal;

/**
 * A unit of torque with its exact factor to newton metres.
 *
 * <p>The factors follow from definitions alone: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, standard
 * gravity 9.806 65 m/s² (international yard and pound agreement 1959; CGPM 1901).
 */
public enum TorqueUnit {
  NEWTON_METRE("N·m", "1"),
  POUND_FORCE_FOOT("lbf·ft", "1.3558179483314004"),
  POUND_FORCE_INCH("lbf·in", "0.1129848290276167"),
  KILOGRAM_FORCE_METRE("kgf·m", "9.80665");

  private final String symbol;
  private final BigDecimal newtonMetres;

  TorqueUnit(String symbol, String newtonMetres) {
    this.symbol = symbol;
    this.newtonMetres = new BigDecimal(newtonMetres);
  }

  /** The symbol as written, for example {@code N·m}. */
  public String symbol() {
    return symbol;
  }

  /** How many newton metres one of this unit is, exactly. */
  public BigDecimal newtonMetres() {
    return newtonMetres;
  }
}
