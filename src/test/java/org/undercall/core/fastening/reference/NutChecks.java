package org.undercall.core.fastening.reference;

import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;

/** The proof loads of nuts. */
final class NutChecks {
  static final String TABLE = "11a_nut_proof_loads";
  private static final double STYLES_UP_TO = 16;

  private NutChecks() {}

  static RowUse use(CSVRecord row) {
    return switch (row.get("standard")) {
      case "ISO 10684" -> oversize(row);
      case "DIN 267-4" -> nominal(row);
      default -> proofLoad(row);
    };
  }

  private static RowUse proofLoad(CSVRecord row) {
    Optional<NutClass> strength = NutClass.of(row.get("property_class"));
    if (strength.isEmpty()) {
      return RowUse.left(row, "a class of nut that the program does not have (4)");
    }
    Optional<ThreadSize> thread = ThreadCatalogue.find(row.get("thread"));
    if (thread.isEmpty() || !row.get("thread").equals(thread.get().toString())) {
      return RowUse.left(row, "a thread outside M4 to M24");
    }
    if (secondStyle(row, thread.get())) {
      return RowUse.left(row, "a nut of style 2, where the program takes the load of style 1");
    }
    Force ours = strength.get().proofLoad(thread.get()).orElseThrow();
    return RowUse.checked(row, Group.NUT_PROOF, what(row), ours.newtons());
  }

  /** Up to M16 class 12 has both styles, above it class 8 has. */
  private static boolean secondStyle(CSVRecord row, ThreadSize thread) {
    boolean small = thread.diameter().millimetres() <= STYLES_UP_TO;
    boolean both = row.get("property_class").equals(small ? "12" : "8");
    String style = row.get("nut_style");
    boolean second = style.equals("type 2") || (small && style.equals("as tabulated"));
    return both && second;
  }

  /** A hundred megapascals for each number of the class. */
  private static RowUse nominal(CSVRecord row) {
    Stress stress = new Stress(100 * Rows.number(row, "property_class"));
    return RowUse.checked(
        row, Group.NUT_STRESS, what(row), stress.on(thread(row).stressArea()).newtons());
  }

  private static RowUse oversize(CSVRecord row) {
    if (row.get("unit").equals("N")) {
      return RowUse.input(row);
    }
    Force load =
        Rows.of(TABLE).stream()
            .filter(r -> r.get("standard").equals("ISO 10684") && r.get("unit").equals("N"))
            .filter(r -> r.get("thread").equals(row.get("thread")))
            .filter(r -> r.get("property_class").equals(row.get("property_class")))
            .map(r -> new Force(Rows.number(r, "value")))
            .findFirst()
            .orElseThrow();
    double ours = thread(row).stressArea().under(load).megapascals();
    boolean misprint = row.get("id").equals("11-237");
    return misprint
        ? RowUse.wrong(row, Group.NUT_STRESS, what(row), ours, "load and stress disagree")
        : RowUse.checked(row, Group.NUT_STRESS, what(row), ours);
  }

  private static ThreadSize thread(CSVRecord row) {
    return Rows.thread(row.get("thread"), row.get("P_mm"));
  }

  private static String what(CSVRecord row) {
    return row.get("thread") + " class " + row.get("property_class");
  }
}
