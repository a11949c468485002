package org.undercall.core.fastening.reference;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Adaptor;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.TorqueWindow;
import org.undercall.core.fastening.WrenchClass;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Adaptors, permissible deviations, calibration and windows of true torque. */
final class ToolChecks {
  private static final Map<String, TorqueUnit> UNITS =
      Map.of(
          "N.m", TorqueUnit.NEWTON_METRE,
          "lbf.ft", TorqueUnit.POUND_FORCE_FOOT,
          "lbf.in", TorqueUnit.POUND_FORCE_INCH);

  private static final Map<String, Integer> PROCEDURE =
      Map.of(
          "default recalibration period", Calibration.Interval.ISO_6789.months(),
          "default recalibration cycles", Calibration.Interval.ISO_6789.uses(),
          "preload type I", WrenchClass.I_B.preloadings(),
          "preload type II", WrenchClass.II_A.preloadings());

  private ToolChecks() {}

  static Stream<Check> all() {
    return Stream.of(adaptors(), deviations(), procedure(), windows()).flatMap(Function.identity());
  }

  private static Stream<Check> adaptors() {
    return Rows.of("05_extension_correction").stream().map(ToolChecks::adaptor);
  }

  private static Check adaptor(CSVRecord row) {
    boolean inches = row.get("length_unit").equals("in");
    double wrench = Rows.number(row, "L");
    double extension = Rows.number(row, "E");
    Adaptor adaptor =
        new Adaptor(
            inches ? Length.inches(wrench) : Length.mm(wrench),
            inches ? Length.inches(extension) : Length.mm(extension),
            Rotation.degrees(Rows.number(row, "theta_deg")));
    Torque given = new Torque(new BigDecimal(row.get("T_in")), UNITS.get(row.get("T_unit")));
    boolean setting = row.get("direction").equals("setting from target");
    Torque ours = setting ? adaptor.setting(given) : adaptor.atFastener(given);
    boolean published = !row.get("T_out_published").isEmpty();
    String column = published ? "T_out_published" : "T_out_calc";
    String what = row.get("id") + " " + row.get("direction");
    return Check.of(
        Group.ADAPTOR,
        what,
        Rows.number(row, column),
        ours.amount().doubleValue(),
        Rows.citation(row));
  }

  private static Stream<Check> deviations() {
    return Rows.of("06a_iso6789_permissible_deviation").stream()
        .flatMap(
            row -> {
              WrenchClass ours = WrenchClass.valueOf(row.get("type") + "_" + row.get("class"));
              return Stream.of(
                  deviation(row, "pm_pct_max_torque_le_10Nm", ours, "10"),
                  deviation(row, "pm_pct_max_torque_gt_10Nm", ours, "10.1"));
            });
  }

  private static Check deviation(CSVRecord row, String column, WrenchClass ours, String largest) {
    double percent = ours.permissible(Torque.newtonMetres(largest)).percent();
    String what = "type " + row.get("type") + " class " + row.get("class") + " " + column;
    return Check.of(Group.TOOLS, what, Rows.number(row, column), percent, Rows.citation(row));
  }

  private static Stream<Check> procedure() {
    return Rows.of("06b_iso6789_procedure").stream()
        .filter(row -> PROCEDURE.containsKey(row.get("item")))
        .map(
            row ->
                Check.of(
                    Group.TOOLS,
                    row.get("item"),
                    Rows.number(row, "value"),
                    PROCEDURE.get(row.get("item")),
                    Rows.citation(row)));
  }

  private static Stream<Check> windows() {
    return Rows.of("06c_torque_window").stream()
        .flatMap(
            row -> {
              Range<Torque> ours =
                  TorqueWindow.of(
                      Torque.newtonMetres(row.get("setting_Nm")),
                      new Deviation(Rows.number(row, "pm_pct")));
              return Stream.of(
                  window(row, "true_min_Nm", ours.low()), window(row, "true_max_Nm", ours.high()));
            });
  }

  private static Check window(CSVRecord row, String column, Torque ours) {
    String what = row.get("tool") + " at " + row.get("setting_Nm") + " " + column;
    double published = Rows.number(row, column);
    return Check.of(Group.WINDOW, what, published, ours.inNewtonMetres(), Rows.computed(row));
  }
}
