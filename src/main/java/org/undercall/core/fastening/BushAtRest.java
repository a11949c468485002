package org.undercall.core.fastening;

import java.util.Objects;

/**
 * What a bonded bush carries for the rest of its life when its arm was tightened at a wrong height.
 *
 * <p>The twist from {@link ArmSwing}, moment and shear strain from {@link BondedBush}. The moment
 * at rest also lifts or lowers the car a little at that corner: over the arm's reach it is a force
 * at the outer joint. Cannot see: creep of the rubber, which lessens the moment and leaves the
 * strain, and the bush's other directions.
 *
 * @param arm the arm
 * @param bush the bush at its pivot
 */
public record BushAtRest(ArmSwing arm, BondedBush bush) {
  public BushAtRest {
    Objects.requireNonNull(arm, "arm");
    Objects.requireNonNull(bush, "bush");
  }

  /**
   * What is left at ride height.
   *
   * @param error how far above ride height it was tightened; negative below
   * @param twist the twist at ride height
   * @param moment the moment that holds it
   * @param strain the shear strain at the inner sleeve at ride height, as a number of one
   * @param worstStrain the largest there over the whole travel
   */
  public record Rest(
      Height error, Rotation twist, Moment moment, double strain, double worstStrain) {}

  /** What is left if the bush was tightened at this height of the outer joint. */
  public Rest tightenedAt(Height height) {
    ArmSwing.Twist twist = arm.tightenedAt(height);
    return new Rest(
        height.above(arm.ride()),
        twist.atRide(),
        bush.moment(twist.atRide()),
        bush.strainInside(twist.atRide()),
        bush.strainInside(twist.worst()));
  }

  /** The vertical force at the outer joint that a moment makes at ride height: M/(r cos angle). */
  public ForceChange atOuterJoint(Moment moment) {
    double reach = arm.arm().millimetres() * Math.cos(arm.angleAt(arm.ride()).inRadians());
    return new ForceChange(moment.newtonMetres() * 1000 / reach);
  }

  /**
   * How much more moment the left bush carries at rest than the right one, each tightened at its
   * height. A difference leans the car, if only a little.
   */
  public Moment leftOverRight(Height left, Height right) {
    double more =
        tightenedAt(left).moment().newtonMetres() - tightenedAt(right).moment().newtonMetres();
    return new Moment(more);
  }
}
