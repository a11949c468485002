package org.undercall.core.fastening;

import java.util.Optional;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * The scatter of preload from friction and tool: torque alone against torque and angle.
 *
 * <p>Lowest: high friction, tool low; highest: low friction, tool high. Yield cuts the top off, as
 * it does in the bolt.
 *
 * <p>Computed and checked against published values, not yet used by a command.
 *
 * @param low the lowest preload
 * @param nominal the preload with nominal friction and an exact tool
 * @param high the highest preload
 */
public record Scatter(Force low, Force nominal, Force high) {

  /**
   * The causes of scatter.
   *
   * @param friction the range of friction
   * @param nominal the friction reckoned with
   * @param torque the permissible deviation of the torque tool
   * @param angle the error of the angle, either way
   */
  public record Causes(
      Range<Friction> friction, Friction nominal, Deviation torque, Rotation angle) {
    public Causes {
      Require.notNegative("error of the angle", angle.degrees(), "°");
      if (!friction.contains(nominal)) {
        throw new Refused("FAS-032", "nominal friction", nominal.toString(), "in " + friction);
      }
    }
  }

  /** The scatter of tightening by torque alone. */
  public static Scatter ofTorque(Bolt bolt, Torque torque, Causes causes) {
    double tool = causes.torque().share();
    return new Scatter(
        preload(bolt, scaled(torque, 1 - tool), causes.friction().high()),
        preload(bolt, torque, causes.nominal()),
        preload(bolt, scaled(torque, 1 + tool), causes.friction().low()));
  }

  /** The scatter of tightening by torque and angle; empty if the joint is not known. */
  public static Optional<Scatter> ofTorqueAndAngle(AngleJob job, Causes causes) {
    return job.joint().map(joint -> ofKnownJoint(job, causes));
  }

  /** Half of the spread as a share of the middle, in percent. */
  public double plusMinusPercent() {
    return (high.newtons() - low.newtons()) / (high.newtons() + low.newtons()) * 100;
  }

  /** The highest preload over the lowest. */
  public double ratio() {
    return high.newtons() / low.newtons();
  }

  private static Scatter ofKnownJoint(AngleJob job, Causes causes) {
    double tool = causes.torque().share();
    double error = causes.angle().degrees();
    return new Scatter(
        preload(varied(job, 1 - tool, -error), causes.friction().high()),
        preload(job, causes.nominal()),
        preload(varied(job, 1 + tool, error), causes.friction().low()));
  }

  private static AngleJob varied(AngleJob job, double tool, double error) {
    Rotation turn = Rotation.degrees(job.turn().degrees() + error);
    return new AngleJob(job.bolt(), scaled(job.snug(), tool), turn, job.joint());
  }

  private static Force preload(AngleJob job, Friction friction) {
    return AngleTightening.preload(job, friction).orElseThrow();
  }

  private static Force preload(Bolt bolt, Torque torque, Friction friction) {
    Force elastic = LongForm.of(bolt).preload(torque, friction, friction);
    Force yield = Assembly.atYield(bolt).preload(friction);
    return elastic.compareTo(yield) <= 0 ? elastic : yield;
  }

  private static Torque scaled(Torque torque, double factor) {
    return Units.newtonMetres(torque.inNewtonMetres() * factor);
  }
}
