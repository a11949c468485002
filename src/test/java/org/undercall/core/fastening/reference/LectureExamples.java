package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Function;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.CombinedStress;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Embedding;
import org.undercall.core.fastening.Expansion;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadMechanics;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.fastening.TighteningMethod;
import org.undercall.core.fastening.TorqueLaw;
import org.undercall.core.fastening.Torsion;
import org.undercall.core.term.Torque;

/** The worked examples A to C of the table: springs, torque and stress of lecture notes. */
final class LectureExamples {
  static final Map<String, Function<Given, Results>> ALL =
      Map.ofEntries(
          entry("A1", LectureExamples::steelInAluminium),
          entry("A2", LectureExamples::steelInSteel),
          entry("A3", LectureExamples::waisted),
          entry("A4", LectureExamples::sized),
          entry("B1", LectureExamples::torqueOfPreload),
          entry("B2", LectureExamples::preloadOfTorque),
          entry("B3", LectureExamples::torqueForPreload),
          entry("B4", LectureExamples::lockingNut),
          entry("C1", g -> stressed(g, "M10")),
          entry("C2", LectureExamples::stressedThin));

  private static final Friction NONE = Friction.of(1e-12);
  private static final ThreadSize M10 = ThreadSize.of("M10");

  private LectureExamples() {}

  private static Results steelInAluminium(Given g) {
    Elasticity steel = g.elasticity("E_S");
    BoltBody body =
        new BoltBody(M10, g.length("l_shank"), g.length("l_thread"), BoltBody.Ends.HEXAGON_AND_NUT);
    Compliance plates = g.elasticity("E_P").bar(g.length("L_K"), new Area(g.printed("A_ers")));
    JointStiffness springs = new JointStiffness(body.compliance(steel), plates);
    Area nominal = Area.ofCircle(M10.diameter());
    Area core = Area.ofCircle(M10.rootDiameter());
    Force loss = Embedding.of(Embedding.Roughness.FINE, Embedding.Load.AXIAL, 2, 1).loss(springs);
    double heat =
        new Expansion(g.at("alpha_S"))
            .change(springs, g.length("L_K"), new Expansion(g.at("alpha_P")), g.at("dT"))
            .newtons();
    return loaded(g, springs)
        .with("delta_SK", bar(steel, 5, nominal))
        .with("delta_1", bar(steel, g.at("l_shank"), nominal))
        .with("delta_Gew", bar(steel, g.at("l_thread"), core))
        .with("delta_G", bar(steel, 5, core))
        .with("delta_M", bar(steel, 4, nominal))
        .with("delta_S", springs.bolt().millimetresPerNewton())
        .with("f_Z", 0.0095)
        .with("F_Z", loss.newtons())
        .with("dF_V", heat);
  }

  /** What a working load does to a joint. */
  private static Results loaded(Given g, JointStiffness springs) {
    double phi = springs.forceRatio();
    double load = g.at("F_A");
    double preload = g.at("F_V");
    Force half = new Force(phi * load / 2);
    return new Results()
        .with("delta_P", springs.parts().millimetresPerNewton())
        .with("Phi", phi)
        .with("F_SA", phi * load)
        .with("F_S", preload + phi * load)
        .with("F_PA", (1 - phi) * load)
        .with("F_KR", preload - (1 - phi) * load)
        .with("F_A_abh", preload / (1 - phi))
        .with("F_SAa", half.newtons())
        .with("sigma_a", M10.stressArea().under(half).megapascals());
  }

  private static double bar(Elasticity material, double length, Area area) {
    return material.bar(Length.mm(length), area).millimetresPerNewton();
  }

  private static Results steelInSteel(Given g) {
    Compliance plates = g.elasticity("E_P").bar(g.length("L_K"), g.area("A_ers"));
    return loaded(g, new JointStiffness(new Compliance(g.at("delta_S")), plates));
  }

  private static Results waisted(Given g) {
    Area waist = Area.ofCircle(g.length("d_T"));
    double shank = bar(g.elasticity("E_S"), g.at("l"), waist);
    double bolt = g.at("delta_S0") - g.at("delta_10") + shank;
    JointStiffness springs =
        new JointStiffness(new Compliance(bolt), new Compliance(g.at("delta_P")));
    return new Results()
        .with("A", waist.squareMillimetres())
        .with("delta_1", shank)
        .with("delta_S", bolt)
        .with("Phi", springs.forceRatio());
  }

  private static Results sized(Given g) {
    double least = g.at("F_V") + g.at("F_Z") + g.at("dF_th");
    double one = TighteningMethod.leastPreload(new Force(1), g.at("alpha_A")).newtons();
    Force most = new Force(least / one);
    return new Results()
        .with("F_Mmin", least)
        .with("F_Mmax", most.newtons())
        .with("sigma", M10.stressArea().under(most).megapascals());
  }

  private static Results torqueOfPreload(Given g) {
    Bolt bolt = bolt("M10", g.seat("d_w", "d_h"));
    Force preload = g.force("F_V");
    double whole = torque(bolt, preload, g.friction("mu"), g.friction("mu_A"));
    double thread = torque(bolt, preload, g.friction("mu"), NONE);
    LongForm exact = new LongForm(bolt, TorqueLaw.ISO_16047);
    return angles(bolt.thread(), "rho1", g.friction("mu"))
        .with("d_A", bolt.seat().meanDiameter().millimetres())
        .with("M_t", thread)
        .with("M_A", whole - thread)
        .with("M_G", whole)
        .with("M_P", exact.threadTorque(preload, NONE).inNewtonMetres());
  }

  private static Results angles(ThreadSize thread, String rho, Friction friction) {
    return new Results()
        .with("phi", ThreadMechanics.leadAngle(thread).degrees())
        .with(rho, ThreadMechanics.frictionAngle(friction).degrees());
  }

  private static Results preloadOfTorque(Given g) {
    Bolt bolt = bolt("M12", g.seat("d_W", "d_h"));
    double most = g.at("M") / arm(bolt, g.friction("mu_min"));
    double least = g.at("M") / arm(bolt, g.friction("mu_max"));
    return angles(bolt.thread(), "rho_min", g.friction("mu_min"))
        .with("rho_max", ThreadMechanics.frictionAngle(g.friction("mu_max")).degrees())
        .with("d_A", bolt.seat().meanDiameter().millimetres())
        .with("F_Vmax", most)
        .with("F_Vmin", least)
        .with("alpha_A", most / least);
  }

  private static Results torqueForPreload(Given g) {
    Bolt bolt = bolt("M12", Seat.of(g.at("d_A") + 1, g.at("d_A") - 1));
    double rough = arm(bolt, Friction.of(0.12));
    double slippery = arm(bolt, Friction.of(0.08));
    return new Results()
        .with("k_max", rough * 1000)
        .with("k_min", slippery * 1000)
        .with("M_G", g.at("F_V") * rough)
        .with("F_Vmax", g.at("F_V") * rough / slippery);
  }

  private static Results lockingNut(Given g) {
    Bolt bolt = bolt("M8", Seat.of(g.at("d_A") + 1, g.at("d_A") - 1));
    double whole = torque(bolt, g.force("F_V"), g.friction("mu"), g.friction("mu_A"));
    double thread = torque(bolt, g.force("F_V"), g.friction("mu"), NONE);
    return angles(bolt.thread(), "rho1", g.friction("mu"))
        .with("M_t", thread)
        .with("M_A", whole - thread)
        .with("M_G", whole + g.at("M_U"));
  }

  private static Results stressed(Given g, String thread) {
    Force bolt = new Force(g.at("F_M") + g.at("F_SA"));
    Torque torque = newtonMetres(g.at("M_t"));
    Seat seat = g.seat("d_W", "d_h");
    CombinedStress stress =
        CombinedStress.tightening(ThreadSize.of(thread), bolt, torque, Torsion.ELASTIC);
    double reduced = stress.reduced().megapascals();
    return stresses(stress, torque)
        .with("F_Smax", bolt.newtons())
        .with("tau_tM", stress.shear().megapascals())
        .with("RF_10.9", yieldOf(PropertyClass.C10_9) / reduced)
        .with("RF_8.8", yieldOf(PropertyClass.C8_8) / reduced)
        .with("A_P", seat.area().squareMillimetres())
        .with("p", seat.area().under(bolt).megapascals());
  }

  private static Results stresses(CombinedStress stress, Torque torque) {
    double shear = stress.shear().megapascals();
    return new Results()
        .with("sigma_Z", stress.axial().megapascals())
        .with("W_t", torque.inNewtonMetres() * 1000 / shear)
        .with("tau", shear)
        .with("sigma_V", stress.reduced().megapascals());
  }

  private static Results stressedThin(Given g) {
    Bolt bolt = bolt("M8", Seat.of(11.63, 9));
    double moment = torque(bolt, g.force("F_M"), g.friction("mu"), NONE);
    Torque torque = newtonMetres(moment);
    CombinedStress stress =
        CombinedStress.tightening(bolt.thread(), g.force("F_M"), torque, Torsion.ELASTIC);
    return stresses(stress, torque)
        .with("rho1", ThreadMechanics.frictionAngle(g.friction("mu")).degrees())
        .with("M_t", moment)
        .with("d_S", bolt.thread().stressDiameter().millimetres())
        .with("RF", yieldOf(PropertyClass.C12_9) / stress.reduced().megapascals());
  }

  private static double yieldOf(PropertyClass strength) {
    Stress stress = strength.yieldStrength(M10);
    return stress.megapascals();
  }

  private static Bolt bolt(String thread, Seat seat) {
    return Bolt.hexagon(thread, "8.8").with(seat);
  }

  private static double torque(Bolt bolt, Force preload, Friction thread, Friction seat) {
    return ThreadMechanics.torque(bolt, preload, thread, seat).inNewtonMetres();
  }

  /** Newton metres for each newton. */
  private static double arm(Bolt bolt, Friction friction) {
    return torque(bolt, new Force(1e6), friction, friction) / 1e6;
  }

  private static Torque newtonMetres(double amount) {
    return Torque.newtonMetres(BigDecimal.valueOf(amount).toPlainString());
  }
}
