package org.undercall.command.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.ScaleReading;
import org.undercall.core.fastening.Units;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Converts a torque to another unit and to the marks of a scale. */
@Command(
    name = "convert",
    description = "Convert a torque to another unit, and to the marks of a scale.",
    mixinStandardHelpOptions = true)
final class ConvertFigure extends FigureBase {
  private static final MathContext SHOWN = new MathContext(7);

  @Parameters(
      paramLabel = "TORQUE",
      converter = TypedTorque.class,
      description = "A torque such as 110Nm, 62lbf.ft, 540lbf.in or 11kgf.m.")
  private Torque torque;

  @Option(
      names = "--to",
      paramLabel = "UNIT",
      required = true,
      converter = TypedTorque.Unit.class,
      description = "The unit wanted.")
  private TorqueUnit unit;

  @Option(names = "--step", paramLabel = "STEP", description = "The step of the tool's scale.")
  private BigDecimal step;

  @Override
  String title() {
    return torque + " in " + unit.symbol();
  }

  @Override
  Figure figure() {
    Torque converted = Units.convert(torque, unit);
    List<Item> results = new ArrayList<>();
    BigDecimal rounded = converted.amount().round(SHOWN).stripTrailingZeros();
    String text = rounded.toPlainString() + " " + unit.symbol();
    double value = converted.amount().doubleValue();
    results.add(Item.shown("torque", text, value, unit.symbol()));
    if (step != null) {
      results.add(Item.words("on the scale", ScaleReading.of(torque, unit, step).shown()));
    }
    return Figure.of(
        "amount times the newton metres of its unit, over those of the other",
        List.of(Item.words("torque", torque)),
        results,
        "exact definitions: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, 9.806 65 m/s²",
        "the torque as specified stays the one that counts; the rounded one is only set.");
  }
}
