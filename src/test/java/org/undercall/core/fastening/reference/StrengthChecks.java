package org.undercall.core.fastening.reference;

import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.term.HeadMarking;

/** Threads, property classes, loads and the preload table against the outside values. */
final class StrengthChecks {
  /** A torque of 4.6 N·m where both neighbours and the formula give 4.4; probably a misprint. */
  static final String MISPRINT = "M4 10.9 µ 0.12 MA";

  private StrengthChecks() {}

  static Stream<Check> all() {
    return Stream.of(threads(), classes(), loads(), structural(), vdi())
        .flatMap(Function.identity());
  }

  private static Stream<Check> threads() {
    return Rows.of("01_threads").stream().flatMap(StrengthChecks::thread);
  }

  private static Stream<Check> thread(CSVRecord row) {
    ThreadSize thread = ThreadSize.of(row.get("thread"));
    double area = thread.stressArea().squareMillimetres();
    Stream<Check> diameters =
        Stream.of(
            threadCheck(row, "d2_mm_table", thread.pitchDiameter().millimetres()),
            threadCheck(row, "D1_mm_table", thread.minorDiameter().millimetres()),
            threadCheck(row, "d3_mm_table", thread.rootDiameter().millimetres()));
    Stream<Check> areas =
        row.get("As_mm2_table").isEmpty()
            ? Stream.empty()
            : Stream.of(threadCheck(row, "As_mm2_table", area));
    return Stream.concat(diameters, areas);
  }

  private static Check threadCheck(CSVRecord row, String column, double ours) {
    String what = row.get("thread") + " " + column.substring(0, 2);
    return Check.of(Group.THREADS, what, Rows.number(row, column), ours, Rows.citation(row));
  }

  private static Stream<Check> classes() {
    return Rows.of("02a_iso898_1_property_classes").stream()
        .flatMap(
            row -> {
              String range = row.get("diameter_range_mm");
              ThreadSize thread = ThreadSize.of(range.equals("d>16") ? "M20" : "M12");
              PropertyClass strength = strength(row.get("property_class"));
              return Stream.of(
                  classCheck(row, "Rm_min_MPa", strength.tensileStrength(thread)),
                  classCheck(row, "yield_min_MPa", strength.yieldStrength(thread)),
                  classCheck(row, "Sp_proof_MPa", strength.proofStress(thread)));
            });
  }

  private static Check classCheck(CSVRecord row, String column, Stress ours) {
    String what = row.get("property_class") + " " + row.get("diameter_range_mm") + " " + column;
    double published = Rows.number(row, column);
    return Check.of(Group.CLASSES, what, published, ours.megapascals(), Rows.citation(row));
  }

  private static Stream<Check> loads() {
    return Rows.of("02b_iso898_1_loads").stream()
        .map(
            row -> {
              ThreadSize thread = ThreadSize.of(row.get("thread"));
              PropertyClass strength = strength(row.get("property_class"));
              boolean proof = row.get("kind").equals("proof_load");
              Force ours = proof ? strength.proofLoad(thread) : strength.ultimateLoad(thread);
              String what =
                  row.get("thread") + " " + row.get("property_class") + " " + row.get("kind");
              double published = Rows.number(row, "load_N_table");
              return Check.of(Group.LOADS, what, published, ours.newtons(), Rows.citation(row));
            });
  }

  /** Class 8.8 up to 16 mm, and the raised load for structural bolting: 830 MPa on the area. */
  private static Stream<Check> structural() {
    return Rows.of("02c_iso898_1_structural_note").stream()
        .flatMap(
            row -> {
              ThreadSize thread = ThreadSize.of(row.get("thread"));
              double plain = PropertyClass.C8_8.ultimateLoad(thread).newtons();
              double raised = new Stress(830).on(thread.stressArea()).newtons();
              return Stream.of(
                  structural(row, "Fm_min_8.8_N", plain),
                  structural(row, "Fm_min_8.8_structural_bolting_N", raised));
            });
  }

  private static Check structural(CSVRecord row, String column, double ours) {
    String what = row.get("thread") + " " + column;
    return Check.of(Group.LOADS, what, Rows.number(row, column), ours, Rows.citation(row));
  }

  private static Stream<Check> vdi() {
    return Rows.of("03a_vdi2230_preload_torque").stream()
        .flatMap(
            row -> {
              Friction friction = Friction.of(Rows.number(row, "mu_G_eq_mu_K"));
              Assembly ours =
                  Assembly.of(Bolt.hexagon(row.get("thread"), row.get("property_class")));
              double preload = ours.preload(friction).inKilonewtons();
              double torque = ours.torque(friction, friction).inNewtonMetres();
              return Stream.of(
                  vdiCheck(row, "FM", "FM_kN_table", preload),
                  vdiCheck(row, "MA", "MA_Nm_table", torque));
            })
        .filter(check -> !check.what().equals(MISPRINT));
  }

  /** The row that is left out of the table as a probable misprint, for a test of its own. */
  static Check misprint() {
    CSVRecord row =
        Rows.of("03a_vdi2230_preload_torque").stream()
            .filter(r -> vdiName(r, "MA").equals(MISPRINT))
            .findFirst()
            .orElseThrow();
    Friction friction = Friction.of(0.12);
    double ours =
        Assembly.of(Bolt.hexagon("M4", "10.9")).torque(friction, friction).inNewtonMetres();
    return vdiCheck(row, "MA", "MA_Nm_table", ours);
  }

  /** Where a row names one source for the preload and one for the torque, takes the right one. */
  private static Check vdiCheck(CSVRecord row, String quantity, String column, double ours) {
    String[] parts = row.get("source").split("; MA: ", 2);
    Check.Citation citation = Rows.citation(row);
    if (parts.length == 2) {
      String part = quantity.equals("MA") ? parts[1] : parts[0].replaceFirst("^FM[^:]*: ", "");
      citation = new Check.Citation(part, part.endsWith("(read)") ? Basis.READ : Basis.RECALLED);
    }
    String what = vdiName(row, quantity);
    return Check.of(Group.VDI, what, Rows.number(row, column), ours, citation);
  }

  private static String vdiName(CSVRecord row, String quantity) {
    return row.get("thread")
        + (" " + row.get("property_class"))
        + (" µ " + row.get("mu_G_eq_mu_K"))
        + (" " + quantity);
  }

  static PropertyClass strength(String marking) {
    return PropertyClass.of(new HeadMarking(marking)).orElseThrow();
  }
}
