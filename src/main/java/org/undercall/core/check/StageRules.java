package org.undercall.core.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.Torque;

/** Rules about the stages of a fastener among themselves, and about their tolerances. */
final class StageRules {
  /** The share of its target from which on a tolerance leaves nothing of it. */
  private static final double EMPTY = 0.75;

  private static final double WIDE = 1 / 3.0;
  private static final BigDecimal FULL_TURN = new BigDecimal("360");
  private static final BigDecimal HUNDRED = new BigDecimal("100");

  private final Spot spot;
  private final List<Tool> tools;
  private final List<Finding> findings = new ArrayList<>();

  private StageRules(Spot spot, List<Tool> tools) {
    this.spot = spot;
    this.tools = tools;
  }

  static List<Finding> check(Spot spot, List<Tool> tools) {
    StageRules rules = new StageRules(spot, tools);
    List<Variant> variants = spot.fastener().map(Fastener::variants).orElse(List.of());
    for (int v = 0; v < variants.size(); v++) {
      rules.variant("fastener/variants/" + v + "/stages/", variants.get(v).stages());
    }
    return rules.findings;
  }

  private void variant(String path, List<Stage> stages) {
    for (int i = 0; i < stages.size(); i++) {
      String at = path + i + "/";
      tolerance(at, stages.get(i));
      if (stages.get(i) instanceof TorqueStage torque) {
        narrow(at, torque);
        if (i > 0 && stages.get(i - 1) instanceof TorqueStage before) {
          rises(at, before, torque);
        }
      } else if (stages.get(i) instanceof AngleStage angle) {
        band(at, angle, stages.subList(0, i));
        backOff(at, angle, stages.subList(i + 1, stages.size()));
      }
    }
  }

  private void tolerance(String at, Stage stage) {
    BigDecimal plusMinus =
        stage instanceof TorqueStage t ? t.plusMinus() : ((AngleStage) stage).plusMinus();
    BigDecimal target =
        stage instanceof TorqueStage t ? t.target().amount() : ((AngleStage) stage).amount();
    double share = plusMinus.doubleValue() / target.doubleValue();
    if (share > WIDE) {
      boolean range = stage instanceof TorqueStage t && t.form() == TorqueStage.Form.RANGE;
      String found =
          "±"
              + plusMinus.toPlainString()
              + " about "
              + target.toPlainString()
              + (range ? ", the middle of a range" : "");
      findings.add(
          spot.at(
              at + (range ? "upTo" : "plusMinus"),
              share >= EMPTY ? CheckRule.TOLERANCE_EMPTY : CheckRule.TOLERANCE_WIDE,
              found,
              "at most a third, such as ±" + tenth(target)));
    }
  }

  private static String tenth(BigDecimal target) {
    return target.movePointLeft(1).round(new MathContext(2)).stripTrailingZeros().toPlainString();
  }

  /** A wrench that deviates by more than the tolerance cannot show that it is kept. */
  private void narrow(String at, TorqueStage stage) {
    Torque set = stage.setting();
    Optional<BigDecimal> percent = ToolRules.deviation(tools, set);
    BigDecimal share =
        stage.plusMinus().multiply(HUNDRED).divide(stage.target().amount(), MathContext.DECIMAL32);
    if (stage.form() != TorqueStage.Form.RANGE
        && percent.filter(p -> share.compareTo(p) < 0).isPresent()) {
      String found =
          "±"
              + stage.plusMinus().toPlainString()
              + " on "
              + stage.target()
              + ", "
              + share.round(new MathContext(2)).toPlainString()
              + " %";
      String expected = "at least the " + plain(percent.get()) + " % that the wrench may deviate";
      findings.add(spot.at(at + "plusMinus", CheckRule.TOLERANCE_NARROW, found, expected));
    }
  }

  private void rises(String at, TorqueStage before, TorqueStage now) {
    boolean check = now.form() == TorqueStage.Form.CHECK_PASS;
    if (now.most().compareTo(before.least()) < 0) {
      String found = now.target() + " after " + before.target();
      findings.add(
          spot.at(at + "torque", CheckRule.STAGES_FALL, found, "a higher torque, or a back-off"));
    } else if (!check && now.least().compareTo(before.most()) <= 0) {
      String found = window(now) + " after " + window(before);
      findings.add(
          spot.at(
              at + "torque", CheckRule.STAGES_OVERLAP, found, "a window above " + before.most()));
    }
  }

  private static String window(TorqueStage stage) {
    return plain(stage.least().amount()) + " to " + stage.most();
  }

  private void band(String at, AngleStage angle, List<Stage> before) {
    Optional<TorqueStage> snug =
        before.stream()
            .flatMap(s -> s instanceof TorqueStage t ? Stream.of(t) : Stream.empty())
            .reduce((one, other) -> other);
    angle
        .finalTorque()
        .filter(band -> snug.filter(s -> band.most().compareTo(s.least()) < 0).isPresent())
        .ifPresent(
            band ->
                findings.add(
                    spot.at(
                        at + "finalTorque/most",
                        CheckRule.BAND_BELOW,
                        band.most() + " after " + snug.get().target(),
                        "more than the torque before the angle")));
  }

  private void backOff(String at, AngleStage angle, List<Stage> later) {
    if (!angle.backOff()) {
      return;
    }
    if (angle.amount().compareTo(FULL_TURN) > 0) {
      findings.add(
          spot.at(at + "backOff", CheckRule.BACK_OFF_WIDE, angle.target() + "", "at most 360°"));
    }
    BigDecimal on = BigDecimal.ZERO;
    for (Stage stage : later) {
      if (stage instanceof TorqueStage || ((AngleStage) stage).backOff()) {
        return;
      }
      on = on.add(stage.amount());
    }
    if (on.signum() > 0 && on.compareTo(angle.amount()) <= 0) {
      String found = angle.target() + " back and " + plain(on) + "° on";
      findings.add(spot.at(at + "backOff", CheckRule.NET_LOOSENED, found, "a torque between them"));
    }
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
