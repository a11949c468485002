package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.undercall.core.term.Angle;
import org.undercall.core.term.Torque;

/** One stage of tightening: a torque, or an angle of turn after a torque. */
public sealed interface Stage {

  /**
   * The amount that the technician calls for this stage, in the unit of the specification: what the
   * wrench is set to, or the angle.
   */
  BigDecimal amount();

  /** Whether an amount is more than that of this stage with its tolerance. */
  boolean isExceededBy(BigDecimal amount);

  /** Whether an amount is that of this stage, within its tolerance. */
  boolean isReachedBy(BigDecimal amount);

  /**
   * Tighten to a torque.
   *
   * @param target the torque of the specification
   * @param plusMinus the permitted deviation either way, in the unit of the target, zero or more
   * @param dialled what to set on the wrench if an adaptor is on it
   * @param form how the torque is meant
   */
  record TorqueStage(Torque target, BigDecimal plusMinus, Optional<Dialled> dialled, Form form)
      implements Stage {

    /** How a torque is meant. */
    public enum Form {
      /** One torque, with its tolerance. */
      NOMINAL,
      /** Any torque in a range; the target is its middle, the tolerance half its width. */
      RANGE,
      /** A torque that was reached before and is checked once more, fastener by fastener. */
      CHECK_PASS
    }

    public TorqueStage {
      requireTolerance(plusMinus);
    }

    /** A stage without an adaptor. */
    public TorqueStage(Torque target, BigDecimal plusMinus) {
      this(target, plusMinus, Optional.empty(), Form.NOMINAL);
    }

    /** Any torque from the least to the most. */
    public static TorqueStage range(Torque least, Torque most) {
      BigDecimal half = most.amount().subtract(least.amount()).divide(new BigDecimal(2));
      Torque middle = new Torque(least.amount().add(half), least.unit());
      return new TorqueStage(middle, half, Optional.empty(), Form.RANGE);
    }

    /** The smallest torque of a range. */
    public Torque least() {
      return new Torque(target.amount().subtract(plusMinus), target.unit());
    }

    /** The largest torque of a range. */
    public Torque most() {
      return new Torque(target.amount().add(plusMinus), target.unit());
    }

    /** The same with more torque, such as the one a nut needs to run down. */
    public TorqueStage plus(BigDecimal more) {
      Torque raised = new Torque(target.amount().add(more), target.unit());
      return new TorqueStage(raised, plusMinus, dialled, form);
    }

    /** What the wrench is set to: the target, or with an adaptor what is dialled for it. */
    public Torque setting() {
      return dialled.map(Dialled::setting).orElse(target);
    }

    @Override
    public BigDecimal amount() {
      return setting().amount();
    }

    @Override
    public boolean isExceededBy(BigDecimal amount) {
      return amount.compareTo(amount().add(tolerance())) > 0;
    }

    @Override
    public boolean isReachedBy(BigDecimal amount) {
      return !isExceededBy(amount) && amount.compareTo(amount().subtract(tolerance())) >= 0;
    }

    /** The tolerance at the wrench: with an adaptor it is less or more than at the fastener. */
    private BigDecimal tolerance() {
      return dialled.isEmpty()
          ? plusMinus
          : plusMinus.multiply(amount()).divide(target.amount(), MathContext.DECIMAL32);
    }
  }

  /**
   * Turn on by an angle, or back off by it.
   *
   * @param target the angle of the specification
   * @param plusMinus the permitted deviation either way, in degrees, zero or more
   * @param backOff whether it is loosened by the angle, to be tightened again
   * @param finalTorque within what the torque lies after the last angle, where that is stated
   * @param beyondYield whether the bolt is meant to reach its yield; empty if it is not stated
   */
  record AngleStage(
      Angle target,
      BigDecimal plusMinus,
      boolean backOff,
      Optional<Band> finalTorque,
      Optional<Boolean> beyondYield)
      implements Stage {

    /** A torque from the least to the most, in the same unit. */
    public record Band(Torque least, Torque most) {
      /** Whether it holds a torque in its unit. */
      public boolean holds(BigDecimal amount) {
        return least.amount().compareTo(amount) <= 0 && amount.compareTo(most.amount()) <= 0;
      }
    }

    public AngleStage {
      requireTolerance(plusMinus);
    }

    /** An angle to turn on. */
    public AngleStage(Angle target, BigDecimal plusMinus) {
      this(target, plusMinus, false);
    }

    /** An angle of which it is not stated whether it reaches yield. */
    public AngleStage(
        Angle target, BigDecimal plusMinus, boolean backOff, Optional<Band> finalTorque) {
      this(target, plusMinus, backOff, finalTorque, Optional.empty());
    }

    /** An angle to turn on or to back off by, without a band for the torque after it. */
    public AngleStage(Angle target, BigDecimal plusMinus, boolean backOff) {
      this(target, plusMinus, backOff, Optional.empty());
    }

    @Override
    public BigDecimal amount() {
      return target.degrees();
    }

    /** The rest of the angle when so many degrees were turned before; all of it if none is left. */
    public AngleStage after(BigDecimal degrees) {
      BigDecimal rest = target.degrees().subtract(degrees);
      return rest.signum() > 0
          ? new AngleStage(new Angle(rest), plusMinus, backOff, finalTorque, beyondYield)
          : this;
    }

    @Override
    public boolean isExceededBy(BigDecimal degrees) {
      return degrees.compareTo(target.degrees().add(plusMinus)) > 0;
    }

    @Override
    public boolean isReachedBy(BigDecimal degrees) {
      return !isExceededBy(degrees) && degrees.compareTo(target.degrees().subtract(plusMinus)) >= 0;
    }
  }

  private static void requireTolerance(BigDecimal plusMinus) {
    if (plusMinus.signum() < 0) {
      throw new IllegalArgumentException("a tolerance is not negative: " + plusMinus);
    }
  }
}
