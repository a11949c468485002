package org.undercall.core.fastening;

import java.math.BigDecimal;
import java.math.MathContext;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/**
 * Conversions between units of torque and of length, and rounding to a tool's scale.
 *
 * <p>The factors are exact (1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, standard gravity 9.806 65
 * m/s²). A result that does not end is cut after 34 significant digits (decimal128).
 */
public final class Units {
  private static final BigDecimal INCH = new BigDecimal("25.4");

  private Units() {}

  /** A computed torque in newton metres. */
  public static Torque newtonMetres(double amount) {
    Require.positive("torque", amount, "N·m");
    return new Torque(BigDecimal.valueOf(amount), TorqueUnit.NEWTON_METRE);
  }

  /** The same torque in another unit. */
  public static Torque convert(Torque torque, TorqueUnit unit) {
    if (torque.unit() == unit) {
      return torque;
    }
    BigDecimal inNewtonMetres = torque.amount().multiply(torque.unit().newtonMetres());
    return new Torque(inNewtonMetres.divide(unit.newtonMetres(), MathContext.DECIMAL128), unit);
  }

  /**
   * The same length in millimetres or inches.
   *
   * @throws IllegalArgumentException FAS-020 if one of the units is no unit of length
   */
  public static Measure convert(Measure length, MeasureUnit unit) {
    BigDecimal millimetres = length.amount().multiply(millimetresIn(length.unit()));
    return new Measure(millimetres.divide(millimetresIn(unit), MathContext.DECIMAL128), unit);
  }

  /** A measured length, for computing. */
  public static Length length(Measure measure) {
    Measure millimetres = convert(measure, MeasureUnit.MILLIMETRE);
    return new Length(millimetres.amount().doubleValue());
  }

  private static BigDecimal millimetresIn(MeasureUnit unit) {
    return switch (unit) {
      case MILLIMETRE -> BigDecimal.ONE;
      case INCH -> INCH;
      case KILOMETRE -> new BigDecimal("1000000");
      case DEGREE, MINUTE, BAR ->
          throw new Refused("FAS-020", "length", unit.symbol(), "a unit of length");
    };
  }
}
