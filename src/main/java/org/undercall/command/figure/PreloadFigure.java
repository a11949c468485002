package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.drawing.FrictionPlot;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Sketch;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.NutFactor;
import org.undercall.core.fastening.Plausibility;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.ShortForm;
import org.undercall.core.fastening.SurfaceState;
import org.undercall.core.fastening.ThreadMechanics;
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
final class PreloadFigure extends PlottedFigure {
  @Mixin private BoltOptions options;

  @Override
  Optional<Taken> taken() throws Fault {
    return options.taken();
  }

  @Override
  String title() throws Fault {
    return "Preload of " + options.bolt() + " by " + options.torque();
  }

  @Override
  Figure figure() throws Fault {
    Bolt bolt = options.bolt();
    Range<Friction> friction = options.friction().both();
    TorqueAlone alone = TorqueAlone.of(bolt, options.torque(), friction);
    Plausibility judged = Plausibility.of(bolt, options.torque(), friction);
    List<Item> results =
        new ArrayList<>(
            List.of(
                forces("preload", alone.preload()),
                forces("preload at yield", alone.yieldPreload()),
                TorqueAngleFigure.torques("torque at yield", alone.yieldTorque()),
                TorqueAngleFigure.torques("torque at breaking", alone.breakingTorque()),
                Item.range(
                    "share of the yield preload",
                    judged.lowest() * 100,
                    judged.highest() * 100,
                    0,
                    "%"),
                Item.words("judgement", words(judged.verdict(), alone))));
    results.addAll(otherWays(bolt, friction));
    return Figure.of(
        "F = T / (0.16 P + 0.58 d2 µ + DKm/2 µ)",
        options.inputs(),
        results,
        "VDI 2230 Part 1 (long form, yield with plastic torsion; exact thread); ISO 898-1:2013"
            + " (strengths); published tables of nut factors",
        "torque alone leaves the preload open by this much. This is " + ESTIMATE);
  }

  /** The same by other published forms, to be held against what others reckon. */
  private List<Item> otherWays(Bolt bolt, Range<Friction> friction) throws Fault {
    Length diameter = bolt.thread().diameter();
    List<Item> items = new ArrayList<>();
    Range<Double> more = friction.map(f -> more(bolt, f));
    items.add(
        Item.range("more torque by the exact thread, not linear", more.low(), more.high(), 1, "%"));
    LongForm form = LongForm.of(bolt);
    Range<NutFactor> factor =
        friction.map(f -> NutFactor.of(form.arm(f, f).millimetres() / diameter.millimetres()));
    items.add(factors("nut factor K = T/(F d) of this", factor));
    Optional<Range<NutFactor>> tables = options.state().flatMap(SurfaceState::expect);
    if (tables.isPresent()) {
      items.add(factors("nut factor K of tables for the state", tables.get()));
      items.add(
          forces("preload by that", ShortForm.preload(tables.get(), options.torque(), diameter)));
    }
    return items;
  }

  private static Item factors(String name, Range<NutFactor> range) {
    return Item.range(name, range.low().k(), range.high().k(), 2, "");
  }

  /** How much more torque the exact thread needs for the same preload, in percent. */
  private static double more(Bolt bolt, Friction friction) {
    Force preload = Force.kilonewtons(10);
    double exact = ThreadMechanics.torque(bolt, preload, friction, friction).inNewtonMetres();
    double linear = LongForm.of(bolt).torque(preload, friction, friction).inNewtonMetres();
    return (exact / linear - 1) * 100;
  }

  @Override
  List<Sketch> pictures(PlotSize size) throws Fault {
    String svg = plot(options.bolt(), options.torque(), options.friction(), note(), size);
    return List.of(new Sketch("Preload against friction", svg));
  }

  /** The preload of a torque against friction, with that at yield. */
  static String plot(Bolt bolt, Torque torque, Rubs rubs, String note, PlotSize size) {
    List<FrictionPlot.Line> lines =
        List.of(
            new FrictionPlot.Line(
                "preload by " + torque,
                f ->
                    TorqueAlone.of(bolt, torque, new Range<>(f, f))
                        .preload()
                        .low()
                        .inKilonewtons()),
            new FrictionPlot.Line(
                "preload at yield", f -> Assembly.atYield(bolt).preload(f).inKilonewtons()));
    String title = "Preload of " + bolt + " by " + torque;
    return FrictionPlot.of(title, rubs.both(), lines, note, size);
  }

  static Item forces(String name, Range<Force> range) {
    return Item.range(name, range.low().inKilonewtons(), range.high().inKilonewtons(), 1, "kN");
  }

  private static String words(Plausibility.Verdict verdict, TorqueAlone alone) {
    return verdict == Plausibility.Verdict.TOO_LOW
        ? "hardly any preload, whatever the friction"
        : alone.reach().words();
  }
}
