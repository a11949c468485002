package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Function;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Expansion;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.ThreadMechanics;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.term.Torque;

/** The worked examples of the second table. */
final class MoreExamples {
  static final Map<String, Function<Given, Results>> ALL =
      Map.ofEntries(
          entry("23-3", MoreExamples::ironUnderSteel),
          entry("23-4", MoreExamples::vessel),
          entry("23-5", g -> grip(g, g.at("At"))),
          entry("23-6", g -> grip(g, g.at("At"))),
          entry("23-7", MoreExamples::frusta),
          entry("23-8", MoreExamples::factors),
          entry("23-9", MoreExamples::byTorque),
          entry("23-15", MoreExamples::cone45),
          entry("23-19", MoreExamples::calculator),
          entry("23-23", MoreExamples::loosening),
          entry("23-24", MoreExamples::coarse),
          entry("23-25", g -> new Results()),
          entry("23-26", MoreExamples::warmed));

  private MoreExamples() {}

  private static Results ironUnderSteel(Given g) {
    double d = g.at("d");
    double end = 1.5 * d;
    double grip = g.at("washer") + g.at("t1") + g.at("t2");
    double shank = 0.25 * Scale.of("in");
    double above = g.at("washer") + g.at("t1");
    Elasticity iron = g.elasticity("E iron");
    Compliance first = Springs.frustum(d, end, above, g.elasticity("E"));
    Compliance second = Springs.frustum(d, Springs.behind(end, above), grip / 2 - above, iron);
    Compliance third = Springs.frustum(d, end, grip / 2, iron);
    return new Results()
        .with("kb", Springs.bolt(g.elasticity("E"), d, shank, grip - shank, g.area("At")))
        .with("km all steel, eq. 8-22", Springs.both(d, end, grip, tan30(), g.elasticity("E")))
        .with("k1, steel washer and plate", 1 / first.millimetresPerNewton())
        .with("k2, iron above the middle", 1 / second.millimetresPerNewton())
        .with("k3, iron below the middle", 1 / third.millimetresPerNewton())
        .with("km, frusta", 1 / first.plus(second).plus(third).millimetresPerNewton());
  }

  private static double tan30() {
    return Springs.TAN_30;
  }

  private static Results vessel(Given g) {
    double d = g.at("d");
    double half = 0.75 * Scale.of("in");
    double bolt = Springs.bolt(g.elasticity("E bolt"), d, half, half, g.area("At"));
    double parts = Springs.both(d, 1.5 * d, g.at("l"), tan30(), g.elasticity("E iron"));
    double share = Springs.joint(bolt, parts).forceRatio();
    Force proof = new Stress(g.at("Sp")).on(g.area("At"));
    double preload = g.at("Fi/Fp") * proof.newtons();
    double load = g.at("P");
    return new Results()
        .with("kb", bolt)
        .with("C used by the book", share)
        .with("Fp", proof.newtons())
        .with("Fi", preload)
        .with("load factor", (proof.newtons() - preload) / (share * load))
        .with("proof factor", proof.newtons() / (share * load + preload))
        .with("separation factor", preload / (load * (1 - share)));
  }

  private static Results grip(Given g, double stressArea) {
    double d = g.at("d");
    Elasticity steel = g.elasticity("E");
    double bolt = Springs.bolt(steel, d, g.at("ld"), g.at("lt"), new Area(stressArea));
    double parts = Springs.both(d, 1.5 * d, g.at("l"), tan30(), steel);
    return new Results()
        .with("kb", bolt)
        .with("km", parts)
        .with("C", Springs.joint(bolt, parts).forceRatio());
  }

  private static Results frusta(Given g) {
    double d = g.at("d");
    double end = g.at("D");
    Elasticity steel = g.elasticity("E steel");
    Elasticity iron = g.elasticity("E iron");
    double wide = Springs.behind(end, g.at("t3"));
    Compliance first = Springs.frustum(d, end, g.at("t1"), steel);
    Compliance second = Springs.frustum(d, wide, g.at("t2"), steel);
    Compliance third = Springs.frustum(d, end, g.at("t3"), iron);
    return new Results()
        .with("D2", wide)
        .with("k1", 1 / first.millimetresPerNewton())
        .with("k2", 1 / second.millimetresPerNewton())
        .with("k3", 1 / third.millimetresPerNewton())
        .with("km", 1 / first.plus(second).plus(third).millimetresPerNewton());
  }

  private static Results factors(Given g) {
    double share = Springs.joint(g.at("kb"), g.at("km")).forceRatio();
    double proof = new Stress(g.at("Sp")).on(g.area("At")).newtons();
    double load = g.at("P");
    double preload = g.at("Fi");
    return new Results()
        .with("C", share)
        .with("n0", preload / (load * (1 - share)))
        .with("np", proof / (share * load + preload))
        .with("nL", (proof - preload) / (share * load));
  }

  private static Results byTorque(Given g) {
    Torque torque = newtonMetres(g.at("T"));
    return new Results()
        .with("F", ShortForm.preload(NutFactor.of(g.at("K")), torque, g.length("d")).newtons());
  }

  private static Results cone45(Given g) {
    double contact = g.at("dwf") + 2 * g.at("tw");
    return new Results()
        .with("kc", Springs.both(g.at("D"), contact, g.at("L"), 1, g.elasticity("Ec")));
  }

  private static Results calculator(Given g) {
    NutFactor k = NutFactor.of(g.at("K"));
    ThreadSize m10 = ThreadSize.of("M10");
    Force preload = ShortForm.preload(k, newtonMetres(g.at("T")), m10.diameter());
    Force proof = new Stress(g.at("Sp")).on(m10.stressArea());
    Force usual = new Force(0.75 * proof.newtons());
    return new Results()
        .with("F", preload.newtons())
        .with("sigma", m10.stressArea().under(preload).megapascals())
        .with("proof load", proof.newtons())
        .with("share of proof", preload.newtons() / proof.newtons())
        .with("factor", proof.newtons() / preload.newtons())
        .with("75 % of proof", usual.newtons())
        .with("its torque", ShortForm.torque(k, usual, m10.diameter()).inNewtonMetres());
  }

  private static Results loosening(Given g) {
    ThreadSize m16 = ThreadSize.of("M16");
    return new Results().with("lead angle", ThreadMechanics.leadAngle(m16).degrees());
  }

  private static Results coarse(Given g) {
    ThreadSize thread = new ThreadSize(g.length("d"), g.length("P"));
    Force preload = new Stress(0.75 * g.at("Re")).on(thread.stressArea());
    NutFactor k = NutFactor.of(g.printed("K"));
    return new Results()
        .with("As", thread.stressArea().squareMillimetres())
        .with("F", preload.newtons())
        .with("T", ShortForm.torque(k, preload, thread.diameter()).inNewtonMetres());
  }

  /** The stiffness of 300 kN/mm that its result needs, not the 300 N/mm that it prints. */
  private static Results warmed(Given g) {
    JointStiffness springs = Springs.joint(600_000, 600_000);
    Expansion bolt = Expansion.STEEL;
    Expansion parts = new Expansion(bolt.perKelvin() + g.at("alpha difference"));
    double force = bolt.change(springs, Length.mm(g.at("L")), parts, g.at("dT")).newtons();
    return new Results().with("force", force).with("expansion", force / 300_000);
  }

  private static Torque newtonMetres(double amount) {
    return Torque.newtonMetres(BigDecimal.valueOf(amount).toPlainString());
  }
}
