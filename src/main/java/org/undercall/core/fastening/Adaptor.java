package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * An open-ring head or an extension on the square drive of a torque wrench, at an angle to it.
 *
 * <p>The lever rule: T_set = T L/(L + E cos θ). In line (0 degrees) the wrench is longer and is set
 * lower; at 90 degrees nothing changes; turned back (180 degrees) it is set higher. Any length is
 * measured to where the hand pulls, which must be the middle of the grip.
 *
 * @param wrench length L from the grip to the square drive
 * @param extension length E from the square drive to the fastener
 * @param angle the angle θ of the adaptor to the wrench
 */
public record Adaptor(Length wrench, Length extension, Rotation angle) {
  public Adaptor {
    Objects.requireNonNull(wrench, "wrench");
    double along = extension.millimetres() * Math.cos(angle.inRadians());
    if (wrench.millimetres() + along <= 0) {
      throw new Refused(
          "FAS-041", "adaptor", extension + " at " + angle, "less than the wrench turned back");
    }
  }

  /** The lever from the grip to the fastener, along the wrench: L + E cos θ. */
  public Length lever() {
    double along = extension.millimetres() * Math.cos(angle.inRadians());
    return new Length(wrench.millimetres() + along);
  }

  /** What to set on the wrench for a torque at the fastener. */
  public Torque setting(Torque atFastener) {
    return scaled(atFastener, wrench.millimetres() / lever().millimetres());
  }

  /** The torque at the fastener for a setting of the wrench. */
  public Torque atFastener(Torque setting) {
    return scaled(setting, lever().millimetres() / wrench.millimetres());
  }

  private static Torque scaled(Torque torque, double factor) {
    Torque inNewtonMetres = Units.newtonMetres(torque.inNewtonMetres() * factor);
    return Units.convert(inNewtonMetres, torque.unit());
  }
}
