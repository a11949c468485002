package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.util.Objects;
import org.undercall.core.term.Torque;

/**
 * What is set on the wrench when an open-ring head or an extension sits between it and the
 * fastener.
 *
 * @param setting what to dial, a mark of the tool's scale, in the unit of the specification
 * @param wrench length of the wrench from the grip to the square drive, in millimetres
 * @param extension length from the square drive to the fastener, in millimetres
 * @param angle the angle between the two, in degrees; 0 is in line
 */
public record Dialled(Torque setting, BigDecimal wrench, BigDecimal extension, BigDecimal angle) {
  public Dialled {
    Objects.requireNonNull(setting, "setting");
    if (wrench.signum() <= 0 || extension.signum() <= 0) {
      throw new IllegalArgumentException("a length is more than zero: " + wrench + " " + extension);
    }
  }
}
