package org.undercall.core.fastening.reference;

import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.CombinedStress;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.ThreadMechanics;
import org.undercall.core.fastening.TighteningMethod;
import org.undercall.core.fastening.TorqueLaw;
import org.undercall.core.fastening.Torsion;
import org.undercall.core.fastening.Units;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** The worked examples of torque, preload and combined stress. */
final class PreloadChecks {
  private static final Bolt BOLT = Bolt.hexagon("M12x1.5", "10.9");
  private static final Friction MU = Friction.of(0.12);
  private static final Force PRELOAD = Force.kilonewtons(48.4);
  private static final LongForm VDI = LongForm.of(BOLT);
  private static final LongForm ISO = new LongForm(BOLT, TorqueLaw.ISO_16047);

  /** Ours, by id and what. */
  private static final Map<String, DoubleSupplier> OURS =
      Map.ofEntries(
          Map.entry(
              "3-1 short form", () -> shortForm(0.20, 12, 0.70 * 580 * 84.3).inNewtonMetres()),
          Map.entry("3-2 short form inch", () -> inch(0.20)),
          Map.entry("3-3 short form inch", () -> inch(0.15)),
          Map.entry("3-4 min preload from tightening factor", () -> least(41.9, 1.8)),
          Map.entry("3-5 FMmin ratio", () -> least(28.8, 1.6)),
          Map.entry("3-6 FMmin ratio", () -> least(41.9, 1.6)),
          Map.entry("3-7 mu=0.1 long form F from T", () -> preload(0.10)),
          Map.entry("3-7 mu=0.12 long form F from T", () -> preload(0.12)),
          Map.entry("3-7 mu=0.14 long form F from T", () -> preload(0.14)),
          Map.entry("3-7 mu=0.16 long form F from T", () -> preload(0.16)),
          Map.entry(
              "3-8 exact thread mechanics d2/2*tan(phi+rho)+mu*DKm/2",
              () -> ThreadMechanics.torque(BOLT, PRELOAD, MU, MU).inNewtonMetres()),
          Map.entry("3-9 VDI 0.16/0.58 coefficient sensitivity", () -> torque(VDI)),
          Map.entry("3-9 ISO 16047 0.159155/0.57735 coefficient sensitivity", () -> torque(ISO)),
          Map.entry("3-9 printed 0.159/0.578 coefficient sensitivity", () -> torque(ISO)),
          Map.entry("3-10 share: pitch (useful)", () -> ISO.shares(MU, MU).pitch() * 100),
          Map.entry("3-10 share: thread friction", () -> ISO.shares(MU, MU).thread() * 100),
          Map.entry("3-10 share: head friction", () -> ISO.shares(MU, MU).seat() * 100),
          Map.entry("3-12 axial stress", () -> stress(Torsion.PLASTIC).axial().megapascals()),
          Map.entry("3-12 thread torque MG", () -> ISO.threadTorque(PRELOAD, MU).inNewtonMetres()),
          Map.entry(
              "3-12 reduced stress elastic Wp=pi/16 d0^3",
              () -> stress(Torsion.ELASTIC).reduced().megapascals()),
          Map.entry(
              "3-12 reduced stress VDI 2003+ Wp=pi/12 d0^3",
              () -> stress(Torsion.PLASTIC).reduced().megapascals()));

  private static final Map<String, TighteningMethod> METHODS =
      Map.of(
          "yield-controlled, motor or manual",
          TighteningMethod.YIELD_CONTROLLED,
          "rotation-angle-controlled, motor or manual",
          TighteningMethod.ANGLE_CONTROLLED,
          "torque wrench, target torque from tests on the original joint",
          TighteningMethod.TORQUE_FROM_TESTS_ON_THE_JOINT,
          "torque wrench, mu estimated, class B",
          TighteningMethod.TORQUE_FRICTION_ESTIMATED_CLASS_B,
          "torque wrench / power driver, mu estimated, class A",
          TighteningMethod.TORQUE_FRICTION_ESTIMATED_CLASS_A,
          "impact / impulse wrench without check",
          TighteningMethod.IMPACT_WRENCH);

  private PreloadChecks() {}

  static Stream<Check> all() {
    return Stream.of(worked(), tightening()).flatMap(Function.identity());
  }

  private static Stream<Check> worked() {
    return Rows.of("03e_worked_examples").stream().map(PreloadChecks::worked);
  }

  private static Check worked(CSVRecord row) {
    String what = row.get("id") + " " + row.get("what");
    DoubleSupplier ours = OURS.get(what);
    if (ours == null) {
      throw new IllegalStateException("no computation for the row " + what);
    }
    return publishedOrValue(Group.WORKED, row, what, ours.getAsDouble());
  }

  /** Takes the published figure, or the value column where the published figure is rounded off. */
  static Check publishedOrValue(Group group, CSVRecord row, String what, double ours) {
    double value = Rows.number(row, "value");
    if (row.get("published").isEmpty()) {
      return Check.of(group, what, value, ours, Rows.computed(row));
    }
    double published = Rows.number(row, "published");
    Check read = Check.of(group, what, published, ours, Rows.citation(row));
    if (Math.abs(Rows.number(row, "dev_pct")) <= group.tolerance()) {
      return read;
    }
    String note = "published as " + row.get("published") + ", rounded; compared with the value";
    return new Check(group, what, value, ours, Rows.computed(row), note);
  }

  private static Stream<Check> tightening() {
    return Rows.of("03c_tightening_factor").stream()
        .flatMap(
            row -> {
              TighteningMethod method = METHODS.get(row.get("method"));
              return Stream.of(
                  factor(row, "alpha_A_min", method.best()),
                  factor(row, "alpha_A_max", method.worst()),
                  factor(
                      row, "scatter_pct_min_calc", TighteningMethod.scatterPercent(method.best())),
                  factor(
                      row,
                      "scatter_pct_max_calc",
                      TighteningMethod.scatterPercent(method.worst())));
            });
  }

  private static Check factor(CSVRecord row, String column, double ours) {
    String what = row.get("method") + " " + column;
    Check.Citation citation = column.endsWith("calc") ? Rows.computed(row) : Rows.citation(row);
    return Check.of(Group.TIGHTENING, what, Rows.number(row, column), ours, citation);
  }

  private static Torque shortForm(double k, double diameter, double newtons) {
    return ShortForm.torque(NutFactor.of(k), new Force(newtons), Length.mm(diameter));
  }

  private static double inch(double k) {
    Force preload = new Force(4940 * 4.4482216152605);
    Torque torque = ShortForm.torque(NutFactor.of(k), preload, Length.inches(0.375));
    return Units.convert(torque, TorqueUnit.POUND_FORCE_FOOT).amount().doubleValue();
  }

  private static double least(double kilonewtons, double factor) {
    return TighteningMethod.leastPreload(Force.kilonewtons(kilonewtons), factor).inKilonewtons();
  }

  private static double preload(double friction) {
    Friction mu = Friction.of(friction);
    return ISO.preload(Torque.newtonMetres("100"), mu, mu).inKilonewtons();
  }

  private static double torque(LongForm form) {
    return form.torque(PRELOAD, MU, MU).inNewtonMetres();
  }

  private static CombinedStress stress(Torsion torsion) {
    Torque thread = ISO.threadTorque(PRELOAD, MU);
    return CombinedStress.tightening(BOLT.thread(), PRELOAD, thread, torsion);
  }
}
