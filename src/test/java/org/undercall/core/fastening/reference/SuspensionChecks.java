package org.undercall.core.fastening.reference;

import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.BondedBush;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Stress;

/** Arm rotation, preset twist and bush torsion. */
final class SuspensionChecks {
  private SuspensionChecks() {}

  static Stream<Check> all() {
    return Stream.of(arms(), bushes()).flatMap(Function.identity());
  }

  private static Stream<Check> arms() {
    return Rows.of("08a_arm_rotation_examples").stream().flatMap(SuspensionChecks::arm);
  }

  private static Stream<Check> arm(CSVRecord row) {
    Height ride = Height.mm(Rows.number(row, "h_ride_mm"));
    Height droop = Height.mm(Rows.number(row, "h_droop_mm"));
    Height bump = Height.mm(Rows.number(row, "h_bump_mm"));
    ArmSwing arm =
        new ArmSwing(Length.mm(Rows.number(row, "r_mm")), ride, new Range<>(droop, bump));
    ArmSwing.Twist right = arm.tightenedAt(ride);
    ArmSwing.Twist wrong = arm.tightenedAt(droop);
    return Stream.of(
        armCheck(row, "theta_ride_deg", arm.angleAt(ride).degrees()),
        armCheck(row, "theta_droop_deg", arm.angleAt(droop).degrees()),
        armCheck(row, "theta_bump_deg", arm.angleAt(bump).degrees()),
        armCheck(row, "preset_twist_if_tightened_at_droop_deg", wrong.atRide().degrees()),
        armCheck(row, "bump_twist_correct_deg", right.atBump().degrees()),
        armCheck(row, "bump_twist_if_tightened_at_droop_deg", wrong.worst().degrees()),
        armCheck(row, "max_twist_if_correct_deg", right.worst().degrees()),
        armCheck(row, "sensitivity_deg_per_mm_at_ride", arm.perMillimetreAtRide().degrees()),
        armCheck(row, "twist_for_10mm_height_error_deg", arm.perMillimetreAtRide().degrees() * 10),
        armCheck(row, "lateral_shift_of_joint_mm", arm.lateralShift().millimetres()));
  }

  private static Check armCheck(CSVRecord row, String column, double ours) {
    String what = row.get("id") + " " + column;
    return Check.of(Group.ARM, what, Rows.number(row, column), ours, Rows.computed(row));
  }

  private static Stream<Check> bushes() {
    return Rows.of("08b_bush_torsion_examples").stream().flatMap(SuspensionChecks::bush);
  }

  private static Stream<Check> bush(CSVRecord row) {
    BondedBush bush =
        new BondedBush(
            Length.mm(Rows.number(row, "r_inner_mm")),
            Length.mm(Rows.number(row, "r_outer_mm")),
            Length.mm(Rows.number(row, "length_mm")),
            new Stress(Rows.number(row, "G_MPa")));
    Rotation twist = Rotation.degrees(Rows.number(row, "twist_deg"));
    return Stream.of(
        bushCheck(row, "k_Nm_per_rad", bush.perRadian().newtonMetres()),
        bushCheck(row, "k_Nm_per_deg", bush.perDegree().newtonMetres()),
        bushCheck(row, "moment_Nm", bush.moment(twist).newtonMetres()),
        bushCheck(row, "shear_strain_inner", bush.strainInside(twist)),
        bushCheck(row, "shear_strain_outer", bush.strainOutside(twist)));
  }

  private static Check bushCheck(CSVRecord row, String column, double ours) {
    String what = row.get("id") + " " + row.get("twist_deg") + "° " + column;
    return Check.of(Group.BUSH, what, Rows.number(row, column), ours, Rows.computed(row));
  }
}
