package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.drawing.TwistPlot;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Sketch;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.MotionRatio;
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
final class TwistFigure extends PlottedFigure {
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

  @Option(
      names = "--ratio",
      paramLabel = "RATIO",
      defaultValue = "1",
      description =
          "Millimetres of the outer joint for one of the wheel, where the gate is measured"
              + " (default: ${DEFAULT-VALUE}).")
  private double ratio;

  @Mixin private BushOptions bush;

  @Override
  String title() {
    return "Twist of a bonded bush tightened at " + Height.mm(here);
  }

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
    MotionRatio motion = new MotionRatio(ratio);
    double wheel = motion.ofWheel(Height.mm(here - ride)).millimetres();
    List<Item> inputs = new ArrayList<>(inputs());
    List<Item> results = new ArrayList<>(results(swing, twist));
    if (ratio != 1) {
      inputs.add(Item.number("joint for one mm of the wheel", ratio, 2, "mm"));
      results.add(Item.number("height of the wheel above ride height", wheel, 1, "mm"));
      results.add(
          Item.range(
              "heights of the wheel that keep it within 5°",
              motion.ofWheel(tolerance.low()).millimetres(),
              motion.ofWheel(tolerance.high()).millimetres(),
              0,
              "mm"));
    }
    results.add(Item.words("within the gate", Math.abs(wheel) <= gate ? "yes" : "no"));
    results.add(Item.words("preset twist above 5°", warn ? "yes, a warning is due" : "no"));
    inputs.addAll(bush.inputs());
    results.addAll(bush.results(swing, Height.mm(here)));
    return Figure.of(
        "twist = asin(height/r) less asin(height when tightened/r)" + bush.formula(),
        inputs,
        results,
        "plane geometry; the 5° are a proposal of this program, no published limit exists",
        "the arm is taken to swing in one plane about one axis. The maker's repair data rules.");
  }

  private static Item degrees(String name, Rotation twist) {
    return Item.number(name, twist.degrees(), 1, "°");
  }

  private List<Item> inputs() {
    return List.of(
        Item.number("arm r", arm, 1, "mm"),
        Item.number("outer joint above the pivot at ride height", ride, 1, "mm"),
        Item.range("travel", droop, bump, 1, "mm"),
        Item.number("height when tightened", here, 1, "mm"),
        Item.number("gate, either way", Length.mm(gate).millimetres(), 1, "mm"));
  }

  private static List<Item> results(ArmSwing swing, ArmSwing.Twist twist) {
    Range<Height> tolerance = PresetLimit.PROPOSED.tolerance(swing);
    return List.of(
        degrees("preset twist at ride height", twist.atRide()),
        degrees("twist at full droop", twist.atDroop()),
        degrees("twist at full bump", twist.atBump()),
        Item.number("twist for one mm", swing.perMillimetreAtRide().degrees(), 3, "°"),
        Item.range(
            "heights about ride height that keep it within 5°",
            tolerance.low().millimetres(),
            tolerance.high().millimetres(),
            0,
            "mm"));
  }

  @Override
  List<Sketch> pictures(PlotSize size) throws Fault {
    Length atJoint = Length.mm(gate).times(new MotionRatio(ratio).joint());
    String svg = TwistPlot.of(swing(), Height.mm(here), atJoint, note(), size);
    return List.of(new Sketch("Twist against height", svg));
  }
}
