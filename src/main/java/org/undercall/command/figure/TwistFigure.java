package org.undercall.command.figure;

import java.util.List;
import org.undercall.adapter.drawing.TwistPlot;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PresetLimit;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The twist that a bonded bush keeps if it is tightened at some height. */
@Command(
    name = "twist",
    description = "The twist that a bonded bush keeps if it is tightened at some height.",
    mixinStandardHelpOptions = true)
final class TwistFigure extends FigureBase {
  @Option(
      names = "--arm",
      paramLabel = "MM",
      required = true,
      description = "From the inner pivot to the outer joint.")
  private double arm;

  @Option(
      names = "--ride",
      paramLabel = "MM",
      required = true,
      description = "Height of the outer joint above the inner pivot at ride height.")
  private double ride;

  @Option(names = "--droop", paramLabel = "MM", required = true, description = "At full droop.")
  private double droop;

  @Option(names = "--bump", paramLabel = "MM", required = true, description = "At full bump.")
  private double bump;

  @Option(
      names = "--at",
      paramLabel = "MM",
      required = true,
      description = "Its height while the bush is tightened.")
  private double here;

  @Option(
      names = "--gate",
      paramLabel = "MM",
      defaultValue = "10",
      description = "Height tolerance of the procedure, either way (default: ${DEFAULT-VALUE}).")
  private double gate;

  @Mixin private PlotOptions plot;

  private ArmSwing swing() {
    Range<Height> travel = new Range<>(Height.mm(droop), Height.mm(bump));
    return new ArmSwing(Length.mm(arm), Height.mm(ride), travel);
  }

  @Override
  Figure figure() throws Fault {
    ArmSwing swing = swing();
    if (!swing.travel().contains(Height.mm(here))) {
      throw new Fault(
          FigureCode.OUT_OF_TRAVEL,
          "--at",
          Height.mm(here) + "",
          "a height within " + swing.travel());
    }
    ArmSwing.Twist twist = swing.tightenedAt(Height.mm(here));
    Range<Height> tolerance = PresetLimit.PROPOSED.tolerance(swing);
    boolean warn = PresetLimit.PROPOSED.exceededBy(twist.atRide());
    return new Figure(
        "twist = asin(height/r) less asin(height when tightened/r)",
        List.of(
            Item.number("arm r", arm, 1, "mm"),
            Item.number("outer joint above the pivot at ride height", ride, 1, "mm"),
            Item.range("travel", droop, bump, 1, "mm"),
            Item.number("height when tightened", here, 1, "mm"),
            Item.number("gate, either way", Length.mm(gate).millimetres(), 1, "mm")),
        List.of(
            degrees("preset twist at ride height", twist.atRide()),
            degrees("twist at full droop", twist.atDroop()),
            degrees("twist at full bump", twist.atBump()),
            Item.number("twist for one mm", swing.perMillimetreAtRide().degrees(), 3, "°"),
            Item.range(
                "heights about ride height that keep it within 5°",
                tolerance.low().millimetres(),
                tolerance.high().millimetres(),
                0,
                "mm"),
            Item.words("within the gate", Math.abs(here - ride) <= gate ? "yes" : "no"),
            Item.words("preset twist above 5°", warn ? "yes, a warning is due" : "no")),
        "plane geometry; the 5° are a proposal of this program, no published limit exists",
        "the arm is taken to swing in one plane about one axis. The maker's repair data rules.");
  }

  private static Item degrees(String name, Rotation twist) {
    return Item.number(name, twist.degrees(), 1, "°");
  }

  @Override
  void draw() throws Fault {
    if (plot.wanted()) {
      plot.write(TwistPlot.of(swing(), Height.mm(here), Length.mm(gate), plot.note()));
    }
  }
}
