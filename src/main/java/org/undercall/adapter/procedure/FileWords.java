package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Turns the words of the file into the terms of the core. */
final class FileWords {
  private FileWords() {}

  /** A torque; empty if the amount is no number above zero or the unit is not known. */
  static Optional<Torque> torque(JsonNode amount, JsonNode unit) {
    return amount.isNumber() && amount.decimalValue().signum() > 0
        ? torqueUnit(unit.asText()).map(u -> new Torque(amount.decimalValue(), u))
        : Optional.empty();
  }

  private static Optional<TorqueUnit> torqueUnit(String word) {
    return switch (word) {
      case "N·m", "Nm" -> Optional.of(TorqueUnit.NEWTON_METRE);
      case "lbf·ft" -> Optional.of(TorqueUnit.POUND_FORCE_FOOT);
      case "lbf·in" -> Optional.of(TorqueUnit.POUND_FORCE_INCH);
      default -> Optional.empty();
    };
  }

  /** The unit of a measured value. */
  static MeasureUnit measureUnit(String word) {
    if (word.equals("deg")) {
      return MeasureUnit.DEGREE;
    }
    for (MeasureUnit unit : MeasureUnit.values()) {
      if (unit.symbol().equals(word)) {
        return unit;
      }
    }
    throw new IllegalArgumentException("no such unit: " + word);
  }

  /** The constant of an enumeration that a hyphenated word names. */
  static <E extends Enum<E>> E constant(Class<E> type, String word) {
    return Kebab.read(type, word);
  }
}
