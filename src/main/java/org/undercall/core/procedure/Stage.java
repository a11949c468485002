package org.undercall.core.procedure;

import java.math.BigDecimal;
import org.undercall.core.term.Angle;
import org.undercall.core.term.Torque;

/** One stage of tightening: a torque, or an angle of turn after a torque. */
public sealed interface Stage {

  /** The amount that the technician calls for this stage, in the unit of the specification. */
  BigDecimal amount();

  /**
   * Tighten to a torque.
   *
   * @param target the torque of the specification
   * @param plusMinus the permitted deviation either way, in the unit of the target, zero or more
   */
  record TorqueStage(Torque target, BigDecimal plusMinus) implements Stage {
    public TorqueStage {
      requireTolerance(plusMinus);
    }

    @Override
    public BigDecimal amount() {
      return target.amount();
    }
  }

  /**
   * Turn on by an angle.
   *
   * @param target the angle of the specification
   * @param plusMinus the permitted deviation either way, in degrees, zero or more
   */
  record AngleStage(Angle target, BigDecimal plusMinus) implements Stage {
    public AngleStage {
      requireTolerance(plusMinus);
    }

    @Override
    public BigDecimal amount() {
      return target.degrees();
    }
  }

  private static void requireTolerance(BigDecimal plusMinus) {
    if (plusMinus.signum() < 0) {
      throw new IllegalArgumentException("a tolerance is not negative: " + plusMinus);
    }
  }
}
