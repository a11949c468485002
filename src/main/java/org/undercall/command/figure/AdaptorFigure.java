package org.undercall.command.figure;

import java.util.List;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Adaptor;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.term.Torque;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What to set on a wrench with an adaptor on its drive. */
@Command(
    name = "adaptor",
    description = "What to set on a wrench with an open-ring head or extension on its drive.",
    mixinStandardHelpOptions = true)
final class AdaptorFigure extends FigureBase {
  @Option(
      names = "--torque",
      paramLabel = "TORQUE",
      required = true,
      converter = TypedTorque.class,
      description = "The torque wanted at the fastener.")
  private Torque torque;

  @Option(
      names = "--wrench",
      paramLabel = "MM",
      required = true,
      description = "From the middle of the grip to the square drive.")
  private double wrench;

  @Option(
      names = "--extension",
      paramLabel = "MM",
      required = true,
      description = "From the square drive to the fastener.")
  private double extension;

  @Option(
      names = "--at",
      paramLabel = "DEGREES",
      defaultValue = "0",
      description = "0 in line with the wrench (default), 90 across, 180 turned back.")
  private double angle;

  @Override
  String title() {
    return "Setting for " + torque + " with an adaptor";
  }

  @Override
  Figure figure() {
    Adaptor adaptor = new Adaptor(Length.mm(wrench), Length.mm(extension), Rotation.degrees(angle));
    String unit = torque.unit().symbol();
    double setting = adaptor.setting(torque).amount().doubleValue();
    double unset = adaptor.atFastener(torque).amount().doubleValue();
    return Figure.of(
        "T set = T L / (L + E cos θ)",
        List.of(
            Item.words("torque at the fastener", torque),
            Item.number("wrench L", wrench, 1, "mm"),
            Item.number("adaptor E", extension, 1, "mm"),
            Item.number("angle θ", angle, 1, "°")),
        List.of(
            Item.number("setting", setting, 1, unit),
            Item.number("at the fastener if the torque itself were set", unset, 1, unit)),
        "the lever rule",
        "holds only if the hand pulls at the middle of the grip. The maker's repair data rules.");
  }
}
