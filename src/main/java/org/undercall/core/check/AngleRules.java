package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleOutcome.Reach;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.Torque;

/** Rules about angle stages. */
final class AngleRules {
  /** The clamped length of the long joint assumed, in diameters. */
  private static final double LONG = 6;

  /** The width of its plates, in bearing diameters. */
  private static final double WIDE = 2;

  private AngleRules() {}

  static List<Finding> check(Spot spot) {
    List<Finding> findings = new ArrayList<>();
    for (Staged<AngleStage> stage : Staged.angles(spot)) {
      if (!stage.fastener().part().oneTimeUse()) {
        String expected = "\"oneTimeUse\": true, or no angle stage";
        String found = stage.stage().target() + " on a fastener to be used again";
        findings.add(spot.at(stage.field("angle"), CheckRule.ANGLE_REUSED, found, expected));
      }
      if (stage.last()) {
        nearYield(spot, stage).ifPresent(findings::add);
      }
    }
    findings.addAll(endsBackedOff(spot));
    return findings;
  }

  private static List<Finding> endsBackedOff(Spot spot) {
    List<Finding> findings = new ArrayList<>();
    List<Variant> variants = spot.fastener().map(Fastener::variants).orElse(List.of());
    for (int v = 0; v < variants.size(); v++) {
      int last = variants.get(v).stages().size() - 1;
      if (variants.get(v).stages().get(last) instanceof AngleStage angle && angle.backOff()) {
        String path = "fastener/variants/" + v + "/stages/" + last + "/backOff";
        String expected = "a torque after it";
        findings.add(
            spot.at(path, CheckRule.ENDS_BACKED_OFF, "a back-off as the last stage", expected));
      }
    }
    return findings;
  }

  private static Optional<Finding> nearYield(Spot spot, Staged<AngleStage> stage) {
    Optional<PropertyClass> strength =
        stage.variant().marking().flatMap(PropertyClass::of).filter(AngleRules::soft);
    return strength
        .flatMap(s -> Bolts.of(stage.fastener(), stage.variant(), s))
        .filter(bolt -> reachesYield(bolt, stage))
        .map(
            bolt ->
                spot.at(
                    stage.field("angle"),
                    CheckRule.NEAR_YIELD,
                    stage.stage().target() + " on " + bolt,
                    "to be meant: " + bolt + " may reach yield even when 6 diameters are clamped"));
  }

  private static boolean soft(PropertyClass strength) {
    return strength.compareTo(PropertyClass.C8_8) <= 0;
  }

  private static boolean reachesYield(Bolt bolt, Staged<AngleStage> stage) {
    double turn =
        stage.variant().stages().stream()
            .filter(s -> s instanceof AngleStage angle && !angle.backOff())
            .mapToDouble(s -> s.amount().doubleValue())
            .sum();
    AngleJob job = AngleJob.of(bolt, snug(stage), Rotation.degrees(turn), longJoint(bolt));
    return AngleTightening.expect(job, FrictionClass.expect(stage.fastener().part().lubrication()))
            instanceof Expected expected
        && expected.reach() != Reach.BELOW_YIELD;
  }

  private static Torque snug(Staged<AngleStage> stage) {
    Torque snug = ((TorqueStage) stage.variant().stages().get(0)).target();
    for (var each : stage.variant().stages()) {
      snug = each instanceof TorqueStage torque ? torque.target() : snug;
    }
    return snug;
  }

  private static JointStiffness longJoint(Bolt bolt) {
    Length diameter = bolt.thread().diameter();
    Length clamped = diameter.times(LONG);
    BoltBody body =
        new BoltBody(
            bolt.thread(), clamped.times(0.5), clamped.times(0.5), BoltBody.Ends.HEXAGON_AND_NUT);
    PressureCone plates =
        new PressureCone(
            bolt.seat(),
            clamped,
            bolt.seat().bearing().times(WIDE),
            PressureCone.Kind.THROUGH_BOLT);
    return JointStiffness.of(body, plates, Elasticity.STEEL);
  }
}
