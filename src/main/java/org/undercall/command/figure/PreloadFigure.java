package org.undercall.command.figure;

import java.util.List;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Plausibility;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.TorqueAlone;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The preload that a torque makes, over the range of friction. */
@Command(
    name = "preload",
    description = "The preload that a torque makes, and whether the bolt bears it.",
    mixinStandardHelpOptions = true)
final class PreloadFigure extends FigureBase {
  @Mixin private BoltOptions options;

  @Override
  Figure figure() throws Fault {
    Bolt bolt = options.bolt();
    Range<Friction> friction = options.friction();
    TorqueAlone alone = TorqueAlone.of(bolt, options.torque(), friction);
    Plausibility judged = Plausibility.of(bolt, options.torque(), friction);
    return new Figure(
        "F = T / (0.16 P + 0.58 d2 µ + DKm/2 µ)",
        options.inputs(),
        List.of(
            forces("preload", alone.preload()),
            forces("preload at yield", alone.yieldPreload()),
            torques("torque at yield", alone.yieldTorque()),
            torques("torque at breaking", alone.breakingTorque()),
            Item.range(
                "share of the yield preload",
                judged.lowest() * 100,
                judged.highest() * 100,
                0,
                "%"),
            Item.words("judgement", words(judged.verdict(), alone))),
        "VDI 2230 Part 1 (long form, yield with plastic torsion); ISO 898-1:2013 (strengths)",
        "torque alone leaves the preload open by this much. This is " + ESTIMATE);
  }

  static Item forces(String name, Range<Force> range) {
    return Item.range(name, range.low().inKilonewtons(), range.high().inKilonewtons(), 1, "kN");
  }

  private static Item torques(String name, Range<Torque> range) {
    return Item.range(name, range.low().inNewtonMetres(), range.high().inNewtonMetres(), 0, "N·m");
  }

  private static String words(Plausibility.Verdict verdict, TorqueAlone alone) {
    return verdict == Plausibility.Verdict.TOO_LOW
        ? "hardly any preload, whatever the friction"
        : alone.reach().words();
  }
}
