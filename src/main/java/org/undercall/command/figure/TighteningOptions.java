package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A bolt in its joint and the angle stage it is tightened by. */
final class TighteningOptions {
  @Mixin private BoltOptions bolt;

  @Option(names = "--angle", paramLabel = "DEGREES", description = "The angle of the angle stage.")
  private Double angle;

  @Mixin private JointOptions sizes;

  BoltOptions options() {
    return bolt;
  }

  Optional<Taken> taken() throws Fault {
    return bolt.taken();
  }

  Bolt bolt() throws Fault {
    return bolt.bolt();
  }

  Torque torque() throws Fault {
    return bolt.torque();
  }

  Rubs friction() throws Fault {
    return bolt.friction();
  }

  /** The angle stage; empty for torque alone. */
  Optional<Rotation> turn() throws Fault {
    return angle != null ? Optional.of(Rotation.degrees(angle)) : taken().flatMap(Taken::turn);
  }

  /** The angle stage, which must be given. */
  Rotation turnNeeded() throws Fault {
    return turn().orElseThrow(() -> bolt.missing("--angle"));
  }

  /** Whether the angle is meant to reach yield, if the procedure states it of this very angle. */
  Optional<Boolean> beyondYield() throws Fault {
    return angle != null ? Optional.empty() : taken().flatMap(Taken::beyondYield);
  }

  /** The sizes, filled up from the procedure. */
  JointOptions sizes() throws Fault {
    if (taken().isPresent()) {
      sizes.take(taken().get(), bolt());
    }
    return sizes;
  }

  /** The joint; empty if its sizes are not known. */
  Optional<Joint> joint() throws Fault {
    return sizes().joint(bolt());
  }

  /** The joint, which must be known. */
  Joint jointNeeded() throws Fault {
    return joint()
        .orElseThrow(
            () ->
                new Fault(
                    FigureCode.SIZES_NEEDED,
                    "sizes of the joint",
                    "none",
                    "--clamped and --shank, and either --plate or --tube"));
  }

  List<Item> inputs() throws Fault {
    List<Item> items = new ArrayList<>(bolt.inputs());
    turn().ifPresent(t -> items.add(Item.number("angle", t.degrees(), 1, "°")));
    beyondYield()
        .ifPresent(
            yes ->
                items.add(
                    Item.words(
                        "yield, as the procedure states",
                        yes ? "meant to be reached" : "must not be reached")));
    items.addAll(sizes().inputs());
    return items;
  }
}
