package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.drawing.AnglePlot;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.AngleJob;
import org.undercall.core.fastening.AngleOutcome;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleTightening;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Stretch;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The preload after a torque stage and an angle stage. */
@Command(
    name = "angle",
    description = "The preload after a torque stage and an angle stage.",
    mixinStandardHelpOptions = true)
final class AngleFigure extends FigureBase {
  @Mixin private BoltOptions options;

  @Option(
      names = "--angle",
      paramLabel = "DEGREES",
      required = true,
      description = "The angle of the angle stage.")
  private double angle;

  @Mixin private JointOptions joint;
  @Mixin private PlotOptions plot;

  private AngleJob job() throws Fault {
    return new AngleJob(
        options.bolt(), options.torque(), Rotation.degrees(angle), joint.stiffness(options.bolt()));
  }

  @Override
  Figure figure() throws Fault {
    AngleOutcome outcome = AngleTightening.expect(job(), Optional.of(options.friction()));
    List<Item> inputs = new ArrayList<>(options.inputs());
    inputs.add(Item.number("angle", angle, 1, "°"));
    inputs.addAll(joint.inputs());
    return new Figure(
        "F = FM(torque) + P angle/360 / (δS + δP), at most the yield preload",
        inputs,
        outcome instanceof Expected expected
            ? results(expected, worst())
            : List.of(Item.words("preload", outcome)),
        "VDI 2230 Part 1 (long form, compliances, yield with plastic torsion); ISO 898-1:2013",
        "the parts are taken to lie flat from the torque stage on, and beyond yield the preload is"
            + " taken as the yield preload. This is "
            + ESTIMATE);
  }

  /** The stretch where the friction lets it go farthest; empty without the sizes of the joint. */
  private Optional<Stretch> worst() throws Fault {
    Range<Friction> friction = options.friction();
    return joint
        .joint(options.bolt())
        .map(j -> Stretch.most(j, options.torque(), Rotation.degrees(angle), friction));
  }

  private static List<Item> results(Expected expected, Optional<Stretch> worst) {
    return List.of(
        PreloadFigure.forces("preload after the torque stage", expected.afterTorque()),
        PreloadFigure.forces("preload after the angle stage", expected.preload()),
        PreloadFigure.forces("preload at yield", expected.yieldPreload()),
        Item.range(
            "angle at which yield begins",
            expected.angleToYield().low().degrees(),
            expected.angleToYield().high().degrees(),
            0,
            "°"),
        Item.words(
            "judgement",
            switch (expected.reach()) {
              case BELOW_YIELD -> "below yield, whatever the friction";
              case MAY_REACH_YIELD -> "may reach yield, depending on the friction";
              case ABOUT_YIELD -> "reaches yield, whatever the friction";
            }),
        Item.words("stretch at most", worst.map(Stretch::toString).orElse("not known")));
  }

  @Override
  void draw() throws Fault {
    if (plot.wanted()) {
      if (job().joint().isEmpty()) {
        throw new Fault(
            FigureCode.NO_SIZES, "--plot", "no sizes of the joint", "--clamped and the others");
      }
      plot.write(AnglePlot.of(job(), options.friction(), plot.note()));
    }
  }
}
