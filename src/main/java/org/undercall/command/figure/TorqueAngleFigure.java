package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.drawing.TorqueAnglePlot;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Sketch;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.ExpectedTorque;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * The torque that a wrench should show after an angle stage, and what one that was read hints at.
 */
@Command(
    name = "torque-angle",
    description = "The torque to expect after an angle stage, and what one that was read hints at.",
    mixinStandardHelpOptions = true)
final class TorqueAngleFigure extends PlottedFigure {
  @Mixin private TighteningOptions way;

  @Option(
      names = "--reading",
      paramLabel = "TORQUE",
      converter = TypedTorque.class,
      description = "The torque that was read at the end of the angle.")
  private Torque reading;

  @Option(
      names = "--wrench",
      paramLabel = "PERCENT",
      description = "Error of the torque read, either way (default: the procedure's, or 4).")
  private Double wrench;

  @Option(
      names = "--softness",
      paramLabel = "PERCENT",
      defaultValue = "20",
      description = "How much softer or stiffer the joint may be (default: ${DEFAULT-VALUE}).")
  private double softness;

  @Override
  Optional<Taken> taken() throws Fault {
    return way.taken();
  }

  @Override
  String title() throws Fault {
    return "Torque of " + way.bolt() + " after " + way.torque() + " and " + way.turnNeeded();
  }

  private double wrench() throws Fault {
    return wrench != null ? wrench : taken().flatMap(Taken::wrench).orElse(SpreadOptions.ISO_6789);
  }

  private ExpectedTorque expected() throws Fault {
    return new ExpectedTorque(
        way.jointNeeded(),
        way.torque(),
        way.friction().both(),
        new Deviation(wrench()),
        softness / 100);
  }

  @Override
  Figure figure() throws Fault {
    Rotation turn = way.turnNeeded();
    List<Item> inputs = new ArrayList<>(way.inputs());
    inputs.add(Item.number("error of the torque read, either way", wrench(), 1, "%"));
    inputs.add(Item.number("joint softer or stiffer by", softness, 0, "%"));
    if (reading != null) {
      inputs.add(Item.words("torque read after the angle", reading));
    }
    List<Item> results = new ArrayList<>();
    results.add(torques("torque to expect after the angle", expected().after(turn)));
    results.add(
        torques(
            "torque to expect half-way", expected().after(Rotation.degrees(turn.degrees() / 2))));
    if (reading != null) {
      results.add(Item.words("hint, not a verdict", words(expected().judge(reading, turn))));
    }
    return Figure.of(
        "T = (0.16 P + 0.58 d2 µ + DKm/2 µ) F(angle), F growing by P angle/360/(δS + δP) up to"
            + " yield",
        inputs,
        results,
        "VDI 2230 Part 1; yield up to 1.2 times the least of its class; the softness is a choice of"
            + " this program",
        "a torque outside is a hint to look, one inside proves nothing. The band is wide where the"
            + " friction is not known. This is "
            + ESTIMATE);
  }

  static Item torques(String name, Range<Torque> range) {
    return Item.range(name, range.low().inNewtonMetres(), range.high().inNewtonMetres(), 0, "N·m");
  }

  private static String words(ExpectedTorque.Hint hint) {
    return switch (hint) {
      case TOO_SOFT ->
          "less than expected, too soft: it may have yielded early, be of a lower class, strip its"
              + " thread, or close a gap. Stop, look, do not turn on";
      case EXPECTED -> "as expected; this proves nothing";
      case TOO_HARD ->
          "more than expected, too hard: it may be cross-threaded, dirty or dry, or have bottomed"
              + " out. Stop, look, do not turn on";
    };
  }

  @Override
  List<Sketch> pictures(PlotSize size) throws Fault {
    String svg =
        TorqueAnglePlot.of(
            expected(), way.turnNeeded(), Optional.ofNullable(reading), note(), size);
    return List.of(new Sketch("Torque against angle", svg));
  }
}
