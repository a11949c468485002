package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.drawing.AnglePlot;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Sketch;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.AngleWindow;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Stretch;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The preload after a torque stage and an angle stage. */
@Command(
    name = "angle",
    description = "The preload after a torque stage and an angle stage.",
    mixinStandardHelpOptions = true)
final class AngleFigure extends PlottedFigure {
  @Mixin private TighteningOptions way;

  @Override
  Optional<Taken> taken() throws Fault {
    return way.taken();
  }

  @Override
  String title() throws Fault {
    return "Preload of " + way.bolt() + " after " + way.torque() + " and " + way.turnNeeded();
  }

  @Override
  Figure figure() throws Fault {
    Optional<Joint> joint = way.joint();
    Range<Friction> friction = way.friction().both();
    AngleJob job =
        new AngleJob(way.bolt(), way.torque(), way.turnNeeded(), joint.map(Joint::stiffness));
    AngleOutcome outcome = AngleTightening.expect(job, Optional.of(friction));
    List<Item> results = new ArrayList<>();
    if (outcome instanceof Expected expected) {
      expected(expected, results);
      beyond(joint.orElseThrow(), friction, results);
    } else {
      results.add(Item.words("preload", outcome));
    }
    return Figure.of(
        "F = FM(torque) + P angle/360 / (δS + δP), at most the yield preload",
        way.inputs(),
        results,
        "VDI 2230 Part 1 (long form, compliances, yield with plastic torsion); ISO 898-1:2013",
        "the parts are taken to lie flat from the torque stage on, and beyond yield the preload is"
            + " taken as the yield preload. This is "
            + ESTIMATE);
  }

  private static void expected(Expected expected, List<Item> results) {
    results.add(PreloadFigure.forces("preload after the torque stage", expected.afterTorque()));
    results.add(PreloadFigure.forces("preload after the angle stage", expected.preload()));
    results.add(PreloadFigure.forces("preload at yield", expected.yieldPreload()));
    results.add(
        Item.range(
            "angle at which yield begins",
            expected.angleToYield().low().degrees(),
            expected.angleToYield().high().degrees(),
            0,
            "°"));
    results.add(
        Item.words(
            "judgement",
            switch (expected.reach()) {
              case BELOW_YIELD -> "below yield, whatever the friction";
              case MAY_REACH_YIELD -> "may reach yield, depending on the friction";
              case ABOUT_YIELD -> "reaches yield, whatever the friction";
            }));
  }

  private void beyond(Joint joint, Range<Friction> friction, List<Item> results) throws Fault {
    Stretch most = Stretch.most(joint, way.torque(), way.turnNeeded(), friction);
    results.add(Item.words("stretch at most", most));
    AngleWindow window =
        AngleWindow.toYield(joint, way.torque(), friction, Stretch.Verdict.BEYOND_YIELD);
    results.add(Item.words("angles to yield and not near the limit", window));
  }

  @Override
  List<Sketch> pictures(PlotSize size) throws Fault {
    Optional<Joint> joint = way.joint();
    if (joint.isEmpty()) {
      return List.of();
    }
    String svg =
        AnglePlot.of(
            joint.get(), way.torque(), way.turnNeeded(), way.friction().both(), note(), size);
    return List.of(new Sketch("Preload against angle", svg));
  }
}
