package org.undercall.core.fastening.reference;

import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ThreadSize;

/**
 * A published value that is known to be wrong: ours must differ from it as stated.
 *
 * @param stated how far the published value lies off, in percent
 */
record KnownBad(String what, double published, double ours, double stated, String source) {
  private static final Map<String, DoubleSupplier> LOADS =
      Map.of(
          "Fm,min M4 10.9 N", () -> load(PropertyClass.C10_9, "M4"),
          "Fm,min M12 9.8 N", () -> load(PropertyClass.C9_8, "M12"),
          "Fm,min M20 10.9 N", () -> load(PropertyClass.C10_9, "M20"));

  /** The wrong numbers; the three rows that are wrong in words have tests of their own. */
  static Stream<KnownBad> numbers() {
    return Rows.of("00_known_bad_published_values").stream()
        .filter(row -> !row.get("dev_pct").isEmpty())
        .map(KnownBad::of);
  }

  private static KnownBad of(CSVRecord row) {
    String what = row.get("item");
    double ours =
        what.startsWith("As ")
            ? ThreadSize.of(what.substring(3)).stressArea().squareMillimetres()
            : LOADS.get(what).getAsDouble();
    return new KnownBad(
        what,
        Rows.number(row, "published_value"),
        ours,
        Rows.number(row, "dev_pct"),
        row.get("source"));
  }

  private static double load(PropertyClass strength, String thread) {
    return strength.ultimateLoad(ThreadSize.of(thread)).newtons();
  }

  double deviation() {
    return (published - ours) / ours * 100;
  }

  String name() {
    return what + " is not " + published + " [" + source + "]";
  }
}
