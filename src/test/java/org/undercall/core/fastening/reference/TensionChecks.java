package org.undercall.core.fastening.reference;

import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.term.Torque;

/** Preloads of steel construction: 0.7 of the tensile strength, and by torque. */
final class TensionChecks {
  private static final double SHARE = 0.7;
  private static final ThreadSize LARGE = ThreadSize.of("M20");

  private TensionChecks() {}

  static RowUse use(CSVRecord row) {
    String what = row.get("what");
    if (what.startsWith("minimum pretension")) {
      PropertyClass like =
          row.get("class").equals("A325M") ? PropertyClass.C8_8 : PropertyClass.C10_9;
      return preload(row, like.tensileStrength(LARGE).megapascals());
    }
    if (what.startsWith("preload after the combined")) {
      return preload(row, 1000);
    }
    if (what.startsWith("torque coefficient")) {
      return coefficient(row);
    }
    return what.equals("preload Fp,C")
        ? RowUse.wrong(
            row,
            Group.PRETENSION,
            name(row),
            kilonewtons(row, 800),
            "printed for 8.8, that of 10.9")
        : RowUse.wrong(
            row, Group.PRETENSION, name(row), byTorque(row), "its K of 0.200 does not give it");
  }

  private static RowUse preload(CSVRecord row, double tensile) {
    return RowUse.checked(row, Group.PRETENSION, name(row), kilonewtons(row, tensile));
  }

  private static double kilonewtons(CSVRecord row, double tensile) {
    return new Stress(SHARE * tensile).on(thread(row).stressArea()).inKilonewtons();
  }

  /** The K of 1/1.1 of the torque and the preload that the row names. */
  private static RowUse coefficient(CSVRecord row) {
    double kilonewtons =
        Double.parseDouble(row.get("formula").replaceFirst(".*F ([0-9]+) kN", "$1"));
    double one =
        ShortForm.torque(NutFactor.of(1), Force.kilonewtons(kilonewtons), thread(row).diameter())
            .inNewtonMetres();
    double ours = Rows.number(row, "torque") / 1.1 / one;
    return RowUse.checked(row, Group.PRETENSION, name(row), ours);
  }

  private static double byTorque(CSVRecord row) {
    Torque torque = Torque.newtonMetres(row.get("torque"));
    return ShortForm.preload(NutFactor.of(0.200), torque, thread(row).diameter()).inKilonewtons();
  }

  /** The coarse thread; above M24 from its size. */
  private static ThreadSize thread(CSVRecord row) {
    String name = row.get("thread");
    return ThreadCatalogue.find(name)
        .orElseGet(
            () ->
                switch (name) {
                  case "M27" -> Rows.thread(name, "3");
                  case "M30" -> Rows.thread(name, "3.5");
                  case "M36" -> Rows.thread(name, "4");
                  default -> throw new IllegalStateException(name);
                });
  }

  private static String name(CSVRecord row) {
    return row.get("what") + " " + row.get("thread") + " " + row.get("class");
  }
}
