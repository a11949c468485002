package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Seat;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** What is known about a bolt, its torque and its friction. */
final class BoltOptions {
  @Option(
      names = "--thread",
      paramLabel = "THREAD",
      required = true,
      description = "ISO metric, M4 to M24, such as M12x1.5.")
  private String thread;

  @Option(
      names = "--class",
      paramLabel = "CLASS",
      required = true,
      description = "The head marking, such as 10.9.")
  private String marking;

  @Option(
      names = "--torque",
      paramLabel = "TORQUE",
      required = true,
      converter = TypedTorque.class,
      description = "The torque (stage), such as 65Nm.")
  private Torque torque;

  @Option(
      names = "--lubrication",
      paramLabel = "STATE",
      description =
          "dry, oiled, greased, paste, threadlocker or as_delivered (default: ${DEFAULT-VALUE}).",
      defaultValue = "UNSTATED")
  private Lubrication lubrication;

  @Option(
      names = "--friction",
      arity = "2",
      paramLabel = "MU",
      description = "Lowest and highest friction, in place of a state.")
  private double[] friction;

  @Option(
      names = "--seat",
      arity = "2",
      paramLabel = "MM",
      description = "Outer and inner diameter of the seat (default: standard hexagon).")
  private double[] seat;

  Bolt bolt() throws Fault {
    if (!marking.matches("[1-9][0-9]?\\.[0-9]")) {
      throw new Fault(FigureCode.NO_CLASS, "--class", marking, "a head marking such as 10.9");
    }
    Bolt bolt = Bolt.hexagon(thread, marking);
    if (seat == null) {
      return bolt;
    }
    passes(bolt, "--seat", seat[1]);
    return bolt.with(Seat.of(seat[0], seat[1]));
  }

  /** Refuses a bore that the bolt does not pass. */
  static void passes(Bolt bolt, String option, double bore) throws Fault {
    if (bore <= bolt.thread().diameter().millimetres()) {
      throw new Fault(
          FigureCode.BORE, option, bore + " mm", "more than " + bolt.thread().diameter());
    }
  }

  Torque torque() {
    return torque;
  }

  Range<Friction> friction() throws Fault {
    if (friction != null) {
      return typed();
    }
    return FrictionClass.expect(lubrication)
        .orElseThrow(
            () ->
                new Fault(
                    FigureCode.FRICTION_UNKNOWN,
                    "--lubrication",
                    "a state for which no published range of friction is at hand",
                    "--friction with the lowest and highest"));
  }

  private Range<Friction> typed() throws Fault {
    for (double each : friction) {
      if (!(each >= Friction.TYPED.low().coefficient()
          && each <= Friction.TYPED.high().coefficient())) {
        throw new Fault(
            FigureCode.FRICTION,
            "--friction",
            each + "",
            Friction.TYPED + ", since nothing outside is published");
      }
    }
    return Range.between(Friction.of(friction[0]), Friction.of(friction[1]));
  }

  List<Item> inputs() throws Fault {
    Bolt bolt = bolt();
    List<Item> items = new ArrayList<>();
    items.add(Item.words("thread and class", bolt));
    items.add(
        Item.words(
            "seat",
            bolt.seat().bearing()
                + " over "
                + bolt.seat().hole()
                + (seat == null ? ", standard hexagon" : "")));
    items.add(Item.words("torque", torque));
    items.add(
        Item.range(
            "friction of thread and seat",
            friction().low().coefficient(),
            friction().high().coefficient(),
            2,
            ""));
    return items;
  }
}
