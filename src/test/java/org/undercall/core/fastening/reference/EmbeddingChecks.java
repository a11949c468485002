package org.undercall.core.fastening.reference;

import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Embedding;
import org.undercall.core.fastening.Embedding.Load;
import org.undercall.core.fastening.Embedding.Roughness;
import org.undercall.core.fastening.JointStiffness;

/** Embedding by roughness and load. */
final class EmbeddingChecks {
  /** The spring calculator's example: 200 and 300 N/mm in series. */
  private static final JointStiffness SOFT =
      new JointStiffness(new Compliance(1 / 200.0), new Compliance(1 / 300.0));

  private EmbeddingChecks() {}

  static RowUse use(CSVRecord row) {
    String what = row.get("quantity") + " Rz " + row.get("Rz_below_um") + " " + row.get("load");
    return switch (row.get("id")) {
      case "13-9" ->
          RowUse.wrong(
              row, Group.EMBEDDING, what, ours(row), "a second reading has 3 and a sum of 10");
      case "13-23" -> RowUse.input(row);
      case "13-24" -> RowUse.checked(row, Group.EXAMPLES, row.get("quantity"), 1 / together());
      case "13-25" ->
          RowUse.checked(
              row, Group.EXAMPLES, "embedding loss", new Embedding(20).loss(SOFT).newtons());
      default -> RowUse.checked(row, Group.EMBEDDING, what, ours(row));
    };
  }

  private static double together() {
    return SOFT.bolt().plus(SOFT.parts()).millimetresPerNewton();
  }

  private static double ours(CSVRecord row) {
    Roughness roughness =
        switch (row.get("Rz_below_um")) {
          case "10" -> Roughness.FINE;
          case "40" -> Roughness.MEDIUM;
          default -> Roughness.ROUGH;
        };
    Load load = row.get("load").equals("tension") ? Load.AXIAL : Load.SHEAR;
    String what = row.get("quantity");
    if (what.startsWith("sum")) {
      return of(roughness, load, row.get("nut").equals("yes") ? 2 : 1, 1);
    }
    double bearing = of(roughness, load, 2, 0) - of(roughness, load, 1, 0);
    if (what.startsWith("embedding per head") || what.startsWith("further")) {
      return bearing;
    }
    return what.startsWith("embedding per inner")
        ? of(roughness, load, 1, 1) - of(roughness, load, 1, 0)
        : of(roughness, load, 1, 0) - bearing;
  }

  private static double of(Roughness roughness, Load load, int bearings, int interfaces) {
    return Embedding.of(roughness, load, bearings, interfaces).micrometres();
  }
}
