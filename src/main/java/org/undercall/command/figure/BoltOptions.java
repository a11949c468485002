package org.undercall.command.figure;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Seat;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What is known about a bolt, its torque and its friction: typed, or taken from a procedure. */
final class BoltOptions {
  /** The radius of a ball over half of its outer diameter where none is stated. */
  private static final double BALL = 1.1;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--procedure",
      paramLabel = "FILE",
      description = "A procedure to take from what is not typed; needs --step.")
  private Path procedure;

  @Option(names = "--step", paramLabel = "ID", description = "The step of its fastener.")
  private String step;

  @Option(
      names = "--thread",
      paramLabel = "THREAD",
      description = "ISO metric, M4 to M24, such as M12x1.5.")
  private String thread;

  @Option(names = "--class", paramLabel = "CLASS", description = "The head marking, such as 10.9.")
  private String marking;

  @Option(
      names = "--torque",
      paramLabel = "TORQUE",
      converter = TypedTorque.class,
      description = "The torque (stage), such as 65Nm.")
  private Torque torque;

  @Option(
      names = "--seat",
      arity = "2",
      paramLabel = "MM",
      description = "Outer and inner diameter of the seat (default: standard hexagon).")
  private double[] seat;

  @Option(names = "--cone", paramLabel = "DEGREES", description = "The whole angle of a cone seat.")
  private Double cone;

  @Option(names = "--ball", paramLabel = "MM", description = "The radius of a ball seat.")
  private Double ball;

  @Mixin private FrictionOptions rubs;

  private Optional<Taken> taken;

  /** What the procedure states; empty without one. */
  Optional<Taken> taken() throws Fault {
    if (taken == null) {
      taken =
          procedure == null
              ? Optional.empty()
              : Optional.of(
                  Taken.of(procedure, Optional.ofNullable(step), Optional.ofNullable(marking)));
    }
    return taken;
  }

  /** Wrong usage: an option that is needed is neither typed nor in a procedure. */
  ParameterException missing(String option) {
    return new ParameterException(
        spec.commandLine(),
        "found no " + option + ", expected it, or a --procedure and --step that state it");
  }

  Bolt bolt() throws Fault {
    String named = thread;
    if (named == null) {
      named = taken().map(t -> t.fastener().thread()).orElseThrow(() -> missing("--thread"));
    }
    return seated(Bolt.hexagon(named, strength()));
  }

  private String strength() throws Fault {
    if (marking == null) {
      return taken()
          .flatMap(t -> t.variant().marking())
          .orElseThrow(() -> missing("--class"))
          .text();
    }
    if (!marking.matches("[1-9][0-9]?\\.[0-9]")) {
      throw new Fault(FigureCode.NO_CLASS, "--class", marking, "a head marking such as 10.9");
    }
    return marking;
  }

  private Bolt seated(Bolt bolt) throws Fault {
    boolean shaped = cone != null || ball != null;
    if ((cone != null && ball != null) || (shaped && seat == null)) {
      throw new Fault(
          FigureCode.SEAT_SHAPE,
          cone == null ? "--ball" : "--cone",
          seat == null ? "no --seat" : "--cone and --ball",
          "one of the two, with --seat OUTER INNER");
    }
    if (seat == null) {
      return stated(bolt);
    }
    passes(bolt, "--seat", seat[1]);
    if (cone != null) {
      return bolt.with(Seat.cone(seat[0], seat[1], cone));
    }
    return bolt.with(ball == null ? Seat.of(seat[0], seat[1]) : Seat.ball(seat[0], seat[1], ball));
  }

  /** The seat of the procedure, what it lacks filled in from a standard hexagon. */
  private Bolt stated(Bolt bolt) throws Fault {
    Optional<Sizes.Ring> ring = taken().flatMap(t -> t.fastener().joint().sizes().seat());
    if (ring.isEmpty()) {
      return bolt;
    }
    double outer = or(ring.get().outer(), bolt.seat().bearing().millimetres());
    double inner = or(ring.get().inner(), bolt.seat().hole().millimetres());
    passes(bolt, "seat of the procedure", inner);
    return bolt.with(
        switch (ring.get().shape()) {
          case FLAT -> Seat.of(outer, inner);
          case CONE -> Seat.cone(outer, inner, ring.get().angle().orElseThrow().doubleValue());
          case BALL -> Seat.ball(outer, inner, outer / 2 * BALL);
        });
  }

  private static double or(Optional<BigDecimal> stated, double usual) {
    return stated.map(BigDecimal::doubleValue).orElse(usual);
  }

  /** Refuses a bore that the bolt does not pass. */
  static void passes(Bolt bolt, String option, double bore) throws Fault {
    if (bore <= bolt.thread().diameter().millimetres()) {
      throw new Fault(
          FigureCode.BORE, option, bore + " mm", "more than " + bolt.thread().diameter());
    }
  }

  Torque torque() throws Fault {
    return torque != null
        ? torque
        : taken().map(t -> t.torque().target()).orElseThrow(() -> missing("--torque"));
  }

  Rubs friction() throws Fault {
    return rubs.friction(taken());
  }

  Optional<Lubrication> state() throws Fault {
    return rubs.state(taken());
  }

  List<Item> inputs() throws Fault {
    Bolt bolt = bolt();
    List<Item> items = new ArrayList<>();
    taken().ifPresent(t -> items.add(Item.words("taken from", t.words())));
    items.add(Item.words("thread and class", bolt));
    items.add(Item.words("seat", seatWords(bolt)));
    items.add(Item.words("torque", torque()));
    items.addAll(friction().items());
    return items;
  }

  private String seatWords(Bolt bolt) throws Fault {
    Optional<Sizes.Ring> ring = taken().flatMap(t -> t.fastener().joint().sizes().seat());
    boolean standard = seat == null && ring.isEmpty();
    String sizes = bolt.seat().bearing() + " over " + bolt.seat().hole();
    if (bolt.seat().flat()) {
      return sizes + (standard ? ", standard hexagon" : "");
    }
    double half = bolt.seat().half().degrees();
    boolean guessed = ball == null && cone == null && ring.isPresent();
    boolean rolled = ball != null || (guessed && ring.get().shape() == Sizes.Shape.BALL);
    return sizes
        + (rolled ? ", ball, touched at " : ", cone of ")
        + Item.number("", half * 2, 0, "°").text()
        + (rolled && guessed ? ", its radius not stated and assumed" : "");
  }
}
