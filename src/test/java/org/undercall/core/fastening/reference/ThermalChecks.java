package org.undercall.core.fastening.reference;

import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Expansion;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadSize;

/** Thermal expansion, elongation, strengths and waist areas. */
final class ThermalChecks {
  private static final double PER_FAHRENHEIT = 1.8;

  private ThermalChecks() {}

  static RowUse use(CSVRecord row) {
    return switch (row.get("quantity")) {
      case "thermal expansion" -> expansion(row);
      case "thermal preload change" ->
          RowUse.checked(row, Group.EXAMPLES, subject(row), inPlates());
      case "thermal preload change from stiffness" ->
          RowUse.checked(row, Group.EXAMPLES, subject(row), inFittings());
      case "elongation after fracture A min" -> elongation(row);
      case "waist area" -> waist(row);
      default -> strength(row);
    };
  }

  private static String subject(CSVRecord row) {
    return row.get("quantity") + ", " + row.get("subject");
  }

  private static RowUse expansion(CSVRecord row) {
    String subject = row.get("subject");
    if (row.get("unit").equals("1e-6/degF")) {
      return subject.equals("cast iron")
          ? checked(row, Expansion.GREY_IRON.perKelvin() / PER_FAHRENHEIT)
          : RowUse.left(row, "called steel, with the expansion of an austenitic one");
    }
    if (subject.startsWith("titanium")) {
      return RowUse.left(row, "a material that the program does not have");
    }
    if (subject.startsWith("steel")) {
      return checked(row, Expansion.STEEL.perKelvin());
    }
    return subject.toLowerCase(Locale.ROOT).startsWith("al")
        ? checked(row, Expansion.ALUMINIUM.perKelvin())
        : checked(row, Expansion.AUSTENITIC_STEEL.perKelvin());
  }

  private static RowUse checked(CSVRecord row, double perKelvin) {
    return RowUse.checked(row, Group.EXPANSION, row.get("subject"), perKelvin * 1e6);
  }

  private static double inPlates() {
    JointStiffness springs = new JointStiffness(new Compliance(2.76e-6), new Compliance(1.166e-6));
    return new Expansion(11.5e-6)
        .change(springs, Length.mm(26), new Expansion(23e-6), -60)
        .newtons();
  }

  /** In pounds. */
  private static double inFittings() {
    double perInch = Scale.of("lbf/in");
    JointStiffness springs =
        new JointStiffness(
            new Compliance(1 / (2.3892e6 * perInch)), new Compliance(1 / (4.7352e6 * perInch)));
    return new Expansion(16.9e-6)
            .change(springs, Length.inches(0.80), new Expansion(23.2e-6), 50)
            .newtons()
        / Scale.of("lbf");
  }

  private static RowUse elongation(CSVRecord row) {
    PropertyClass strength = StrengthChecks.strength(row.get("subject"));
    return strength
        .elongationPercent()
        .map(ours -> RowUse.checked(row, Group.CLASSES, row.get("subject") + " A", ours))
        .orElseGet(() -> RowUse.left(row, "an elongation that the edition of 2013 does not give"));
  }

  private static RowUse strength(CSVRecord row) {
    String subject = row.get("subject");
    ThreadSize thread = ThreadSize.of(subject.contains("M16-M72") ? "M20" : "M12");
    PropertyClass strength = StrengthChecks.strength(subject.replaceFirst(" .*", ""));
    Stress ours =
        switch (row.get("quantity")) {
          case "tensile strength min" -> strength.tensileStrength(thread);
          case "yield strength min" -> strength.yieldStrength(thread);
          case "proof stress" -> strength.proofStress(thread);
          default -> throw new IllegalStateException(row.get("quantity"));
        };
    String what = subject + " " + row.get("quantity");
    return RowUse.checked(row, Group.CLASSES, what, ours.megapascals());
  }

  private static RowUse waist(CSVRecord row) {
    String pitch = row.get("inputs").replaceFirst("P ([0-9.]+) mm.*", "$1");
    Length waist = Rows.thread(row.get("subject"), pitch).rootDiameter().times(0.9);
    double ours = Area.ofCircle(waist).squareMillimetres();
    return RowUse.checked(row, Group.WAIST, row.get("subject"), ours);
  }
}
