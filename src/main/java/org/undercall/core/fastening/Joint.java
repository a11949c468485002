package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.Refused;

/**
 * A bolt in the parts it clamps, with what is needed to reckon beyond yield: its lengths.
 *
 * @param bolt the bolt with its class and seat
 * @param body its lengths, of the same thread
 * @param stiffness the springs of bolt and parts
 */
public record Joint(Bolt bolt, BoltBody body, JointStiffness stiffness) {
  private static final double SAME = 0.01;

  public Joint {
    Objects.requireNonNull(stiffness, "stiffness");
    if (!body.thread().equals(bolt.thread())) {
      throw new Refused("FAS-033", "thread of a body", body.thread() + "", bolt.thread() + "");
    }
  }

  /**
   * A joint with parts of one material.
   *
   * @throws IllegalArgumentException FAS-034 if bolt and parts differ in the clamped length
   */
  public static Joint of(
      Bolt bolt, BoltBody body, ClampedParts parts, Elasticity ofBolt, Elasticity ofParts) {
    double apart = body.clamped().millimetres() - parts.clamped().millimetres();
    if (Math.abs(apart) > SAME) {
      throw new Refused("FAS-034", "clamped length", body.clamped() + "", parts.clamped() + "");
    }
    return new Joint(
        bolt, body, new JointStiffness(body.compliance(ofBolt), parts.compliance(ofParts)));
  }

  /** A joint of steel. */
  public static Joint ofSteel(Bolt bolt, BoltBody body, ClampedParts parts) {
    return of(bolt, body, parts, Elasticity.STEEL, Elasticity.STEEL);
  }

  /**
   * The clamped length over the diameter, lK/d. From 3 to 5 on, embedding and slip cost less of the
   * preload; common practice that design guides state, from memory.
   */
  public double slenderness() {
    return body.clamped().millimetres() / bolt.thread().diameter().millimetres();
  }
}
