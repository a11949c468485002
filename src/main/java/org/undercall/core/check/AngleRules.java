package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleOutcome.Reach;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Stretch;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.Torque;

/** Rules about angle stages. */
final class AngleRules {
  /** The clamped length of the long joint of CHK-022, in diameters. */
  private static final double LONG = 6;

  /** The share of the least elongation that is far even in a long joint: three quarters of half. */
  private static final double FAR = 0.375;

  private final Spot spot;
  private final List<Tool> tools;
  private final Staged<AngleStage> stage;
  private final Rubs rubs;
  private final List<Finding> findings = new ArrayList<>();

  private AngleRules(Spot spot, List<Tool> tools, Staged<AngleStage> stage, Rubs rubs) {
    this.spot = spot;
    this.tools = tools;
    this.stage = stage;
    this.rubs = rubs;
  }

  static List<Finding> check(Spot spot, List<Tool> tools) {
    List<Finding> findings = new ArrayList<>();
    for (Staged<AngleStage> stage : Staged.angles(spot)) {
      boolean elastic = stage.stage().beyondYield().filter(yes -> !yes).isPresent();
      if (!stage.fastener().part().oneTimeUse() && !elastic) {
        String expected = "\"oneTimeUse\": true, or the maker's leave to use it again";
        String found = stage.stage().target() + " on a fastener to be used again";
        findings.add(spot.at(stage.field("angle"), CheckRule.ANGLE_REUSED, found, expected));
      }
      if (stage.last()) {
        Rubs.of(stage.fastener())
            .map(rubs -> new AngleRules(spot, tools, stage, rubs).judged())
            .ifPresent(findings::addAll);
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

  private List<Finding> judged() {
    bolt(PropertyClass.C4_6).ifPresent(this::tooFar);
    Optional<Boolean> meant = stage.stage().beyondYield();
    if (meant.orElse(false)) {
      bolt(PropertyClass.C4_6).ifPresent(this::notReached);
    } else {
      bolt(PropertyClass.C12_9).ifPresent(bolt -> reached(bolt, meant.isPresent()));
    }
    return findings;
  }

  private Optional<Bolt> bolt(PropertyClass unmarked) {
    return Bolts.of(stage.fastener(), stage.variant(), unmarked);
  }

  /** Too far is an error if it is so with all friction; of a stated joint it may be a warning. */
  private void tooFar(Bolt bolt) {
    Optional<Joint> stated = Joints.stated(bolt, stage.fastener());
    Joint joint = stated.orElseGet(() -> Joints.longest(bolt));
    Stretch slippery = stretch(joint, rubs.both().low());
    Stretch rough = stretch(joint, rubs.both().high());
    boolean always =
        slippery.verdict() == Stretch.Verdict.TOO_FAR && rough.verdict() == Stretch.Verdict.TOO_FAR;
    if (always) {
      Stretch least = slippery.strain() <= rough.strain() ? slippery : rough;
      add(CheckRule.TURNED_TOO_FAR, turned(bolt, least, joint, stated.isPresent()), allowed(least));
    } else if (stated.isPresent()) {
      Stretch most = slippery.strain() >= rough.strain() ? slippery : rough;
      if (most.verdict().compareTo(Stretch.Verdict.NEAR_THE_LIMIT) >= 0) {
        add(CheckRule.STRETCHED_FAR, turned(bolt, most, joint, true), allowed(most));
      }
    } else if (Math.min(slippery.strain(), rough.strain()) > FAR * slippery.leastElongation()) {
      add(CheckRule.STRETCHED_FAR, turned(bolt, rough, joint, false), allowed(rough));
    }
  }

  private Stretch stretch(Joint joint, Friction friction) {
    return Stretch.of(joint, snug(), Rotation.degrees(turn()), friction);
  }

  private String turned(Bolt bolt, Stretch stretch, Joint joint, boolean stated) {
    return String.format(
        Locale.ROOT,
        "%.0f° after %s on %s stretch it by %.1f %% over %.0f mm of thread%s",
        turn(),
        snug(),
        Bolts.words(bolt, stage.variant()),
        stretch.strain() * 100,
        joint.body().freeThread().millimetres(),
        stated ? "" : ", a long joint assumed");
  }

  private static String allowed(Stretch stretch) {
    return String.format(
        Locale.ROOT,
        "at most %.1f %%, half of the least elongation of its class",
        stretch.leastElongation() * 50);
  }

  /** Not reached: in the stated joint with some friction, in a short one with all. */
  private void notReached(Bolt bolt) {
    Optional<Joint> stated = Joints.stated(bolt, stage.fastener());
    Joint joint = stated.orElseGet(() -> Joints.shortest(bolt));
    Reach reach = reach(joint, turn());
    if (stated.isPresent() ? reach != Reach.ABOUT_YIELD : reach == Reach.BELOW_YIELD) {
      String found =
          String.format(
              Locale.ROOT,
              "%.0f° after %s on %s%s",
              turn(),
              snug(),
              Bolts.words(bolt, stage.variant()),
              stated.map(j -> " in its joint; " + yielded(j)).orElse(", a short joint assumed"));
      String expected =
          reach == Reach.BELOW_YIELD ? "an angle that reaches yield" : "yield at any friction";
      add(CheckRule.YIELD_NOT_REACHED, found, expected);
    }
  }

  /** Reached: where it must not be, or where the bolt is to be used again. */
  private void reached(Bolt bolt, boolean forbidden) {
    Optional<Joint> stated = Joints.stated(bolt, stage.fastener());
    Reach reach = reach(stated.orElseGet(() -> Joints.longest(bolt)), turn());
    boolean surely = reach == Reach.ABOUT_YIELD;
    boolean may = stated.isPresent() && reach != Reach.BELOW_YIELD;
    boolean again = !stage.fastener().part().oneTimeUse();
    if ((forbidden && (surely || may)) || (again && surely && stated.isPresent())) {
      String found =
          String.format(
              Locale.ROOT,
              "%.0f° after %s: %s %s yield%s",
              turn(),
              snug(),
              Bolts.words(bolt, stage.variant()),
              surely ? "reaches" : "may reach",
              stated.map(j -> "; " + yielded(j)).orElse(" even in a long joint"));
      String expected = forbidden ? "an angle below yield" : "one use, or an angle below yield";
      add(CheckRule.YIELD_NOT_MEANT, found, expected);
    } else if (!forbidden) {
      nearYield(bolt);
    }
  }

  private void nearYield(Bolt bolt) {
    boolean soft = bolt.strength().compareTo(PropertyClass.C8_8) <= 0;
    Joint joint = Joints.stated(bolt, stage.fastener()).orElseGet(() -> Joints.of(bolt, LONG));
    if (soft && reach(joint, turn()) != Reach.BELOW_YIELD) {
      String expected =
          "to be meant: " + bolt + " may reach yield even when 6 diameters are clamped";
      add(CheckRule.NEAR_YIELD, stage.stage().target() + " on " + bolt, expected);
    }
  }

  private Reach reach(Joint joint, double degrees) {
    AngleJob job = AngleJob.of(joint.bolt(), snug(), Rotation.degrees(degrees), joint.stiffness());
    return AngleTightening.expect(job, Optional.of(rubs.both())) instanceof Expected expected
        ? expected.reach()
        : Reach.BELOW_YIELD;
  }

  /**
   * The share of joints that yields, with torque, wrench, angle and friction between their ends.
   */
  private String yielded(Joint joint) {
    TorqueStage snug = (TorqueStage) stage.variant().stages().get(0);
    double plusMinus = 0;
    for (Stage each : stage.variant().stages()) {
      snug = each instanceof TorqueStage torque ? torque : snug;
      plusMinus = each instanceof AngleStage a && !a.backOff() ? plusMinus + deviation(a) : 0;
    }
    Range<Rotation> turn =
        new Range<>(
            Rotation.degrees(Math.max(1, turn() - plusMinus)),
            Rotation.degrees(turn() + plusMinus));
    Deviation wrench = ToolRules.wrench(tools, snug.setting());
    return Spread.of(joint, rubs, snug, Optional.of(turn), wrench).yielded();
  }

  private static double deviation(AngleStage angle) {
    return angle.plusMinus().doubleValue();
  }

  /** The angle turned on since the last torque, in degrees. */
  private double turn() {
    return turn(stage.variant());
  }

  static double turn(Variant variant) {
    double turn = 0;
    for (Stage each : variant.stages()) {
      boolean on = each instanceof AngleStage angle && !angle.backOff();
      turn = on ? turn + each.amount().doubleValue() : 0;
    }
    return turn;
  }

  private Torque snug() {
    return snug(stage.variant());
  }

  /** The last torque of a variant. */
  static Torque snug(Variant variant) {
    Torque snug = ((TorqueStage) variant.stages().get(0)).target();
    for (Stage each : variant.stages()) {
      snug = each instanceof TorqueStage torque ? torque.target() : snug;
    }
    return snug;
  }

  private void add(CheckRule rule, String found, String expected) {
    findings.add(spot.at(stage.field("angle"), rule, found, expected));
  }
}
