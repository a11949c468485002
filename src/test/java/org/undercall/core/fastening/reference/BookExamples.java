package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.SleeveStack;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.term.Torque;

/** The worked examples D to H of the table: springs, joint factors and preload of books. */
final class BookExamples {
  static final Map<String, Function<Given, Results>> ALL =
      Map.ofEntries(
          entry("D1", BookExamples::fittings),
          entry("D2", BookExamples::uncertain),
          entry("D4", BookExamples::tapped),
          entry("E1", BookExamples::sleeve),
          entry("E2", BookExamples::ratio),
          entry("F1", BookExamples::threeLayers),
          entry("F2", g -> oneMaterial(g, "M10")),
          entry("F3", g -> oneMaterial(g, "M5")),
          entry("F4", g -> twoLayers(g, "M10", 7)),
          entry("F5", g -> twoLayers(g, "M8", 8)),
          entry("F6", BookExamples::boltAlone),
          entry("G1", BookExamples::byFactor),
          entry("G2", BookExamples::byFactor),
          entry("H2", BookExamples::table));

  private static final Elasticity IRON = Elasticity.ofMegapascals(153_000);
  private static final Elasticity COPPER = Elasticity.ofMegapascals(128_000);
  private static final Elasticity STEEL = Elasticity.ofMegapascals(207_000);
  private static final Elasticity ALUMINIUM = Elasticity.ofMegapascals(76_000);

  private BookExamples() {}

  private static Results fittings(Given g) {
    double d = g.at("D");
    double washer = (g.at("t_w1") + g.at("t_w2")) / 2;
    double contact = Springs.behind(g.at("d_wf"), washer);
    double[] lengths = {g.at("L1") + 0.4 * d, g.at("L2") + 0.4 * d};
    Area[] areas = {Area.ofCircle(Length.mm(d)), g.area("A_t")};
    double bolt = Springs.bolt(g.elasticity("E_b"), lengths, areas);
    double parts = Springs.both(d, contact, g.at("L"), Springs.TAN_30, g.elasticity("E_c"));
    JointStiffness springs = Springs.joint(bolt, parts);
    return new Results()
        .with("d_c", contact)
        .with("K_b", bolt)
        .with("K_c", parts)
        .with("Phi", 1 - springs.bolt().millimetresPerNewton() / whole(springs));
  }

  private static double whole(JointStiffness springs) {
    return springs.bolt().plus(springs.parts()).millimetresPerNewton();
  }

  private static Results tapped(Given g) {
    double three = Scale.of("in") * 0.375;
    double half = Scale.of("in") * 0.5;
    double first = Springs.behind(g.at("d_wf1"), g.at("t_w"));
    double second = Springs.behind(g.at("d_wf2"), g.at("t_w"));
    Elasticity parts = g.elasticity("E_c");
    return new Results()
        .with("d_c", first)
        .with("K_c1", Springs.both(three, first, g.at("t1") + three / 2, Springs.TAN_30, parts))
        .with("K_c2", Springs.both(half, second, g.at("t2") + half / 2, Springs.TAN_30, parts));
  }

  private static Results uncertain(Given g) {
    return new Results()
        .with("P_pi_max", preload(g, g.at("T_max")) * (1 + g.at("Gamma")))
        .with("P_pi_min", preload(g, g.at("T_min")) * (1 - g.at("Gamma") / Math.sqrt(g.at("n_f"))));
  }

  private static Results byFactor(Given g) {
    return new Results()
        .with("F", preload(g, g.at("T")))
        .with("F_max", preload(g, g.at("T") + g.at("dT")) * (1 + g.at("Gamma")))
        .with("F_min", preload(g, g.at("T") - g.at("dT")) * (1 - g.at("Gamma")));
  }

  private static double preload(Given g, double newtonMetres) {
    Torque torque = Torque.newtonMetres(BigDecimal.valueOf(newtonMetres).toPlainString());
    return ShortForm.preload(NutFactor.of(g.at("K")), torque, g.length("D")).newtons();
  }

  /** A bolt in a tube twice as wide: the area at which its stress is the permitted one. */
  private static Results sleeve(Given g) {
    Length bolt = Length.mm(10);
    SleeveStack tube =
        new SleeveStack(
            List.of(new SleeveStack.Sleeve(g.length("l"), bolt.times(g.at("ratio")), bolt)));
    Compliance rod = g.elasticity("E1").bar(g.length("l"), Area.ofCircle(bolt));
    JointStiffness springs = new JointStiffness(rod, tube.compliance(g.elasticity("E2")));
    return new Results().with("A", permitted(g, springs));
  }

  private static Results ratio(Given g) {
    return new Results().with("A", permitted(g, Springs.joint(1, g.at("kc_kb"))));
  }

  private static double permitted(Given g, JointStiffness springs) {
    Force bolt = new Force(g.at("P_i") + g.at("P") * springs.forceRatio());
    return bolt.newtons() / (g.at("S_yt") / g.at("fs"));
  }

  private static Results threeLayers(Given g) {
    ThreadSize m12 = ThreadSize.of("M12");
    double d = g.at("d");
    double end = 1.5 * d;
    double middle = (g.at("t1") + g.at("t2") + d / 2) / 2;
    Compliance parts =
        Springs.frustum(d, end, middle, IRON)
            .plus(Springs.frustum(d, end, d / 2, STEEL))
            .plus(Springs.frustum(d, Springs.behind(end, d / 2), g.at("t2"), COPPER))
            .plus(
                Springs.frustum(
                    d, Springs.behind(end, d / 2 + g.at("t2")), g.at("t1") - middle, IRON));
    double shank = g.at("L") - g.at("L_t");
    double bolt = Springs.bolt(STEEL, d, shank, 2 * middle - shank, m12.stressArea());
    double stiff = 1 / parts.millimetresPerNewton();
    double proof = PropertyClass.C9_8.proofLoad(m12).newtons();
    double share = Springs.joint(bolt, stiff).forceRatio();
    return new Results()
        .with("A_t", m12.stressArea().squareMillimetres())
        .with("F_p", proof)
        .with("F_i", 0.75 * proof)
        .with("k_m", stiff)
        .with("k_b", bolt)
        .with("C", share)
        .with("n_0", 0.75 * proof / (g.at("P_ext") * (1 - share)))
        .with("n_L", 0.25 * proof / (share * g.at("P_ext")));
  }

  private static Results oneMaterial(Given g, String thread) {
    double d = g.at("d");
    double shank = g.at("L") - g.at("L_t");
    Area stress = ThreadSize.of(thread).stressArea();
    Elasticity material = g.elasticity("E");
    double bolt = Springs.bolt(material, d, shank, g.at("grip") - shank, stress);
    double parts = Springs.both(d, 1.5 * d, g.at("grip"), Springs.TAN_30, material);
    return factors(g, thread, bolt, parts)
        .with("l_d", shank)
        .with("l_t", g.at("grip") - shank)
        .with("A_d", Area.ofCircle(g.length("d")).squareMillimetres());
  }

  private static Results factors(Given g, String thread, double bolt, double parts) {
    double share = Springs.joint(bolt, parts).forceRatio();
    Force most = new Force(g.at("F_i") + share * g.at("P"));
    Area stress = ThreadSize.of(thread).stressArea();
    return new Results()
        .with("A_t", stress.squareMillimetres())
        .with("k_b", bolt)
        .with("k_m", parts)
        .with("C", share)
        .with("F_b", most.newtons())
        .with("sigma", stress.under(most).megapascals())
        .with("n_0", g.at("F_i") / (g.at("P") * (1 - share)));
  }

  /** Steel on aluminium that holds the thread, over half a diameter of it. */
  private static Results twoLayers(Given g, String thread, double shank) {
    double d = g.at("d");
    double end = 1.5 * d;
    double grip = g.at("t1") + d / 2;
    ThreadSize size = ThreadSize.of(thread);
    Compliance parts =
        Springs.frustum(d, end, grip / 2, STEEL)
            .plus(Springs.frustum(d, end, d / 2, ALUMINIUM))
            .plus(Springs.frustum(d, Springs.behind(end, d / 2), grip / 2 - d / 2, STEEL));
    double bolt = Springs.bolt(STEEL, d, shank, grip - shank, size.stressArea());
    Results results = factors(g, thread, bolt, 1 / parts.millimetresPerNewton());
    double proof = PropertyClass.C5_8.proofLoad(size).newtons();
    return results
        .with("l_t", grip - shank)
        .with("F_i75", 0.75 * proof)
        .with("F_i90", 0.90 * proof);
  }

  private static Results boltAlone(Given g) {
    double shank = g.at("L") - g.at("L_t");
    ThreadSize thread = new ThreadSize(g.length("d"), g.length("P"));
    double free = g.at("grip") - shank;
    return new Results()
        .with("l_t", free)
        .with("k_b", Springs.bolt(g.elasticity("E"), g.at("d"), shank, free, thread.stressArea()));
  }

  private static Results table(Given g) {
    Friction mu = g.friction("mu");
    Assembly ten = Assembly.of(Bolt.hexagon("M10", "8.8"));
    Assembly twelve = Assembly.of(Bolt.hexagon("M12", "8.8"));
    return new Results()
        .with("F_M10", ten.preload(mu).newtons())
        .with("F_M12", twelve.preload(mu).newtons())
        .with("M_M12", twelve.torque(mu, mu).inNewtonMetres());
  }
}
