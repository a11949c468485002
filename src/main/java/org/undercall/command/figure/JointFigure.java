package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.drawing.AnglePlot;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.drawing.SpringsPlot;
import org.undercall.adapter.drawing.TorqueAnglePlot;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Figure.Part;
import org.undercall.adapter.report.Sketch;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.ToleranceStack;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Everything that can be worked out of one joint. */
@Command(
    name = "joint",
    description = {
      "All that can be worked out of one joint: preload and its spread, angle, stretch, seat, nut",
      "or tapped hole, embedding, warmth, and the torque to expect after the angle."
    },
    mixinStandardHelpOptions = true)
final class JointFigure extends PlottedFigure {
  private static final List<String> UNSEEN =
      List.of(
          "The true friction: one drop of oil on a dry thread changes more than any wrench.",
          "Whether the parts lie flat at the torque stage; a gap eats part of the angle.",
          "Rust, paint, a damaged or repaired thread, a worn seat, a soft bracket, a bolt that was"
              + " stretched before.",
          "The true strength of this bolt; it is taken as the least of its class.",
          "Working loads: whether this preload is enough for what the joint must carry.",
          "Bending, a head that does not sit square, settling of paint or gaskets.");

  /** What is drawn by itself. */
  enum Picture {
    PRELOAD,
    TORQUE,
    SPRINGS
  }

  @Mixin private TighteningOptions way;
  @Mixin private SpreadOptions spread;
  @Mixin private HoldOptions hold;

  @Option(
      names = "--picture",
      paramLabel = "PICTURE",
      defaultValue = "PRELOAD",
      description =
          "For --plot: preload against angle (default), torque against angle, or springs.")
  private Picture picture;

  @Override
  Optional<Taken> taken() throws Fault {
    return way.taken();
  }

  @Override
  String title() throws Fault {
    String turned = way.turn().map(t -> " and then " + t).orElse("");
    return "Joint " + way.bolt() + ", " + way.torque() + turned;
  }

  private JointCase worked() throws Fault {
    Joint joint = way.jointNeeded();
    Rubs rubs = way.friction();
    ToleranceStack stack = spread.stack(joint, way.torque(), way.turn(), rubs, taken());
    return new JointCase(joint, way.torque(), way.turn(), rubs, stack);
  }

  @Override
  Figure figure() throws Fault {
    JointCase worked = worked();
    JointOptions sizes = way.sizes();
    JointTension tension = new JointTension(worked, spread, way.beyondYield());
    List<Item> inputs = new ArrayList<>(way.inputs());
    inputs.add(Item.words("friction taken from", worked.rubs().whence()));
    inputs.addAll(spread.inputs(way.torque(), way.turn(), taken()));
    inputs.addAll(hold.inputs(sizes, taken()));
    List<Part> parts = new ArrayList<>(tension.parts());
    parts.addAll(new JointHold(worked, hold, sizes, taken(), spread.wrench(taken())).parts());
    return new Figure(inputs, parts, UNSEEN, "this is " + ESTIMATE);
  }

  @Override
  List<Sketch> pictures(PlotSize size) throws Fault {
    JointCase worked = worked();
    Optional<Rotation> turn = worked.turn();
    Sketch springs =
        new Sketch(
            "Bolt and parts as springs",
            SpringsPlot.of(
                worked.joint(),
                worked.nominal(),
                worked.nominalPlastic(),
                hold.roughness().isPresent()
                    ? JointHold.embedding(hold, way.sizes())
                        .left(worked.nominal(), worked.joint().stiffness())
                    : worked.nominal(),
                note(),
                size));
    if (turn.isEmpty()) {
      Bolt bolt = worked.joint().bolt();
      String svg = PreloadFigure.plot(bolt, worked.torque(), worked.rubs(), note(), size);
      Sketch friction = new Sketch("Preload against friction", svg);
      return picture == Picture.SPRINGS ? List.of(springs, friction) : List.of(friction, springs);
    }
    Sketch preload =
        new Sketch(
            "Preload against angle",
            AnglePlot.of(
                worked.joint(), worked.torque(), turn.get(), worked.rubs().both(), note(), size));
    Sketch torque =
        new Sketch(
            "Torque to expect while turning on",
            TorqueAnglePlot.of(
                worked.expected(spread.wrench(taken())),
                turn.get(),
                Optional.empty(),
                note(),
                size));
    return switch (picture) {
      case PRELOAD -> List.of(preload, torque, springs);
      case TORQUE -> List.of(torque, preload, springs);
      case SPRINGS -> List.of(springs, preload, torque);
    };
  }

  /** A range whose two ends may be the same. */
  static Item degrees(String name, Range<Rotation> range) {
    return Item.range(name, range.low().degrees(), range.high().degrees(), 0, "°");
  }
}
