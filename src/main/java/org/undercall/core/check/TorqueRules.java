package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.TorqueWindow;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.JointKind;
import org.undercall.core.procedure.Stage.TorqueStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.term.Torque;

/**
 * Rules about a torque, its thread and its class.
 *
 * <p>Without a head marking, a torque is too high only if the strongest class does not bear it, and
 * too low only if it is so for the weakest.
 */
final class TorqueRules {
  private static final double LOW = 0.1;

  /** A bush slides on its sleeve's ends until they are pressed. */
  private static final double LOW_FOR_A_BUSH = 0.15;

  private static final double HARDLY_USED = 0.4;
  private static final Friction USUAL = Friction.of(0.12);

  private final Spot spot;
  private final List<Tool> tools;
  private final Staged<TorqueStage> stage;
  private final Rubs rubs;
  private final List<Finding> findings = new ArrayList<>();

  private TorqueRules(Spot spot, List<Tool> tools, Staged<TorqueStage> stage, Rubs rubs) {
    this.spot = spot;
    this.tools = tools;
    this.stage = stage;
    this.rubs = rubs;
  }

  static List<Finding> check(Spot spot, List<Tool> tools) {
    List<Finding> findings = new ArrayList<>();
    for (Staged<TorqueStage> stage : Staged.torques(spot)) {
      Rubs.of(stage.fastener())
          .map(rubs -> new TorqueRules(spot, tools, stage, rubs).judged())
          .ifPresent(findings::addAll);
    }
    return findings;
  }

  private List<Finding> judged() {
    Bolts.of(stage.fastener(), stage.variant(), PropertyClass.C12_9).ifPresent(this::high);
    if (stage.last()) {
      Bolts.of(stage.fastener(), stage.variant(), PropertyClass.C4_6).ifPresent(this::low);
      Bolts.marked(stage.fastener(), stage.variant()).ifPresent(this::hardlyUsed);
    } else if (stage.beforeAngle()) {
      Bolts.of(stage.fastener(), stage.variant(), PropertyClass.C8_8).ifPresent(this::snug);
    }
    return findings;
  }

  private void high(Bolt bolt) {
    double target = target().inNewtonMetres();
    double from = rubs.yieldsFrom(bolt);
    double always = rubs.yieldsAlways(bolt);
    if (target >= always) {
      add(CheckRule.TORQUE_TOO_HIGH, target() + "", yields(bolt, always, rubs.at(1)));
    } else if (target >= from) {
      String found = target() + "; " + spread(bolt).yielded();
      add(CheckRule.TORQUE_MAY_BE_TOO_HIGH, found, yields(bolt, from, rubs.at(0)));
    } else if (window().high().inNewtonMetres() >= from && !spread(bolt).hardlyYields()) {
      String found =
          String.format(
              Locale.ROOT,
              "%s, with tolerance and wrench up to %.0f N·m; %s",
              target(),
              window().high().inNewtonMetres(),
              spread(bolt).yielded());
      add(CheckRule.TOP_YIELDS, found, yields(bolt, from, rubs.at(0)));
    }
  }

  private String yields(Bolt bolt, double limit, Rubs friction) {
    return String.format(
        Locale.ROOT,
        "less than %.0f N·m, where %s yields at friction %s",
        limit,
        Bolts.words(bolt, stage.variant()),
        friction.thread().low());
  }

  private void low(Bolt bolt) {
    String words = Bolts.words(bolt, stage.variant());
    String expected = "a tenth of the yield preload of " + words + " or more";
    Torque bottom = window().low();
    if (rubs.most(bolt, target()) < LOW) {
      add(CheckRule.TORQUE_TOO_LOW, target() + "", expected);
    } else if (faint(bolt)) {
      String found = target() + " on " + bolt.thread() + " without a class";
      add(CheckRule.TORQUE_FAINT, found, "a tenth of the usual torque of an 8.8 bolt or more");
    } else if (rubs.least(bolt, bottom) < LOW) {
      String found =
          String.format(
              Locale.ROOT,
              "%s, with tolerance and wrench down to %.1f N·m; %s",
              target(),
              window().low().inNewtonMetres(),
              spread(bolt).loose(LOW));
      add(CheckRule.MAY_STAY_LOOSE, found, expected);
    }
  }

  private boolean faint(Bolt bolt) {
    Bolt usual = new Bolt(bolt.thread(), PropertyClass.C8_8, bolt.seat());
    double torque = Assembly.of(usual).torque(USUAL, USUAL).inNewtonMetres();
    return stage.variant().marking().isEmpty() && target().inNewtonMetres() < LOW * torque;
  }

  private void hardlyUsed(Bolt bolt) {
    boolean strong = bolt.strength().compareTo(PropertyClass.C10_9) >= 0;
    boolean once = stage.fastener().part().oneTimeUse();
    boolean part = stage.fastener().part().hardware() == Hardware.BOLT;
    double share = rubs.usual(bolt, target());
    if (strong && once && part && share < HARDLY_USED) {
      String found =
          String.format(
              Locale.ROOT,
              "%s alone, about %.0f %% of the yield preload of %s",
              target(),
              share * 100,
              bolt);
      add(CheckRule.STAGE_MISSING, found, "an angle after it, or more torque");
    }
  }

  private void snug(Bolt bolt) {
    boolean bush =
        stage.fastener().joint().kind().filter(k -> k == JointKind.BONDED_BUSH).isPresent();
    double share = rubs.usual(bolt, target());
    if (share < (bush ? LOW_FOR_A_BUSH : LOW)) {
      String found =
          String.format(
              Locale.ROOT,
              "%s, about %.0f %% of the yield preload of %s",
              target(),
              share * 100,
              Bolts.words(bolt, stage.variant()));
      add(CheckRule.SNUG_FAINT, found, bush ? "15 % or more at a bush" : "10 % or more");
    }
  }

  private Torque target() {
    return stage.stage().target();
  }

  /** What the torque can be, by its tolerance and the wrench. */
  private Range<Torque> window() {
    Deviation wrench = wrench();
    return new Range<>(
        TorqueWindow.of(stage.stage().least(), wrench).low(),
        TorqueWindow.of(stage.stage().most(), wrench).high());
  }

  private Deviation wrench() {
    return ToolRules.wrench(tools, stage.stage().setting());
  }

  private Spread spread(Bolt bolt) {
    Joint joint = Joints.usual(bolt, stage.fastener());
    return Spread.of(joint, rubs, stage.stage(), Optional.empty(), wrench());
  }

  private void add(CheckRule rule, String found, String expected) {
    findings.add(spot.at(stage.field("torque"), rule, found, expected));
  }
}
