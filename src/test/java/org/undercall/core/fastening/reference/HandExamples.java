package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.CombinedStress;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Embedding;
import org.undercall.core.fastening.Expansion;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.PressureCone.Kind;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.fastening.TighteningMethod;
import org.undercall.core.fastening.TorqueLaw;
import org.undercall.core.fastening.Torsion;
import org.undercall.core.term.Torque;

/** Two whole joints that somebody worked out by hand with the formulas of VDI 2230. */
final class HandExamples {
  static final Map<String, Function<Given, Results>> ALL =
      Map.ofEntries(entry("J1", HandExamples::through), entry("J2", HandExamples::tapped));

  private HandExamples() {}

  private static Results through(Given g) {
    Bolt bolt = Bolt.hexagon("M10", "10.9").with(g.seat("dW", "dh"));
    Length grip = Length.mm(g.at("l1") + g.at("l2"));
    BoltBody body = BoltBody.fullyThreaded(bolt.thread(), grip, BoltBody.Ends.HEXAGON_AND_NUT);
    Elasticity steel = g.elasticity("E_S");
    PressureCone cone = new PressureCone(bolt.seat(), grip, g.length("D_A"), Kind.THROUGH_BOLT);
    Compliance second = upTo(g, cone, g.at("l2"), g.elasticity("E2"));
    double middle =
        upTo(g, cone, grip.millimetres() / 2, g.elasticity("E1")).millimetresPerNewton();
    double rest = upTo(g, cone, g.at("l2"), g.elasticity("E1")).millimetresPerNewton();
    Compliance layer = new Compliance(2 * middle - rest);
    JointStiffness springs = new JointStiffness(body.compliance(steel), layer.plus(second));
    Embedding flat = Embedding.of(Embedding.Roughness.MEDIUM, Embedding.Load.SHEAR, 2, 1);
    Results results = new Results();
    sizes(results, bolt.thread(), steel, grip);
    results
        .with("tanphi", cone.coneTangent())
        .with("DAGr", cone.coneLimit().millimetres())
        .with("dP1", layer.millimetresPerNewton())
        .with("dP2", second.millimetresPerNewton());
    double cold = heat(g, springs, g.at("T_min") - 20);
    double hot = heat(g, springs, g.at("T_max") - 20);
    results.with("dFcold", -cold).with("dFhot", hot);
    Assembled assembled = new Assembled(g, bolt, springs, flat, "muG");
    return assembled.into(results, -cold, hot, g.at("F_A"), g.at("F_A") / 2);
  }

  /** The part of a pair of cones up to a depth from the head. */
  private static Compliance upTo(Given g, PressureCone pair, double depth, Elasticity material) {
    double tangent = pair.coneTangent();
    int slices = 8;
    double step = depth / slices;
    Compliance sum = null;
    for (int i = 0; i < slices; i++) {
      double end = g.at("dW") + 2 * tangent * step * i;
      double y = Math.exp((tangent - 0.348 - 0.013 * Math.log(step / end)) / 0.193);
      PressureCone slice =
          new PressureCone(
              Seat.of(end, g.at("dh")), Length.mm(step), Length.mm(end * y), Kind.TAPPED_HOLE);
      Compliance one = slice.compliance(material);
      sum = sum == null ? one : sum.plus(one);
    }
    return sum;
  }

  private static void sizes(Results results, ThreadSize thread, Elasticity steel, Length grip) {
    Area nominal = Area.ofCircle(thread.diameter());
    Area core = Area.ofCircle(thread.rootDiameter());
    double d = thread.diameter().millimetres();
    results
        .with("d2", thread.pitchDiameter().millimetres())
        .with("d3", thread.rootDiameter().millimetres())
        .with("ds", thread.stressDiameter().millimetres())
        .with("As", thread.stressArea().squareMillimetres())
        .with("Ad3", core.squareMillimetres())
        .with("dSK", bar(steel, 0.5 * d, nominal))
        .with("dGew", bar(steel, grip.millimetres(), core))
        .with("dG", bar(steel, 0.5 * d, core))
        .with("dM", bar(steel, 0.4 * d, nominal));
  }

  private static double bar(Elasticity material, double length, Area area) {
    return material.bar(Length.mm(length), area).millimetresPerNewton();
  }

  /** The change of preload of both layers in newtons. */
  private static double heat(Given g, JointStiffness springs, double kelvin) {
    Expansion bolt = new Expansion(g.at("a_S"));
    return List.of("1", "2").stream()
        .mapToDouble(
            layer ->
                bolt.change(
                        springs, g.length("l" + layer), new Expansion(g.at("a" + layer)), kelvin)
                    .newtons())
        .sum();
  }

  private static Results tapped(Given g) {
    Bolt bolt = Bolt.hexagon("M12", "12.9").with(g.seat("dW", "dh"));
    ThreadSize thread = bolt.thread();
    Elasticity steel = g.elasticity("E_S");
    Area core = Area.ofCircle(thread.rootDiameter());
    Area nominal = Area.ofCircle(thread.diameter());
    double rod =
        bar(steel, 0.4 * 12, nominal)
            + bar(steel, g.at("l1") + 0.5 * 12, core)
            + bar(g.elasticity("E1"), 0.33 * 12, nominal);
    PressureCone cone =
        new PressureCone(bolt.seat(), g.length("l1"), g.length("D_A"), Kind.TAPPED_HOLE);
    JointStiffness springs =
        new JointStiffness(new Compliance(rod), cone.compliance(g.elasticity("E1")));
    Embedding flat = Embedding.of(Embedding.Roughness.FINE, Embedding.Load.SHEAR, 1, 1);
    Results results =
        new Results()
            .with("tanphi", cone.coneTangent())
            .with("DAGr", cone.coneLimit().millimetres())
            .with("As", thread.stressArea().squareMillimetres())
            .with("FmS", bolt.strength().ultimateLoad(thread).newtons());
    double swing = (g.at("F_Amax") - g.at("F_Amin")) / 2;
    return new Assembled(g, bolt, springs, flat, "mu").into(results, 0, 0, g.at("F_Amax"), swing);
  }

  /** A joint as assembled and loaded. */
  private record Assembled(
      Given g, Bolt bolt, JointStiffness springs, Embedding flat, String friction) {

    Results into(Results results, double cold, double hot, double load, double swing) {
      double phi = springs.forceRatio() * g.at("n");
      Force preload = Assembly.of(bolt).preload(g.friction(friction));
      double least = TighteningMethod.leastPreload(preload, g.at("alpha_A")).newtons();
      double loss = flat.loss(springs).newtons();
      double grip = g.at("F_Q") / g.at("muT");
      double wanted = grip + (1 - phi) * load + loss + cold;
      double service = least - loss - cold;
      Force most = new Force(preload.newtons() + phi * load + hot);
      stress(results, preload, most);
      return results
          .with("deltaS", springs.bolt().millimetresPerNewton())
          .with("deltaP", springs.parts().millimetresPerNewton())
          .with("PhiK", springs.forceRatio())
          .with("Phin", phi)
          .with("fZ", flat.micrometres() / 1000)
          .with("FZ", loss)
          .with("FMzul", preload.newtons())
          .with("FMmin", least)
          .with("FKQ", grip)
          .with("FMerf", wanted)
          .with("SF_M", least / wanted)
          .with("FVmin", service)
          .with("FAsep", service / (1 - phi))
          .with("SK", service / (1 - phi) / load)
          .with("FKRmin", service - (1 - phi) * load)
          .with("SG", (service - (1 - phi) * load) / grip)
          .with("sigma_a", phi * swing / bolt.thread().stressArea().squareMillimetres())
          .with(
              "MA",
              Assembly.of(bolt)
                  .torque(g.friction(friction), g.friction(friction))
                  .inNewtonMetres());
    }

    private void stress(Results results, Force preload, Force most) {
      Torque twist =
          new LongForm(bolt, TorqueLaw.ISO_16047).threadTorque(preload, g.friction(friction));
      CombinedStress stress =
          CombinedStress.inService(
              bolt.thread(), bolt.thread().stressArea().under(most), twist, Torsion.ELASTIC);
      double reduced = stress.reduced().megapascals();
      double pressure = bolt.seat().area().under(most).megapascals();
      PropertyClass strength = bolt.strength();
      results
          .with("FSmax", most.newtons())
          .with("sigma_z", stress.axial().megapascals())
          .with("kt_tau", stress.shear().megapascals())
          .with("sigma_red", reduced)
          .with("SF", strength.yieldStrength(bolt.thread()).megapascals() / reduced)
          .with("Ap", bolt.seat().area().squareMillimetres())
          .with("p", pressure);
      List.of("pG", "pG1", "pG2").stream()
          .filter(g::has)
          .forEach(limit -> results.with(limit.replace("pG", "SP"), g.at(limit) / pressure));
    }
  }
}
