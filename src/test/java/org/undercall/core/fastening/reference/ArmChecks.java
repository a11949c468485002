package org.undercall.core.fastening.reference;

import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.MotionRatio;
import org.undercall.core.fastening.Range;

/** Arm angles from the points of a car, and a motion ratio. */
final class ArmChecks {
  private ArmChecks() {}

  static RowUse use(CSVRecord row) {
    return switch (row.get("id")) {
      case "24-22" ->
          RowUse.checked(
              row,
              Group.ARM,
              "damper for 105 mm of wheel",
              new MotionRatio(0.5098).ofJoint(Height.mm(105)).millimetres());
      case "24-33" -> angle(row, 494.3, -118);
      case "24-35" -> angle(row, 254.1, -5.5);
      default -> RowUse.input(row);
    };
  }

  /** The source has the points; the angle was worked out from them beforehand. */
  private static RowUse angle(CSVRecord row, double arm, double height) {
    Height now = Height.mm(height);
    double ours =
        new ArmSwing(Length.mm(arm), now, new Range<>(now, Height.mm(0))).angleAt(now).degrees();
    String what = row.get("id") + " " + row.get("quantity").replaceFirst(" in the.*", "");
    double published = Rows.number(row, "value");
    return RowUse.checked(row, Check.of(Group.ARM, what, published, ours, Rows.computed(row)));
  }
}
