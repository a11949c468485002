package org.undercall.core.fastening;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/**
 * A torque as a tool's scale shows it, next to the exact one it stands for.
 *
 * <p>The exact torque stays the authoritative one; the scale value is only shown or set. Half a
 * step is rounded up.
 *
 * @param exact the authoritative torque, in the unit of the specification
 * @param shown the nearest mark of the scale
 * @param step the step of the scale, in the unit shown
 */
public record ScaleReading(Torque exact, Torque shown, BigDecimal step) {
  public ScaleReading {
    Objects.requireNonNull(exact, "exact");
    Objects.requireNonNull(shown, "shown");
    Objects.requireNonNull(step, "step");
  }

  /**
   * Rounds a torque to a scale.
   *
   * @param exact the authoritative torque
   * @param unit the unit of the scale
   * @param step the step of the scale in that unit, for example 0.5 or 1
   * @throws IllegalArgumentException FAS-021 for a step of zero or less, FAS-022 if the torque is
   *     less than half a step
   */
  public static ScaleReading of(Torque exact, TorqueUnit unit, BigDecimal step) {
    if (step.signum() <= 0) {
      throw new Refused("FAS-021", "step of a scale", step.toPlainString(), "more than zero");
    }
    BigDecimal steps = Units.convert(exact, unit).amount().divide(step, 0, RoundingMode.HALF_UP);
    if (steps.signum() == 0) {
      throw new Refused(
          "FAS-022", "torque on a scale", exact.toString(), "half a step of " + step + " or more");
    }
    return new ScaleReading(exact, new Torque(steps.multiply(step), unit), step);
  }

  /** Whether the scale shows the exact torque. */
  public boolean isExact() {
    return exact.compareTo(shown) == 0;
  }

  /** The exact torque, the shown one and the rounding, for example for a display. */
  @Override
  public String toString() {
    if (isExact() && exact.unit() == shown.unit()) {
      return exact.toString();
    }
    String rounded = isExact() ? "" : ", rounded to " + step.toPlainString();
    return exact + " (shown as " + shown + rounded + ")";
  }
}
