package org.undercall.command.figure;

import java.util.Optional;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.ExpectedTorque;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Stretch;
import org.undercall.core.fastening.Tightening;
import org.undercall.core.fastening.ToleranceStack;
import org.undercall.core.fastening.TorqueWindow;
import org.undercall.core.fastening.YieldControlled;
import org.undercall.core.term.Torque;

/**
 * One joint with the way it is tightened and all that may be off.
 *
 * @param turn the angle stage; empty for torque alone
 * @param stack all that lets the preload vary
 */
record JointCase(
    Joint joint, Torque torque, Optional<Rotation> turn, Rubs rubs, ToleranceStack stack) {

  /** The same with the torque stage alone. */
  ToleranceStack torqueOnly() {
    return new ToleranceStack(
        joint, stack.set(), Optional.empty(), stack.tool(), stack.thread(), stack.seat());
  }

  /** The preload with an exact wrench and the middle of the friction. */
  Force nominal() {
    return nominal(turn);
  }

  /** That after the torque stage. */
  Force nominalTorqued() {
    return nominal(Optional.empty());
  }

  private Force nominal(Optional<Rotation> angle) {
    Friction seat = Rubs.middle(rubs.seat());
    return new Tightening(torque, angle).preload(joint.bolt(), joint.stiffness(), thread(), seat);
  }

  private Friction thread() {
    return Rubs.middle(rubs.thread());
  }

  /** How much the bolt is stretched for good in that case, in mm. */
  double nominalPlastic() {
    return turn.map(t -> Stretch.of(joint, torque, t, thread()).plastic()).orElse(0.0);
  }

  /**
   * The largest preload that can come about, with a bolt that may be {@link YieldControlled#SPREAD}
   * times as strong as the least of its class: what seat and inner thread must bear.
   */
  Force most() {
    Bolt bolt = joint.bolt();
    Friction thread = rubs.thread().low();
    Torque largest = TorqueWindow.of(stack.set().high(), stack.tool()).high();
    double torqued = LongForm.of(bolt).preload(largest, thread, rubs.seat().low()).newtons();
    double limit = Assembly.breaking(bolt, thread).newtons();
    double gained = 0;
    if (stack.turn().isPresent()) {
      gained = joint.stiffness().gain(bolt.thread(), stack.turn().get().high()).newtons();
      limit = Assembly.atYield(bolt).preload(thread).newtons();
    }
    return new Force(Math.min(torqued + gained, limit * YieldControlled.SPREAD));
  }

  Range<Friction> both() {
    return rubs.both();
  }

  /** The torque to expect after the angle. */
  ExpectedTorque expected(Deviation wrench) {
    return new ExpectedTorque(joint, torque, both(), wrench, ExpectedTorque.SOFTNESS);
  }
}
