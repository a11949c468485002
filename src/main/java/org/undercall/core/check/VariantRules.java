package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Tightening;
import org.undercall.core.fastening.VariantComparison;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Variant;

/** Compares the variants of a fastener: the same joint, bolts of different classes. */
final class VariantRules {
  /** From 8.8 to 10.9 the yield strength rises by 1.47; more than this is no longer that. */
  private static final double UNLIKE = 1.75;

  private static final double LESS = 0.9;

  private final Spot spot;
  private final Fastener fastener;
  private final Rubs rubs;
  private final List<Finding> findings = new ArrayList<>();

  private VariantRules(Spot spot, Fastener fastener, Rubs rubs) {
    this.spot = spot;
    this.fastener = fastener;
    this.rubs = rubs;
  }

  static List<Finding> check(Spot spot) {
    return spot.fastener()
        .flatMap(f -> Rubs.of(f).map(rubs -> new VariantRules(spot, f, rubs).judged()))
        .orElse(List.of());
  }

  private List<Finding> judged() {
    List<Variant> variants = fastener.variants();
    for (int i = 0; i < variants.size(); i++) {
      for (int j = 0; j < variants.size(); j++) {
        Optional<Bolt> weak = Bolts.marked(fastener, variants.get(i));
        Optional<Bolt> strong = Bolts.marked(fastener, variants.get(j));
        if (weak.isPresent()
            && strong.isPresent()
            && strength(weak.get()) < strength(strong.get())) {
          compare(i, weak.get(), j, strong.get());
        }
      }
    }
    return findings;
  }

  private static double strength(Bolt bolt) {
    return bolt.strength().yieldStrength(bolt.thread()).megapascals();
  }

  private void compare(int weak, Bolt weakBolt, int strong, Bolt strongBolt) {
    Variant less = fastener.variants().get(weak);
    Variant more = fastener.variants().get(strong);
    String path = "fastener/variants/" + weak + "/stages/0/torque";
    if (tighter(less, more)) {
      String found = words(weakBolt, less) + " beside " + words(strongBolt, more);
      findings.add(
          spot.at(path, CheckRule.WEAKER_TIGHTER, found, "no more than for " + strongBolt));
      return;
    }
    double ratio = ratio(weakBolt, less, strongBolt, more);
    if (ratio > UNLIKE || ratio < LESS) {
      String found =
          String.format(
              Locale.ROOT,
              "%s clamps about %.1f times as much as %s",
              words(strongBolt, more),
              ratio,
              words(weakBolt, less));
      String expected = "from the same force to 1.75 times it";
      findings.add(
          spot.at(
              "fastener/variants/" + strong + "/stages/0/torque",
              CheckRule.VARIANTS_UNLIKE,
              found,
              expected));
    }
  }

  /** More torque by more than the tolerances, and no less angle. */
  private static boolean tighter(Variant weak, Variant strong) {
    return last(weak).least().compareTo(last(strong).most()) > 0
        && AngleRules.turn(weak) >= AngleRules.turn(strong);
  }

  private static TorqueStage last(Variant variant) {
    TorqueStage last = (TorqueStage) variant.stages().get(0);
    for (var stage : variant.stages()) {
      last = stage instanceof TorqueStage torque ? torque : last;
    }
    return last;
  }

  /** The ratio at the middle friction. */
  private double ratio(Bolt weak, Variant less, Bolt strong, Variant more) {
    Range<Friction> middle = new Range<>(rubs.middle(), rubs.middle());
    return VariantComparison.of(
            Joints.usual(weak, fastener),
            way(less),
            Joints.usual(strong, fastener),
            way(more),
            middle)
        .ratio()
        .low();
  }

  private static Tightening way(Variant variant) {
    double turn = AngleRules.turn(variant);
    return turn > 0
        ? Tightening.by(AngleRules.snug(variant), Rotation.degrees(turn))
        : Tightening.by(AngleRules.snug(variant));
  }

  private static String words(Bolt bolt, Variant variant) {
    double turn = AngleRules.turn(variant);
    String angle = turn > 0 ? String.format(Locale.ROOT, " + %.0f°", turn) : "";
    return bolt.strength() + " at " + last(variant).target() + angle;
  }
}
