package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.ToleranceStack;
import org.undercall.core.fastening.ToleranceTrial;
import org.undercall.core.fastening.ToleranceTrial.Assumed;
import org.undercall.core.fastening.ToleranceTrial.Spread;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** How far a tightening may be off, and how lots are drawn. */
final class SpreadOptions {
  /** What ISO 6789-1 lets a wrench of type II A be off. */
  static final double ISO_6789 = 4;

  @Option(
      names = "--plus-minus",
      paramLabel = "AMOUNT",
      description = "Tolerance of the torque, in its unit (default: none, or the procedure's).")
  private Double torque;

  @Option(
      names = "--angle-plus-minus",
      paramLabel = "DEGREES",
      description = "Error of the angle, either way (default: none, or the procedure's).")
  private Double angle;

  @Option(
      names = "--wrench",
      paramLabel = "PERCENT",
      description =
          "Permissible deviation of the wrench, either way (default: the procedure's, or 4, ISO"
              + " 6789).")
  private Double wrench;

  @Option(
      names = "--uncertainty",
      paramLabel = "PERCENT",
      description = "Expanded relative uncertainty interval of its certificate, in its place.")
  private Double uncertainty;

  @Option(
      names = "--wanted",
      paramLabel = "KN",
      description = "The least preload that the joint needs.")
  private Double wanted;

  @Option(
      names = "--spread",
      paramLabel = "SPREAD",
      defaultValue = "NORMAL",
      description = "normal (ends at two standard deviations) or uniform (default: normal).")
  private Spread spread;

  @Option(
      names = "--joints",
      paramLabel = "COUNT",
      defaultValue = "20000",
      description = "Joints to draw by lot (default: ${DEFAULT-VALUE}).")
  private int joints;

  @Option(
      names = "--seed",
      paramLabel = "SEED",
      defaultValue = "1",
      description = "Where the lots start; the same gives the same (default: ${DEFAULT-VALUE}).")
  private long seed;

  /** The error of the wrench: as typed, or of the best one in the procedure. */
  Deviation wrench(Optional<Taken> taken) {
    if (uncertainty != null) {
      return new Deviation(uncertainty);
    }
    return new Deviation(wrench != null ? wrench : taken.flatMap(Taken::wrench).orElse(ISO_6789));
  }

  /** The least preload that the joint needs; empty if it is not stated. */
  Optional<Force> wanted() throws Fault {
    if (wanted != null && !(wanted > 0 && wanted < 1e6)) {
      throw new Fault(FigureCode.WANTED, "--wanted", wanted + " kN", "more than zero");
    }
    return Optional.ofNullable(wanted).map(Force::kilonewtons);
  }

  private double plusMinus(Torque target, Optional<Taken> taken) throws Fault {
    double amount =
        torque != null ? torque : taken.map(t -> t.torque().plusMinus().doubleValue()).orElse(0.0);
    double unit = target.inNewtonMetres() / target.amount().doubleValue();
    if (!(amount >= 0 && amount * unit < target.inNewtonMetres())) {
      throw new Fault(
          FigureCode.TOLERANCE, "--plus-minus", amount + "", "0 or more, less than the torque");
    }
    return amount * unit;
  }

  private double turnError(Optional<Taken> taken) {
    return angle != null ? angle : taken.map(Taken::turnPlusMinus).orElse(0.0);
  }

  /** Everything that may be off, stacked up. */
  ToleranceStack stack(
      Joint joint, Torque target, Optional<Rotation> turn, Rubs rubs, Optional<Taken> taken)
      throws Fault {
    ToleranceStack stack =
        ToleranceStack.ofTorque(
                joint, target, plusMinus(target, taken), wrench(taken), rubs.thread())
            .withFriction(rubs.thread(), rubs.seat());
    double error = turnError(taken);
    return turn.map(t -> stack.withTurn(t, Rotation.degrees(error))).orElse(stack);
  }

  /** Joints drawn by lot. */
  ToleranceTrial trial(ToleranceStack stack) throws Fault {
    Assumed assumed = new Assumed(spread, spread, false, joints, seed);
    return ToleranceTrial.of(stack, assumed, wanted().orElse(new Force(0)));
  }

  /** How the lots are drawn, in words. */
  String lots() {
    String form =
        spread == Spread.NORMAL
            ? "normally, its ends at two standard deviations, cut off at three"
            : "evenly between its ends";
    return "each cause is drawn by itself, " + form + ", thread and seat apart";
  }

  /** How many were drawn, to be shown. */
  List<Item> drawn() {
    return List.of(Item.shown("joints drawn", joints + ", seed " + seed, joints, ""));
  }

  List<Item> inputs(Torque target, Optional<Rotation> turn, Optional<Taken> taken) throws Fault {
    List<Item> items = new ArrayList<>();
    items.add(
        Item.number("tolerance of the torque, either way", plusMinus(target, taken), 1, "N·m"));
    if (turn.isPresent()) {
      items.add(Item.number("error of the angle, either way", turnError(taken), 1, "°"));
    }
    items.add(
        Item.number(
            uncertainty == null
                ? "deviation of the wrench, either way"
                : "expanded uncertainty of the wrench",
            wrench(taken).percent(),
            1,
            "%"));
    wanted().ifPresent(f -> items.add(Item.number("preload wanted", f.inKilonewtons(), 1, "kN")));
    return items;
  }

  /** The ends of a range in kN. */
  static Item forces(String name, Range<Force> ends, Force nominal) {
    return Item.spread(
        name,
        ends.low().inKilonewtons(),
        nominal.inKilonewtons(),
        ends.high().inKilonewtons(),
        1,
        "kN");
  }
}
