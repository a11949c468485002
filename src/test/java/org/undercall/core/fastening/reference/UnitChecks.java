package org.undercall.core.fastening.reference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Units;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Unit factors and conversions. */
final class UnitChecks {
  static final Map<String, TorqueUnit> TORQUE =
      Map.of(
          "N.m", TorqueUnit.NEWTON_METRE,
          "lbf.ft", TorqueUnit.POUND_FORCE_FOOT,
          "lbf.in", TorqueUnit.POUND_FORCE_INCH,
          "kgf.m", TorqueUnit.KILOGRAM_FORCE_METRE);

  private UnitChecks() {}

  static Stream<Check> all() {
    return Stream.of(factors(), examples()).flatMap(Function.identity());
  }

  private static Stream<Check> factors() {
    return Rows.of("07a_unit_factors").stream()
        .map(
            row ->
                Check.of(
                    Group.UNITS,
                    "1 " + row.get("from") + " in " + row.get("to"),
                    Rows.number(row, "factor"),
                    factor(row),
                    Rows.citation(row)));
  }

  private static double factor(CSVRecord row) {
    String from = row.get("from");
    if (from.equals("deg")) {
      return Rotation.degrees(1).inRadians();
    }
    Optional<TorqueUnit> torque = Optional.ofNullable(TORQUE.get(from));
    return torque
        .map(unit -> convert("1", unit, TorqueUnit.NEWTON_METRE).doubleValue())
        .orElseGet(
            () ->
                Units.convert(new Measure(BigDecimal.ONE, MeasureUnit.INCH), MeasureUnit.MILLIMETRE)
                    .amount()
                    .doubleValue());
  }

  /** Printed with six decimals, so ours is rounded to six. */
  private static Stream<Check> examples() {
    return Rows.of("07b_unit_examples").stream()
        .map(
            row -> {
              BigDecimal ours =
                  convert(row.get("value"), TORQUE.get(row.get("from")), TORQUE.get(row.get("to")));
              return Check.of(
                  Group.UNITS,
                  row.get("value") + " " + row.get("from") + " in " + row.get("to"),
                  Rows.number(row, "result_calc"),
                  ours.setScale(6, RoundingMode.HALF_UP).doubleValue(),
                  Rows.citation(row));
            });
  }

  private static BigDecimal convert(String amount, TorqueUnit from, TorqueUnit to) {
    return Units.convert(new Torque(new BigDecimal(amount), from), to).amount();
  }
}
