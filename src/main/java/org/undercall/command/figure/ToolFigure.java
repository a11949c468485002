package org.undercall.command.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.ToolRange;
import org.undercall.core.fastening.TorqueWindow;
import org.undercall.core.fastening.Units;
import org.undercall.core.fastening.WrenchClass;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The true torques behind a setting of a wrench. */
@Command(
    name = "tool",
    description = "The true torques behind a setting, and whether the wrench is right for it.",
    mixinStandardHelpOptions = true)
final class ToolFigure extends FigureBase {
  @Option(
      names = "--torque",
      paramLabel = "TORQUE",
      required = true,
      converter = TypedTorque.class,
      description = "The torque set or read.")
  private Torque torque;

  @Option(
      names = "--most",
      paramLabel = "TORQUE",
      required = true,
      converter = TypedTorque.class,
      description = "Largest torque of the wrench.")
  private Torque most;

  @Option(
      names = "--type",
      paramLabel = "TYPE",
      defaultValue = "II_A",
      description = "ISO 6789 type and class, I_A to II_G (default: ${DEFAULT-VALUE}).")
  private WrenchClass type;

  @Option(
      names = "--plus-minus",
      paramLabel = "AMOUNT",
      description = "Tolerance of the specification, in the unit of the torque.")
  private BigDecimal plusMinus;

  @Option(
      names = "--uncertainty",
      paramLabel = "PERCENT",
      description =
          "Expanded relative uncertainty interval of a calibration certificate, in place of the"
              + " type.")
  private Double uncertainty;

  @Override
  String title() {
    return "Torque wrench up to " + most + " at " + torque;
  }

  @Override
  Figure figure() throws Fault {
    Deviation deviation = uncertainty == null ? type.permissible(most) : new Deviation(uncertainty);
    Range<Torque> window = TorqueWindow.of(torque, deviation);
    ToolRange range = ToolRange.upTo(most);
    List<Item> results = new ArrayList<>();
    results.add(torques("true torque", window));
    results.add(torques("range of the wrench", new Range<>(range.least(), range.most())));
    results.add(
        Item.words(
            "torque in the range",
            switch (range.place(torque)) {
              case BELOW -> "no, below it";
              case WITHIN -> "yes";
              case ABOVE -> "no, above it";
            }));
    if (plusMinus != null) {
      boolean meets = TorqueWindow.meets(window, permitted());
      results.add(
          Item.words("whole window within the tolerance", meets ? "yes" : "no, not for certain"));
    }
    return Figure.of(
        "true torque from T/(1 + a) to T/(1 - a)",
        List.of(
            Item.words("torque", torque),
            Item.words("wrench", "up to " + most + ", type " + type.name().replace('_', ' ')),
            uncertainty == null
                ? Item.words("permissible deviation a", deviation)
                : Item.number("expanded uncertainty interval a", uncertainty, 1, "%")),
        results,
        "ISO 6789:2003 and ISO 6789-1:2017 (deviations but those of II A from memory); ISO 6789-2:2017 for a certificate",
        "holds for a wrench within its calibration, pulled steadily and square.");
  }

  private Range<Torque> permitted() throws Fault {
    BigDecimal low = torque.amount().subtract(plusMinus);
    if (plusMinus.signum() < 0 || low.signum() <= 0) {
      throw new Fault(
          FigureCode.TOLERANCE, "--plus-minus", plusMinus + "", "0 or more, less than the torque");
    }
    Torque high = new Torque(torque.amount().add(plusMinus), torque.unit());
    return new Range<>(new Torque(low, torque.unit()), high);
  }

  private Item torques(String name, Range<Torque> range) {
    double low = Units.convert(range.low(), torque.unit()).amount().doubleValue();
    double high = Units.convert(range.high(), torque.unit()).amount().doubleValue();
    return Item.range(name, low, high, 1, torque.unit().symbol());
  }
}
