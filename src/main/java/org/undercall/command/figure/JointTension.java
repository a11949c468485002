package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Figure.Part;
import org.undercall.core.fastening.AngleWindow;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.CombinedStress;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Stretch;
import org.undercall.core.fastening.TighteningMethod;
import org.undercall.core.fastening.ToleranceTrial;
import org.undercall.core.fastening.TorqueAlone;
import org.undercall.core.fastening.Torsion;
import org.undercall.core.fastening.YieldControlled;
import org.undercall.port.Fault;

/**
 * What can be said of the preload of a joint and of its bolt.
 *
 * @param meant whether it is meant to reach yield; empty if that is not stated
 */
record JointTension(JointCase worked, SpreadOptions spread, Optional<Boolean> meant) {
  /** Fewer than this share is hardly any. */
  private static final double HARDLY = 0.001;

  private static final String VDI = "VDI 2230 Part 1";

  List<Part> parts() throws Fault {
    List<Part> parts = new ArrayList<>();
    parts.add(springs());
    parts.add(preload());
    parts.add(lots());
    if (worked.turn().isPresent()) {
      parts.add(window(worked.turn().get()));
    }
    parts.add(worked.turn().map(this::stretch).orElseGet(this::torqueAlone));
    parts.add(stress());
    return parts;
  }

  private Part springs() {
    JointStiffness springs = worked.joint().stiffness();
    return new Part(
        "Springs",
        "δ = Σ l/(E A) of head, shank, thread, nut; deformation cone for the parts; Φ = δP/(δS +"
            + " δP)",
        List.of(
            compliance("compliance of the bolt δS", springs.bolt().millimetresPerNewton()),
            compliance("compliance of the parts δP", springs.parts().millimetresPerNewton()),
            Item.number("force ratio Φ", springs.forceRatio(), 2, ""),
            Item.number("clamped length over diameter", worked.joint().slenderness(), 1, "")),
        VDI + ", 5.1.1 and 5.1.2.1; E from memory",
        "concentric; the parts lie flat; from 3 to 5 diameters on, embedding costs less (common"
            + " practice, from memory)");
  }

  private static Item compliance(String name, double millimetresPerNewton) {
    return Item.number(name, millimetresPerNewton * 1e6, 2, "µm/kN");
  }

  private Part preload() {
    List<Item> items = new ArrayList<>();
    Range<Force> torqued = worked.torqueOnly().worstCase();
    items.add(SpreadOptions.forces("preload after the torque", torqued, worked.nominalTorqued()));
    if (worked.turn().isPresent()) {
      items.add(
          SpreadOptions.forces(
              "preload after the angle", worked.stack().worstCase(), worked.nominal()));
    }
    Range<Force> yield = Assembly.atYield(bolt()).preload(worked.rubs().thread());
    items.add(PreloadFigure.forces("preload at yield", yield));
    items.add(
        Item.number("tightening factor αA after the torque", worked.torqueOnly().factor(), 2, ""));
    if (worked.turn().isPresent()) {
      items.add(
          Item.number("tightening factor αA after the angle", worked.stack().factor(), 2, ""));
    }
    boolean turned = worked.turn().isPresent();
    TighteningMethod usual =
        turned
            ? TighteningMethod.ANGLE_CONTROLLED
            : TighteningMethod.TORQUE_FRICTION_ESTIMATED_CLASS_B;
    String named = turned ? "angle control" : "torque, friction estimated";
    items.add(Item.range("αA of table A8, " + named, usual.best(), usual.worst(), 1, ""));
    double controlled =
        YieldControlled.of(bolt(), worked.rubs().thread(), YieldControlled.SPREAD).factor();
    items.add(Item.number("αA if stopped at yield by slope", controlled, 2, ""));
    return new Part(
        "Preload",
        "FM = T/(0.16 P + 0.58 d2 µG + DKm/2 µK); F = FM + P angle/360/(δS + δP), at most yield;"
            + " αA = most/least",
        items,
        VDI
            + " (long form, yield with plastic torsion, table A8 from secondary readings); ISO"
            + " 898-1; ISO 6789",
        "least and most: tolerance, wrench, angle and friction all go the same way; nominal: exact"
            + " wrench, middle of the friction; a bolt of least strength, so where it yields the"
            + " spread of strength, about 1.2, comes on top of αA");
  }

  private Bolt bolt() {
    return worked.joint().bolt();
  }

  private Part lots() throws Fault {
    ToleranceTrial trial = spread.trial(worked.stack());
    List<Item> items = new ArrayList<>(spread.drawn());
    Range<Force> middle = trial.middle();
    items.add(SpreadOptions.forces("95 of 100 joints", middle, trial.median()));
    items.add(Item.number("αA of these", middle.high().newtons() / middle.low().newtons(), 2, ""));
    items.add(Item.number("share that reaches yield", trial.yields() * 100, 1, "%"));
    meant.ifPresent(yes -> items.add(Item.words("as it is meant", asMeant(trial, yes))));
    items.add(
        spread.wanted().isPresent()
            ? Item.number("share that stays loose", trial.loose() * 100, 1, "%")
            : Item.words("share that stays loose", "not known without the preload wanted"));
    return new Part(
        "How likely the ends are",
        "joints drawn by lot (Monte Carlo), each worked out as above; nominal here is the median",
        items,
        "the same formulas; lots from a stated seed, so that they come out the same again",
        spread.lots() + "; nobody publishes the true spread in a workshop");
  }

  private static String asMeant(ToleranceTrial trial, boolean yield) {
    double others = yield ? 1 - trial.yields() : trial.yields();
    if (others < HARDLY) {
      return yield ? "yes, they reach yield" : "yes, they stay below yield";
    }
    return yield ? "no, some stay below yield" : "no, some reach yield";
  }

  private Part window(Rotation turn) throws Fault {
    Optional<Force> wanted = spread.wanted();
    Range<Friction> friction = worked.both();
    AngleWindow yields =
        AngleWindow.toYield(
            worked.joint(), worked.torque(), friction, Stretch.Verdict.BEYOND_YIELD);
    AngleWindow far =
        AngleWindow.toYield(
            worked.joint(), worked.torque(), friction, Stretch.Verdict.NEAR_THE_LIMIT);
    List<Item> items = new ArrayList<>();
    items.add(Item.words("angles to yield and not near the limit", yields));
    if (wanted.isPresent()) {
      items.add(Item.words("angles to the preload wanted, likewise", toWanted(wanted.get())));
    }
    items.add(Item.number("may be turned too far from", far.most().degrees(), 0, "°"));
    items.add(
        Item.words(
            "the angle of this joint",
            yields.contains(turn)
                ? "within, whatever the friction"
                : turn.compareTo(yields.least()) < 0
                    ? "does not surely reach yield"
                    : "beyond what is usual"));
    return new Part(
        "Angle window",
        "angle = (F - FM)(δS + δP) 360/P; beyond yield, stretch of the free thread up to a share of"
            + " A",
        items,
        VDI + "; A of ISO 898-1; the shares of A are a choice of this program",
        "enough with the most friction, not too much with the least");
  }

  private String toWanted(Force wanted) throws Fault {
    Range<Force> yield = Assembly.atYield(bolt()).preload(worked.both());
    if (wanted.compareTo(yield.low()) > 0) {
      throw new Fault(
          FigureCode.WANTED, "--wanted", wanted + "", "at most " + yield.low() + ", at yield");
    }
    return AngleWindow.toPreload(
            worked.joint(), worked.torque(), worked.both(), wanted, Stretch.Verdict.BEYOND_YIELD)
        .toString();
  }

  private Part stretch(Rotation turn) {
    Stretch low = Stretch.of(worked.joint(), worked.torque(), turn, worked.both().low());
    Stretch high = Stretch.of(worked.joint(), worked.torque(), turn, worked.both().high());
    Stretch most = Stretch.most(worked.joint(), worked.torque(), turn, worked.both());
    List<Item> items = new ArrayList<>(elasticAfterTorque());
    items.add(span("bolt longer after the angle, elastic", low.elasticBolt(), high.elasticBolt()));
    items.add(
        span("parts shorter after the angle, elastic", low.elasticParts(), high.elasticParts()));
    items.add(span("bolt longer for good", low.plastic(), high.plastic()));
    double one = low.strain() * 100;
    double two = high.strain() * 100;
    items.add(
        Item.range(
            "plastic strain of the free thread", Math.min(one, two), Math.max(one, two), 2, "%"));
    items.add(
        Item.number("least elongation after fracture A", most.leastElongation() * 100, 0, "%"));
    items.add(Item.words("verdict on the most", most.verdict().words()));
    return new Part(
        "Elongation by stage",
        "Δl = δ F; from yield on, all further advance P angle/360 stretches the bolt",
        items,
        VDI + "; A of ISO 898-1; half of A before necking is common practice, no source",
        "plastic stretch lies in the free thread alone and hardening is left out: the most it can"
            + " be");
  }

  private List<Item> elasticAfterTorque() {
    JointStiffness springs = worked.joint().stiffness();
    Range<Force> torqued = worked.torqueOnly().worstCase();
    double bolt = springs.bolt().millimetresPerNewton();
    double parts = springs.parts().millimetresPerNewton();
    double low = torqued.low().newtons();
    double high = torqued.high().newtons();
    return List.of(
        span("bolt longer after the torque", bolt * low, bolt * high),
        span("parts shorter after the torque", parts * low, parts * high));
  }

  private static Item span(String name, double one, double other) {
    return Item.range(name, Math.min(one, other), Math.max(one, other), 3, "mm");
  }

  private Part torqueAlone() {
    TorqueAlone alone = TorqueAlone.of(bolt(), worked.torque(), worked.both());
    List<Item> items = new ArrayList<>(elasticAfterTorque());
    items.add(TorqueAngleFigure.torques("torque at yield", alone.yieldTorque()));
    items.add(TorqueAngleFigure.torques("torque at breaking", alone.breakingTorque()));
    items.add(Item.words("verdict", alone.reach().words()));
    return new Part(
        "Elongation and limits of the torque",
        "Δl = δ F; yield and breaking from tension and torsion together",
        items,
        VDI + "; ISO 898-1",
        "thread and seat take one range of friction here, from the least to the most of both");
  }

  private Part stress() {
    Friction thread = Rubs.middle(worked.rubs().thread());
    Force preload = worked.nominal();
    CombinedStress stress =
        CombinedStress.tightening(
            bolt().thread(),
            preload,
            LongForm.of(bolt()).threadTorque(preload, thread),
            Torsion.PLASTIC);
    double yield = bolt().strength().yieldStrength(bolt().thread()).megapascals();
    return new Part(
        "Stress of the bolt, nominal",
        "σ = F/As; τ = MG/Wp; σred = √(σ² + 3τ²)",
        List.of(
            Item.number("tension σ", stress.axial().megapascals(), 0, "MPa"),
            Item.number("torsion τ", stress.shear().megapascals(), 0, "MPa"),
            Item.number("together σred", stress.reduced().megapascals(), 0, "MPa"),
            Item.number(
                "share of the least yield strength",
                stress.reduced().megapascals() / yield * 100,
                0,
                "%")),
        VDI + ", 5.5.2; ISO 898-1",
        "plastic torsion; about half of the torsion is gone in service (kτ = 0.5)");
  }
}
