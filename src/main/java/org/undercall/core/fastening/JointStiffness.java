package org.undercall.core.fastening;

import java.util.Objects;

/**
 * The two springs of a bolted joint.
 *
 * @param bolt compliance δS of the bolt
 * @param parts compliance δP of the clamped parts
 */
public record JointStiffness(Compliance bolt, Compliance parts) {
  public JointStiffness {
    Objects.requireNonNull(bolt, "bolt");
    Objects.requireNonNull(parts, "parts");
  }

  /** The springs of a bolt and the parts it clamps, all of one material. */
  public static JointStiffness of(BoltBody bolt, ClampedParts parts, Elasticity material) {
    return new JointStiffness(bolt.compliance(material), parts.compliance(material));
  }

  /** The force ratio Φ = δP/(δS + δP): the share of a working load that the bolt feels. */
  public double forceRatio() {
    return parts.millimetresPerNewton() / bolt.plus(parts).millimetresPerNewton();
  }

  /**
   * The preload that a turn adds while everything is elastic and the parts lie flat: F = P
   * angle/360 / (δS + δP).
   */
  public Force gain(ThreadSize thread, Rotation turn) {
    double advance = thread.pitch().millimetres() * turn.degrees() / 360;
    return new Force(advance / bolt.plus(parts).millimetresPerNewton());
  }

  /** The turn that adds a preload; the reverse of {@link #gain}. */
  public Rotation turnFor(ThreadSize thread, Force gain) {
    double advance = gain.newtons() * bolt.plus(parts).millimetresPerNewton();
    return Rotation.degrees(advance / thread.pitch().millimetres() * 360);
  }
}
