package org.undercall.core.fastening.reference;

import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.CombinedStress;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.TighteningMethod;
import org.undercall.core.fastening.TorqueLaw;
import org.undercall.core.fastening.Torsion;
import org.undercall.core.term.Torque;

/** The published joint exercise 4-1: M12 10.9, clamped length 42 mm, plates 80 mm wide. */
final class PublishedJoint {
  private static final Elasticity STEEL = Elasticity.ofMegapascals(210_000);
  private static final Seat SEAT = Seat.of(21.11, 13.5);
  private static final Bolt BOLT = Bolt.hexagon("M12", "10.9").with(SEAT);
  private static final BoltBody BODY =
      new BoltBody(
          BOLT.thread(), Length.mm(20.5), Length.mm(21.5), BoltBody.Ends.SOCKET_AND_TAPPED_HOLE);
  private static final PressureCone CONE =
      new PressureCone(SEAT, BODY.clamped(), Length.mm(80), PressureCone.Kind.THROUGH_BOLT);

  private PublishedJoint() {}

  static double value(String what) {
    JointStiffness joint = JointStiffness.of(BODY, CONE, STEEL);
    return switch (what.split(" ", 2)[0]) {
      case "delta_S" -> joint.bolt().millimetresPerNewton() * 1e6;
      case "tan" -> CONE.coneTangent();
      case "D_A,Gr" -> CONE.coneLimit().millimetres();
      case "delta_P" -> joint.parts().millimetresPerNewton() * 1e6;
      case "Phi_K" -> joint.forceRatio();
      case "MG" -> threadTorque().inNewtonMetres();
      case "Wp" -> sectionModulus();
      case "sigma_red,B" -> service().reduced().megapascals();
      case "FMmax" -> 27600 / TighteningMethod.leastPreload(new Force(1), 1.7).newtons();
      default -> throw new IllegalStateException("no computation for the row " + what);
    };
  }

  private static Torque threadTorque() {
    LongForm form = new LongForm(BOLT, TorqueLaw.ISO_16047);
    return form.threadTorque(Force.kilonewtons(61), Friction.of(0.10));
  }

  /** The modulus that our shear stress implies. */
  private static double sectionModulus() {
    CombinedStress stress =
        CombinedStress.tightening(
            BOLT.thread(), Force.kilonewtons(61), threadTorque(), Torsion.ELASTIC);
    return threadTorque().inNewtonMetres() * 1000 / stress.shear().megapascals();
  }

  private static CombinedStress service() {
    return CombinedStress.inService(
        BOLT.thread(), new Stress(733), threadTorque(), Torsion.ELASTIC);
  }
}
