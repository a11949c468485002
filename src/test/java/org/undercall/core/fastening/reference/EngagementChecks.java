package org.undercall.core.fastening.reference;

import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Engagement;
import org.undercall.core.fastening.Engagement.Strength;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadSize;

/** Stripping of threads: areas, factors, shear ratios, and the lengths that makers recommend. */
final class EngagementChecks {
  private static final ThreadSize M10 = ThreadSize.of("M10");
  private static final Length TEN = Length.mm(10);

  private EngagementChecks() {}

  static RowUse factor(CSVRecord row) {
    String what = row.get("quantity");
    int number = Integer.parseInt(row.get("id").substring("11d-".length()));
    if (number <= 5) {
      double ratio = 1 + 0.3 * (number - 1);
      return curve(row, "C2 at RS " + ratio, polynomial(1, 5, ratio), boltBending(ratio));
    }
    if (number <= 9) {
      double ratio = 0.4 + 0.2 * (number - 6);
      return curve(row, "C3 at RS " + ratio, polynomial(6, 9, ratio), innerBending(ratio));
    }
    return switch (number) {
      case 10, 11 -> RowUse.checked(row, Group.STRIPPING, what, boltBending(2));
      case 12 -> RowUse.checked(row, Group.STRIPPING, what, innerBending(0.4));
      case 13 -> RowUse.checked(row, Group.STRIPPING, what, widening(19));
      default -> shear(row, number);
    };
  }

  private static RowUse shear(CSVRecord row, int number) {
    return switch (number) {
      case 15, 24 -> shear(row, PropertyClass.C10_9);
      case 23 -> shear(row, PropertyClass.C8_8);
      case 25 -> shear(row, PropertyClass.C12_9);
      case 26 -> shear(row, PropertyClass.C5_6);
      default ->
          RowUse.left(row, "a shear ratio of a part, for which the program has one lower value");
    };
  }

  private static RowUse shear(CSVRecord row, PropertyClass bolt) {
    double ours = Strength.of(bolt, M10).shearRatio();
    return RowUse.checked(row, Group.STRIPPING, row.get("quantity"), ours);
  }

  private static RowUse curve(CSVRecord row, String what, double read, double ours) {
    String name = row.get("id") + " " + what;
    return RowUse.checked(row, Check.of(Group.STRIPPING, name, read, ours, Rows.citation(row)));
  }

  /** The polynomial whose coefficients are the rows from one number to another. */
  private static double polynomial(int from, int to, double ratio) {
    return IntStream.rangeClosed(from, to)
        .mapToDouble(i -> coefficient("11d-" + i) * Math.pow(ratio, i - from))
        .sum();
  }

  private static double coefficient(String id) {
    return Rows.of("11d_strength_ratio_factors").stream()
        .filter(r -> r.get("id").equals(id))
        .mapToDouble(r -> Rows.number(r, "value"))
        .findFirst()
        .orElseThrow();
  }

  /** An M10 of ten millimetres whose inner thread is so many times as strong as the bolt's. */
  private static Engagement ofRatio(double ratio) {
    Engagement equal = with(1000, Optional.empty());
    return with(1000 * ratio / equal.strengthRatio(), Optional.empty());
  }

  private static Engagement with(double inner, Optional<Length> flats) {
    Strength bolt = new Strength(new Stress(1000), 0.6);
    return new Engagement(M10, TEN, bolt, new Strength(new Stress(inner), 0.6), flats);
  }

  private static double boltBending(double ratio) {
    Engagement ours = ofRatio(ratio);
    return ours.boltStrips().newtons() / (600 * ours.boltArea().squareMillimetres());
  }

  private static double innerBending(double ratio) {
    Engagement ours = ofRatio(ratio);
    double shear = ours.inner().tensile().megapascals() * ours.inner().shearRatio();
    return ours.innerStrips().newtons() / (shear * ours.innerArea().squareMillimetres());
  }

  private static double widening(double flats) {
    Engagement nut = with(1000, Optional.of(Length.mm(flats)));
    return nut.boltStrips().newtons() / with(1000, Optional.empty()).boltStrips().newtons();
  }

  /** What a maker recommends for M6 to M16, next to ours for M10. */
  static RowUse recommended(CSVRecord row) {
    if (row.get("quantity").contains("bracketed")) {
      return RowUse.left(row, "a bracketed second value whose footnote was not read");
    }
    String thread = row.get("thread_series").equals("fine") ? "M10x1.25" : "M10";
    Bolt bolt = Bolt.hexagon(thread, row.get("bolt_class"));
    double tensile = Rows.number(row, "Rm_min_MPa");
    Strength part =
        row.get("material").startsWith("Al")
            ? Strength.aluminium(tensile)
            : Strength.steel(tensile);
    double ours = Engagement.tapped(bolt, TEN, part).needed().millimetres() / 10;
    String what = row.get("material") + " " + row.get("bolt_class") + " " + thread;
    return RowUse.checked(row, Group.ENGAGEMENT, what, ours);
  }

  static RowUse example(CSVRecord row) {
    return switch (row.get("id")) {
      case "11e-8" -> result(row, new Stress(1200).on(new Area(58)).newtons());
      case "11e-9" -> RowUse.left(row, "tolerances of a thread that the program does not have");
      case "11e-16" -> result(row, M10.stressArea().squareMillimetres());
      case "11e-17" -> result(row, page().boltBreaks().newtons());
      case "11e-18" -> result(row, inner());
      case "11e-19" -> result(row, 0.6 * 830 * page().boltArea().squareMillimetres());
      case "11e-20" -> result(row, page().boltBreaks().newtons() / inner() * 10);
      case "11e-21" ->
          result(
              row,
              page().boltBreaks().newtons()
                  / (0.6 * 830 * page().boltArea().squareMillimetres())
                  * 10);
      case "11e-22" -> result(row, 10 / M10.pitch().millimetres());
      case "11e-33" ->
          result(row, (10 - M10.minorDiameter().millimetres()) / M10.pitch().millimetres());
      case "11e-34" ->
          result(row, (10 - M10.pitchDiameter().millimetres()) / M10.pitch().millimetres());
      default -> RowUse.input(row);
    };
  }

  private static RowUse result(CSVRecord row, double ours) {
    return RowUse.checked(
        row, Group.EXAMPLES, row.get("example") + " " + row.get("quantity"), ours);
  }

  /** M10 in aluminium over ten millimetres, longer by the 0.8 P that we leave for the chamfers. */
  private static Engagement page() {
    Strength bolt = new Strength(new Stress(830), 0.6);
    Strength hole = new Strength(new Stress(310), 0.6);
    return new Engagement(M10, Length.mm(10 + 0.8 * 1.5), bolt, hole, Optional.empty());
  }

  private static double inner() {
    return 0.6 * 310 * page().innerArea().squareMillimetres();
  }
}
