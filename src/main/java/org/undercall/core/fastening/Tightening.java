package org.undercall.core.fastening;

import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.Torque;

/**
 * A way to tighten: a torque alone, or a torque and then an angle.
 *
 * @param torque the torque (stage)
 * @param turn the angle after it; empty for torque alone
 */
public record Tightening(Torque torque, Optional<Rotation> turn) {
  public Tightening {
    Objects.requireNonNull(torque, "torque");
    turn.ifPresent(t -> Require.positive("angle stage", t.degrees(), "°"));
  }

  /** A torque alone. */
  public static Tightening by(Torque torque) {
    return new Tightening(torque, Optional.empty());
  }

  /** A torque and an angle. */
  public static Tightening by(Torque torque, Rotation turn) {
    return new Tightening(torque, Optional.of(turn));
  }

  /**
   * The preload with the friction of thread and seat apart: after an angle at most that at yield
   * ({@link AngleTightening}), by torque alone at most that at breaking ({@link TorqueAlone}), both
   * for a bolt of least strength.
   */
  public Force preload(Bolt bolt, JointStiffness joint, Friction thread, Friction seat) {
    Force torqued = LongForm.of(bolt).preload(torque, thread, seat);
    if (turn.isEmpty()) {
      return Force.least(torqued, Assembly.breaking(bolt, thread));
    }
    Force gain = joint.gain(bolt.thread(), turn.get());
    Force turned = new Force(torqued.newtons() + gain.newtons());
    return Force.least(turned, Assembly.atYield(bolt).preload(thread));
  }

  /** The range of preloads over a range of friction, the same in thread and seat. */
  public Range<Force> preload(Joint joint, Range<Friction> friction) {
    JointStiffness springs = joint.stiffness();
    return friction.map(f -> preload(joint.bolt(), springs, f, f));
  }

  @Override
  public String toString() {
    return turn.map(t -> torque + " and then " + t).orElse(torque.toString());
  }
}
