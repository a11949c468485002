package org.undercall.core.fastening.reference;

import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.PrevailingTorque;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.term.Torque;

/** Self-locking nuts: what prevails, and a maker's table of clamp loads and torques by K. */
final class PrevailingChecks {
  static final String TABLE = "17_prevailing_torque";

  /** The clamp load of the table: 0.75 of 0.85 of the proof stress that it has for a class. */
  private static final double CLAMP = 0.75 * 0.85;

  private static final ThreadSize LARGE = ThreadSize.of("M20");

  private PrevailingChecks() {}

  static RowUse use(CSVRecord row) {
    String what = row.get("quantity");
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
      return RowUse.left(row, "a second table of ISO 2320, a fifteenth lower than the first");
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

  /** The table of ISO 2320 that the program repeats. */
  static RowUse standard(CSVRecord row) {
    PrevailingTorque ours =
        PrevailingTorque.of(ThreadSize.of(row.get("thread")), NutClass.N8).orElseThrow();
    Torque torque = row.get("kind").startsWith("largest") ? ours.firstOn() : ours.firstOff();
    String what = row.get("id") + " " + row.get("thread") + " " + row.get("kind");
    return RowUse.checked(
        row,
        Check.of(
            Group.PREVAILING,
            what,
            Rows.number(row, "limit"),
            torque.inNewtonMetres(),
            Rows.citation(row)));
  }
}
