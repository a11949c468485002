package org.undercall.core.fastening;

import org.undercall.core.term.Refused;

/**
 * How far the outer joint of an arm moves for each millimetre that the wheel moves.
 *
 * <p>One where the joint is at the wheel centre, as on most lower arms; less for a joint nearer to
 * the pivot, such as a link part of the way along an arm. To be measured on the car or taken from
 * its data; it changes a little over the travel, which is not seen here.
 *
 * @param joint millimetres of the joint for one of the wheel, more than zero, at most 5
 */
public record MotionRatio(double joint) {
  private static final double MOST = 5;

  /** The joint moves as the wheel does. */
  public static final MotionRatio ONE = new MotionRatio(1);

  public MotionRatio {
    Require.positive("motion ratio", joint, "(no unit)");
    if (joint > MOST) {
      throw new Refused("FAS-053", "motion ratio", joint + "", "at most 5");
    }
  }

  /** How far the joint moves when the wheel moves so far. */
  public Height ofJoint(Height wheel) {
    return Height.mm(wheel.millimetres() * joint);
  }

  /** How far the wheel moves when the joint moves so far. */
  public Height ofWheel(Height moved) {
    return Height.mm(moved.millimetres() / joint);
  }
}
