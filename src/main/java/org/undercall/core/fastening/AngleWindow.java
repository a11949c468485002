package org.undercall.core.fastening;

import java.util.Optional;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * The angles after a torque stage that are enough and not too much, whatever the friction.
 *
 * <p>Enough: where the friction is highest, and the torque stage brought least, the preload wanted
 * is still reached. Not too much: where the friction is lowest, the plastic strain of the free
 * thread still keeps a limit ({@link Stretch}). Both ends of friction are tried, nothing between.
 * If the window is closed, this torque stage and friction leave no angle that is right for all; a
 * higher torque stage, a longer free thread or friction that is better known opens it.
 *
 * @param least the least angle that is enough
 * @param most the most that is not too much
 */
public record AngleWindow(Rotation least, Rotation most) {

  /** The window from yield at every friction up to the strain at which a verdict ends. */
  public static AngleWindow toYield(
      Joint joint, Torque snug, Range<Friction> friction, Stretch.Verdict limit) {
    return of(joint, snug, friction, Optional.empty(), limit);
  }

  /**
   * The window from a wanted preload up to the strain at which a verdict ends.
   *
   * @throws IllegalArgumentException FAS-035 if the bolt yields before that preload
   */
  public static AngleWindow toPreload(
      Joint joint, Torque snug, Range<Friction> friction, Force wanted, Stretch.Verdict limit) {
    return of(joint, snug, friction, Optional.of(wanted), limit);
  }

  private static AngleWindow of(
      Joint joint,
      Torque snug,
      Range<Friction> friction,
      Optional<Force> wanted,
      Stretch.Verdict limit) {
    Range<Rotation> enough = friction.map(f -> angleTo(joint, snug, f, wanted));
    Range<Rotation> yields = friction.map(f -> angleTo(joint, snug, f, Optional.empty()));
    double strain = Stretch.limit(limit, joint.bolt().strength().leastElongation());
    double stretch = strain * joint.body().freeThread().millimetres();
    double beyond = stretch / joint.bolt().thread().pitch().millimetres() * 360;
    return new AngleWindow(enough.high(), Rotation.degrees(yields.low().degrees() + beyond));
  }

  /** The angle to a preload, or to yield if none is given; zero if the torque stage brings it. */
  static Rotation angleTo(Joint joint, Torque snug, Friction friction, Optional<Force> wanted) {
    Force yield = Assembly.atYield(joint.bolt()).preload(friction);
    Force goal = wanted.orElse(yield);
    if (goal.compareTo(yield) > 0) {
      throw new Refused("FAS-035", "wanted preload", goal + "", "at most " + yield + ", at yield");
    }
    double there = LongForm.of(joint.bolt()).preload(snug, friction, friction).newtons();
    Force missing = new Force(Math.max(0, goal.newtons() - there));
    return joint.stiffness().turnFor(joint.bolt().thread(), missing);
  }

  /** Whether there is an angle that is right whatever the friction. */
  public boolean open() {
    return least.compareTo(most) <= 0;
  }

  /** Whether an angle is right whatever the friction. */
  public boolean contains(Rotation turn) {
    return least.compareTo(turn) <= 0 && turn.compareTo(most) <= 0;
  }

  @Override
  public String toString() {
    return open() ? least + " to " + most : "none: " + least + " is needed, " + most + " allowed";
  }
}
