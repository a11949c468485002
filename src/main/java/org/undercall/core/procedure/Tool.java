package org.undercall.core.procedure;

import java.time.LocalDate;
import org.undercall.core.term.Torque;

/**
 * A torque wrench at hand.
 *
 * @param id as marked on the tool
 * @param least smallest torque it may be used for
 * @param most largest torque it may be used for, in the same unit
 * @param calibrated date of the last calibration
 */
public record Tool(String id, Torque least, Torque most, LocalDate calibrated) {
  public Tool {
    if (least.unit() != most.unit() || least.amount().compareTo(most.amount()) >= 0) {
      throw new IllegalArgumentException("a range goes up in one unit: " + least + " " + most);
    }
  }

  /** Whether the torque lies in the tool's range. */
  public boolean covers(Torque torque) {
    double value = torque.inNewtonMetres();
    return least.inNewtonMetres() <= value && value <= most.inNewtonMetres();
  }
}
