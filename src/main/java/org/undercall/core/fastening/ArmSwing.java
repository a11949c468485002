package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.Refused;

/**
 * A control arm that swings about its inner pivot, and the twist this makes in a bonded bush.
 *
 * <p>Plane geometry: the outer joint at a height h above the inner pivot puts the arm at asin(h/r).
 * A bonded bush is free of twist at the arm's angle when it was tightened. Rotations are positive
 * when the outer end is higher.
 *
 * @param arm length r from the inner pivot to the outer joint
 * @param ride height of the outer joint above the inner pivot at ride height
 * @param travel its heights at full droop and full bump
 */
public record ArmSwing(Length arm, Height ride, Range<Height> travel) {
  public ArmSwing {
    Objects.requireNonNull(ride, "ride");
    double reach = arm.millimetres();
    if (travel.low().millimetres() < -reach || travel.high().millimetres() > reach) {
      throw new Refused("FAS-050", "travel of an arm", travel.toString(), "within " + arm);
    }
    if (!travel.contains(ride)) {
      throw new Refused("FAS-051", "ride height", ride.toString(), "within " + travel);
    }
  }

  /**
   * The twist of a bush that was tightened at some height.
   *
   * @param here turn of the arm from ride height to the height it was tightened at
   * @param atRide the preset twist the bush keeps at ride height
   * @param atDroop its twist at full droop
   * @param atBump its twist at full bump
   */
  public record Twist(Rotation here, Rotation atRide, Rotation atDroop, Rotation atBump) {
    /** The largest twist without its sign. */
    public Rotation worst() {
      Rotation droop = atDroop.size();
      return droop.compareTo(atBump.size()) >= 0 ? droop : atBump.size();
    }
  }

  /**
   * The height of the outer joint now, from the height of the wheel arch at ride height and now.
   * The joint is taken to move as the wheel does; an arch that is higher means a joint that hangs
   * lower.
   */
  public Height heightFor(Length archAtRide, Length archNow) {
    return heightFor(archAtRide, archNow, MotionRatio.ONE);
  }

  /** The same where the joint moves more or less than the wheel. */
  public Height heightFor(Length archAtRide, Length archNow, MotionRatio ratio) {
    Height wheel = Height.mm(archNow.millimetres() - archAtRide.millimetres());
    return Height.mm(ride.millimetres() - ratio.ofJoint(wheel).millimetres());
  }

  /**
   * The angle of the arm at a height.
   *
   * @throws IllegalArgumentException FAS-052 if the arm cannot reach it
   */
  public Rotation angleAt(Height height) {
    double sine = height.millimetres() / arm.millimetres();
    if (Math.abs(sine) > 1) {
      throw new Refused("FAS-052", "height of the outer joint", height + "", "within " + arm);
    }
    return Rotation.radians(Math.asin(sine));
  }

  /** The twist of the bush everywhere if it is tightened at this height. */
  public Twist tightenedAt(Height height) {
    Rotation free = angleAt(height);
    return new Twist(
        free.minus(angleAt(ride)),
        angleAt(ride).minus(free),
        angleAt(travel.low()).minus(free),
        angleAt(travel.high()).minus(free));
  }

  /** The twist per millimetre of height near ride height. */
  public Rotation perMillimetreAtRide() {
    double cosine = Math.cos(angleAt(ride).inRadians());
    return Rotation.radians(1 / (arm.millimetres() * cosine));
  }

  /** How far the outer joint moves sideways between full droop and ride height. */
  public Height lateralShift() {
    double level = Math.cos(angleAt(ride).inRadians());
    double droop = Math.cos(angleAt(travel.low()).inRadians());
    return Height.mm(Math.abs(level - droop) * arm.millimetres());
  }

  /**
   * The height tolerance: how far below and above ride height the bush may be tightened and still
   * keep its preset twist within a limit.
   */
  public Range<Height> tolerance(Rotation limit) {
    Require.positive("limit of the preset twist", limit.degrees(), "°");
    return new Range<>(offset(-limit.degrees()), offset(limit.degrees()));
  }

  private Height offset(double turn) {
    double angle = Math.max(-90, Math.min(90, angleAt(ride).degrees() + turn));
    double height = arm.millimetres() * Math.sin(Math.toRadians(angle));
    return Height.mm(height).above(ride);
  }
}
