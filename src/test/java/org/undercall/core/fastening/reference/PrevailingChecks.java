package org.undercall.core.fastening.reference;

import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.PrevailingTorque;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;

/** Self-locking nuts: what prevails, and a maker's table of clamp loads and torques by K. */
final class PrevailingChecks {
  static final String TABLE = "17_prevailing_torque";

  /** The clamp load of the table: 0.75 of 0.85 of the proof stress that it has for a class. */
  private static final double CLAMP = 0.75 * 0.85;

  /** The stress under proof load of class 04, in MPa. */
  private static final double PROOF_04 = 380;

  private static final ThreadSize LARGE = ThreadSize.of("M20");

  private PrevailingChecks() {}

  static RowUse use(CSVRecord row) {
    String what = row.get("quantity");
    if (row.get("class").equals("04")) {
      return standard(row);
    }
    if (what.startsWith("clamp load")) {
      return RowUse.checked(row, Group.CLAMP, name(row), clamp(row).newtons());
    }
    if (what.startsWith("dry tightening")) {
      return RowUse.checked(row, Group.CLAMP, name(row), torque(row, 0.20));
    }
    if (what.startsWith("lubricated tightening")) {
      return RowUse.checked(row, Group.CLAMP, name(row), torque(row, 0.15));
    }
    if (what.startsWith("prevailing torque of the maker")) {
      return RowUse.left(row, "a maker's own locknut");
    }
    if (what.startsWith("prevailing torque, removal")) {
      return RowUse.left(
          row, "another edition or standard, a fifteenth lower than the table of ISO 2320");
    }
    return row.get("unit").equals("N.m")
        ? PrintedTwice.use(row, PrintedTwice.before(TABLE, row))
        : RowUse.input(row);
  }

  /** Class 8 at the proof stress of 8.8 above M16, class 10 at that of 10.9, for every thread. */
  private static Force clamp(CSVRecord row) {
    PropertyClass strength =
        row.get("class").equals("8") ? PropertyClass.C8_8 : PropertyClass.C10_9;
    double stress = strength.proofStress(LARGE).megapascals() * CLAMP;
    return new Stress(stress).on(thread(row).stressArea());
  }

  private static double torque(CSVRecord row, double k) {
    return ShortForm.torque(NutFactor.of(k), clamp(row), thread(row).diameter()).inNewtonMetres();
  }

  private static ThreadSize thread(CSVRecord row) {
    return Rows.thread(row.get("thread"), row.get("pitch_mm_or_tpi"));
  }

  private static String name(CSVRecord row) {
    return row.get("thread") + "x" + row.get("pitch_mm_or_tpi") + " class " + row.get("class");
  }

  /** The table of ISO 2320 that the program repeats for class 8, and its test clamp forces. */
  private static RowUse standard(CSVRecord row) {
    String what = row.get("quantity");
    if (what.startsWith("test clamp force F")) {
      double share = Double.parseDouble(what.substring(what.length() - 2)) / 100;
      Stress stress = new Stress(share * PROOF_04);
      return RowUse.checked(
          row,
          Group.NUT_STRESS,
          name(row) + what.substring(16),
          stress.on(thread(row).stressArea()).newtons());
    }
    Optional<PrevailingTorque> ours =
        ThreadCatalogue.find(row.get("thread"))
            .flatMap(thread -> PrevailingTorque.of(thread, NutClass.N8));
    return ours.map(o -> what.contains("first on") ? o.firstOn() : o.firstOff())
        .map(o -> RowUse.checked(row, Group.PREVAILING, what(row), o.inNewtonMetres()))
        .orElseGet(() -> RowUse.left(row, "a thread outside M5 to M24"));
  }

  private static String what(CSVRecord row) {
    return name(row) + " " + row.get("quantity").replace("prevailing torque, ", "");
  }
}
