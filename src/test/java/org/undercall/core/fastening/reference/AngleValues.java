package org.undercall.core.fastening.reference;

import java.util.Optional;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Torsion;
import org.undercall.core.fastening.Utilisation;

/** Our values for one computed example of an angle stage, by the name of the row. */
record AngleValues(AngleJob job, JointStiffness joint, AngleOutcome.Expected expected) {
  private static final Friction MU = Friction.of(0.12);

  static AngleValues of(AngleJob job) {
    AngleOutcome outcome = AngleTightening.expect(job, Optional.of(new Range<>(MU, MU)));
    return new AngleValues(job, job.joint().orElseThrow(), (AngleOutcome.Expected) outcome);
  }

  /** Ours; empty for the numbers that go on elastically above yield, which we do not give. */
  Optional<Double> value(String what) {
    if (what.equals("elastic total") || what.equals("utilisation")) {
      return belowYield().map(total -> what.equals("utilisation") ? total / yieldPreload() : total);
    }
    return Optional.of(stiffness(what));
  }

  private Optional<Double> belowYield() {
    boolean below = expected.reach() == AngleOutcome.Reach.BELOW_YIELD;
    return below ? Optional.of(expected.preload().low().inKilonewtons()) : Optional.empty();
  }

  private double stiffness(String what) {
    return switch (what) {
      case "delta_P" -> joint.parts().millimetresPerNewton() * 1e6;
      case "bolt stiffness kS" -> 1e-3 / joint.bolt().millimetresPerNewton();
      case "gain per degree" -> gain(1);
      case "elastic gain" -> gain(job.turn().degrees());
      case "angle to reach yield preload" -> expected.angleToYield().low().degrees();
      case "bolt elongation at predicted preload" ->
          joint.bolt().under(preload()).millimetres() * 1000;
      default ->
          what.endsWith("delta_S") ? joint.bolt().millimetresPerNewton() * 1e6 : preloads(what);
    };
  }

  private double preloads(String what) {
    return switch (what) {
      case "snug preload" -> expected.afterTorque().low().inKilonewtons();
      case "yield preload incl. torsion (VDI nu=1, factor 3/2)" -> yieldPreload();
      case "first-yield preload incl. torsion (elastic Wp, factor 2)" ->
          new Assembly(job.bolt(), Utilisation.YIELD, Torsion.ELASTIC).preload(MU).inKilonewtons();
      case "proof load (no torsion)" ->
          job.bolt().strength().proofLoad(job.bolt().thread()).inKilonewtons();
      case "predicted preload" -> preload().inKilonewtons();
      case "elastic torque at predicted preload" ->
          LongForm.of(job.bolt()).torque(preload(), MU, MU).inNewtonMetres();
      default -> throw new IllegalStateException("no computation for the row " + what);
    };
  }

  private double yieldPreload() {
    return expected.yieldPreload().low().inKilonewtons();
  }

  private Force preload() {
    return expected.preload().low();
  }

  private double gain(double degrees) {
    return joint.gain(job.bolt().thread(), Rotation.degrees(degrees)).inKilonewtons();
  }
}
