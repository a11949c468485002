package org.undercall.core.fastening;

import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.Torque;

/**
 * A tightening by torque and then angle, with what is known about the joint.
 *
 * @param bolt the bolt
 * @param snug the torque of the torque stage
 * @param turn the angle of the angle stage, more than zero
 * @param joint the springs of the joint; empty if its sizes are not known
 */
public record AngleJob(Bolt bolt, Torque snug, Rotation turn, Optional<JointStiffness> joint) {
  public AngleJob {
    Objects.requireNonNull(bolt, "bolt");
    Objects.requireNonNull(snug, "snug");
    Objects.requireNonNull(joint, "joint");
    Require.positive("angle stage", turn.degrees(), "°");
  }

  /** A tightening of a joint that is known. */
  public static AngleJob of(Bolt bolt, Torque snug, Rotation turn, JointStiffness joint) {
    return new AngleJob(bolt, snug, turn, Optional.of(joint));
  }

  /** A tightening of a joint that is not known. */
  public static AngleJob unknownJoint(Bolt bolt, Torque snug, Rotation turn) {
    return new AngleJob(bolt, snug, turn, Optional.empty());
  }
}
