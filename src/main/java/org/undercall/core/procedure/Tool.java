package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.undercall.core.term.Torque;

/**
 * A torque wrench at hand.
 *
 * @param id as marked on the tool
 * @param kind how it shows the torque
 * @param least smallest torque it may be used for
 * @param most largest torque it may be used for, in the same unit
 * @param calibrated date of the last calibration; empty if it is not stated
 * @param uncertainty what its certificate states, either way in percent of the torque (expanded,
 *     ISO 6789-2); empty if it is not stated
 */
public record Tool(
    String id,
    Kind kind,
    Torque least,
    Torque most,
    Optional<LocalDate> calibrated,
    Optional<BigDecimal> uncertainty) {

  /** How a torque wrench shows the torque (the two types of ISO 6789-1:2017). */
  public enum Kind {
    /** It is set beforehand and clicks, a setting tool of type II: the setting is what counts. */
    CLICKING,
    /** Its scale or display is read, an indicating tool of type I: the reading is what counts. */
    INDICATING
  }

  public Tool {
    if (least.unit() != most.unit() || least.amount().compareTo(most.amount()) >= 0) {
      throw new IllegalArgumentException("a range goes up in one unit: " + least + " " + most);
    }
  }

  /** A wrench of which no uncertainty is stated. */
  public Tool(String id, Kind kind, Torque least, Torque most, Optional<LocalDate> calibrated) {
    this(id, kind, least, most, calibrated, Optional.empty());
  }

  /** A clicking wrench. */
  public Tool(String id, Torque least, Torque most, LocalDate calibrated) {
    this(id, Kind.CLICKING, least, most, Optional.of(calibrated));
  }

  /** Whether the torque lies in the tool's range. */
  public boolean covers(Torque torque) {
    double value = torque.inNewtonMetres();
    return least.inNewtonMetres() <= value && value <= most.inNewtonMetres();
  }

  /** Whether it has the torque's unit and the torque lies in its range. */
  public boolean serves(Torque torque) {
    return torque.unit() == most.unit() && covers(torque);
  }
}
