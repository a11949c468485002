package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.drawing.FrictionPlot;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Sketch;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Tightening;
import org.undercall.core.fastening.VariantComparison;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The clamp forces of two variants of a fastener in the same joint. */
@Command(
    name = "variants",
    description = "The clamp forces of two variants of a fastener in the same joint.",
    mixinStandardHelpOptions = true)
final class VariantsFigure extends PlottedFigure {
  @Mixin private TighteningOptions way;

  @Option(
      names = "--other-class",
      paramLabel = "CLASS",
      description = "The head marking of the second variant.")
  private String marking;

  @Option(
      names = "--other-torque",
      paramLabel = "TORQUE",
      converter = TypedTorque.class,
      description = "The torque (stage) of the second variant.")
  private Torque torque;

  @Option(
      names = "--other-angle",
      paramLabel = "DEGREES",
      description = "The angle of the second variant (default: torque alone).")
  private Double angle;

  /** One variant in the joint. */
  private record Side(Joint joint, Tightening way) {
    double kilonewtons(Friction friction) {
      return way.preload(joint.bolt(), joint.stiffness(), friction, friction).inKilonewtons();
    }

    String words() {
      return joint.bolt().strength() + ", " + way;
    }
  }

  @Override
  Optional<Taken> taken() throws Fault {
    return way.taken();
  }

  @Override
  String title() throws Fault {
    return "Two variants of "
        + way.bolt().thread()
        + ": "
        + first().words()
        + ", against "
        + second().words();
  }

  private Side first() throws Fault {
    return new Side(way.jointNeeded(), new Tightening(way.torque(), way.turn()));
  }

  private Side second() throws Fault {
    Optional<Taken> second = otherTaken();
    Bolt bolt = way.bolt();
    String named =
        marking != null
            ? marking
            : second.flatMap(t -> t.variant().marking()).map(HeadMarking::text).orElse(null);
    Torque set = torque != null ? torque : second.map(t -> t.torque().target()).orElse(null);
    if (named == null || set == null) {
      throw new Fault(
          FigureCode.NO_SECOND,
          named == null ? "--other-class" : "--other-torque",
          "nothing",
          "a second variant, typed or in the procedure");
    }
    Optional<Rotation> turn =
        torque == null
            ? second.flatMap(Taken::turn)
            : Optional.ofNullable(angle).map(Rotation::degrees);
    PropertyClass strength =
        PropertyClass.of(new HeadMarking(named))
            .orElseThrow(
                () ->
                    new Fault(
                        FigureCode.NO_CLASS, "--other-class", named, "a class from 4.6 to 12.9"));
    Joint joint = way.jointNeeded();
    Bolt other = new Bolt(bolt.thread(), strength, bolt.seat());
    Joint same = new Joint(other, joint.body(), joint.stiffness());
    return new Side(same, new Tightening(set, turn));
  }

  /** The first other variant of the procedure that has another marking. */
  private Optional<Taken> otherTaken() throws Fault {
    Optional<Taken> taken = way.taken();
    if (taken.isEmpty()) {
      return taken;
    }
    Variant own = taken.get().variant();
    return taken.get().fastener().variants().stream()
        .filter(v -> !v.equals(own))
        .filter(
            v ->
                marking == null
                    || v.marking().map(HeadMarking::text).filter(marking::equals).isPresent())
        .findFirst()
        .map(v -> taken.get().with(v));
  }

  @Override
  Figure figure() throws Fault {
    Side one = first();
    Side two = second();
    Range<Friction> friction = way.friction().both();
    VariantComparison compared =
        VariantComparison.of(one.joint(), one.way(), two.joint(), two.way(), friction);
    List<Item> inputs = new ArrayList<>(way.inputs());
    inputs.add(Item.words("second variant", two.words()));
    return Figure.of(
        "F2/F1, both with F = T / (0.16 P + 0.58 d2 µ + DKm/2 µ) + P angle/360 / (δS + δP), at most"
            + " the yield preload after an angle",
        inputs,
        List.of(
            PreloadFigure.forces("preload of " + one.words(), compared.one()),
            PreloadFigure.forces("preload of " + two.words(), compared.other()),
            Item.range(
                "second over first, at the same friction",
                compared.ratio().low(),
                compared.ratio().high(),
                2,
                "")),
        "VDI 2230 Part 1 (long form, compliances, yield with plastic torsion); ISO 898-1:2013",
        "that two variants clamp differently is often meant; a large ratio is a question to the"
            + " maker. The bolts may differ in coating too. This is "
            + ESTIMATE);
  }

  @Override
  List<Sketch> pictures(PlotSize size) throws Fault {
    Side one = first();
    Side two = second();
    List<FrictionPlot.Line> lines =
        List.of(
            new FrictionPlot.Line(one.words(), one::kilonewtons),
            new FrictionPlot.Line(two.words(), two::kilonewtons));
    String svg = FrictionPlot.of(title(), way.friction().both(), lines, note(), size);
    return List.of(new Sketch("Preload of both against friction", svg));
  }
}
