package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.Refused;

/**
 * A bolt in the parts it clamps: what is needed to reckon beyond yield, with torque against angle,
 * temperature and embedding. For parts of several materials give {@link JointStiffness} instead.
 *
 * @param bolt the bolt with its class and seat
 * @param body its lengths, of the same thread
 * @param parts the clamped parts, of the same length
 * @param boltMaterial elasticity of the bolt
 * @param partsMaterial elasticity of the clamped parts
 */
public record Joint(
    Bolt bolt,
    BoltBody body,
    ClampedParts parts,
    Elasticity boltMaterial,
    Elasticity partsMaterial) {
  private static final double SAME = 0.01;

  public Joint {
    Objects.requireNonNull(boltMaterial, "boltMaterial");
    Objects.requireNonNull(partsMaterial, "partsMaterial");
    if (!body.thread().equals(bolt.thread())) {
      throw new Refused("FAS-033", "thread of a body", body.thread() + "", bolt.thread() + "");
    }
    double apart = body.clamped().millimetres() - parts.clamped().millimetres();
    if (Math.abs(apart) > SAME) {
      throw new Refused("FAS-034", "clamped length", body.clamped() + "", parts.clamped() + "");
    }
  }

  /** A joint of steel. */
  public static Joint ofSteel(Bolt bolt, BoltBody body, ClampedParts parts) {
    return new Joint(bolt, body, parts, Elasticity.STEEL, Elasticity.STEEL);
  }

  /**
   * The clamped length over the diameter, lK/d. From 3 to 5 on, embedding and slip cost less of the
   * preload; common practice that design guides state, from memory.
   */
  public double slenderness() {
    return body.clamped().millimetres() / bolt.thread().diameter().millimetres();
  }

  /** The springs of the joint. */
  public JointStiffness stiffness() {
    return new JointStiffness(
        body.compliance(boltMaterial), parts.compliance(partsMaterial));
  }
}
