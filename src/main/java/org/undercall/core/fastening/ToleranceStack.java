package org.undercall.core.fastening;

import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * Everything that lets the preload vary, stacked up: what may be set, the error of the wrench, the
 * friction of thread and of seat apart (µth and µb of ISO 16047), the error of the angle.
 *
 * <p>Here by intervals, the worst case; {@link ToleranceTrial} draws lots. Cannot see: that a bolt
 * is stronger than the least of its class ({@link YieldControlled}), bending, embedding after
 * tightening ({@link Embedding}).
 *
 * @param joint the joint
 * @param set what may be set: the specification with its tolerance
 * @param turn the angle stage with its error either way; empty for torque alone
 * @param tool the permissible deviation of the wrench (ISO 6789-1), or its expanded relative
 *     uncertainty interval W' (ISO 6789-2, from a calibration certificate)
 * @param thread friction of the thread
 * @param seat friction of the seat
 */
public record ToleranceStack(
    Joint joint,
    Range<Torque> set,
    Optional<Range<Rotation>> turn,
    Deviation tool,
    Range<Friction> thread,
    Range<Friction> seat) {
  public ToleranceStack {
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(tool, "tool");
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(seat, "seat");
    turn.ifPresent(t -> Require.positive("angle stage", t.low().degrees(), "°"));
  }

  /**
   * A torque with a tolerance either way in newton metres, the friction the same at both places.
   */
  public static ToleranceStack ofTorque(
      Joint joint, Torque target, double plusMinus, Deviation tool, Range<Friction> friction) {
    double nominal = target.inNewtonMetres();
    if (!(plusMinus >= 0 && plusMinus < nominal)) {
      throw new Refused(
          "FAS-017", "tolerance", plusMinus + " N·m", "0 or more, less than " + target);
    }
    Range<Torque> set =
        new Range<>(
            Units.newtonMetres(nominal - plusMinus), Units.newtonMetres(nominal + plusMinus));
    return new ToleranceStack(joint, set, Optional.empty(), tool, friction, friction);
  }

  /** The same stack with an angle stage and its error either way. */
  public ToleranceStack withTurn(Rotation angle, Rotation error) {
    Require.notNegative("error of the angle", error.degrees(), "°");
    Range<Rotation> turned =
        new Range<>(angle.minus(error), Rotation.degrees(angle.degrees() + error.degrees()));
    return new ToleranceStack(joint, set, Optional.of(turned), tool, thread, seat);
  }

  /** The same stack with friction of thread and seat apart. */
  public ToleranceStack withFriction(Range<Friction> inThread, Range<Friction> underSeat) {
    return new ToleranceStack(joint, set, turn, tool, inThread, underSeat);
  }

  /** The least and the largest preload if everything goes the same way. */
  public Range<Force> worstCase() {
    Torque least = TorqueWindow.of(set.low(), tool).low();
    Torque largest = TorqueWindow.of(set.high(), tool).high();
    JointStiffness springs = joint.stiffness();
    return Range.between(
        new Tightening(least, turn.map(Range::low))
            .preload(joint.bolt(), springs, thread.high(), seat.high()),
        new Tightening(largest, turn.map(Range::high))
            .preload(joint.bolt(), springs, thread.low(), seat.low()));
  }

  /** The tightening factor αA = FM,max/FM,min of the worst case (VDI 2230 Part 1). */
  public double factor() {
    Range<Force> ends = worstCase();
    return ends.high().newtons() / ends.low().newtons();
  }
}
