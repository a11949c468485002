package org.undercall.command.figure;

import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.ClampedParts;
import org.undercall.core.fastening.ConeStack;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.SleeveStack.Sleeve;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** The sizes of a joint: clamped length, full shank, and a plate or a tube. */
public final class JointOptions {
  @Option(names = "--clamped", paramLabel = "MM", description = "The clamped length.")
  private Double clamped;

  @Option(
      names = "--shank",
      paramLabel = "MM",
      description = "Length of the full shank within the clamped length.")
  private Double shank;

  @Option(names = "--plate", paramLabel = "MM", description = "Outer diameter of clamped plates.")
  private Double plate;

  @Option(
      names = "--tube",
      arity = "2",
      paramLabel = "MM",
      description = "Outer and inner diameter of a clamped tube, such as the sleeve of a bush.")
  private double[] tube;

  /** Made by the command line reader. */
  public JointOptions() {}

  /**
   * The springs of the joint; empty if no size is given.
   *
   * @throws Fault FIG-003 or FIG-004 if the sizes are not whole, FIG-009 or FIG-010 if the bolt
   *     does not pass the tube, or the seat is wider than the part
   */
  public Optional<JointStiffness> stiffness(Bolt bolt) throws Fault {
    return joint(bolt).map(Joint::stiffness);
  }

  /**
   * The joint; empty if no size is given.
   *
   * @throws Fault as in {@link #stiffness}
   */
  public Optional<Joint> joint(Bolt bolt) throws Fault {
    boolean none = clamped == null && shank == null && plate == null && tube == null;
    if (none) {
      return Optional.empty();
    }
    if (clamped == null || shank == null || (plate == null) == (tube == null)) {
      throw new Fault(
          FigureCode.SIZES_INCOMPLETE,
          "sizes of the joint",
          "some of them",
          "--clamped and --shank, and either --plate or --tube");
    }
    if (!(shank >= 0 && shank < clamped)) {
      throw new Fault(
          FigureCode.SHANK, "--shank", shank + " mm", "zero or more, less than --clamped");
    }
    return Optional.of(Joint.ofSteel(bolt, body(bolt), parts(bolt)));
  }

  private BoltBody body(Bolt bolt) {
    BoltBody.Ends ends = BoltBody.Ends.HEXAGON_AND_NUT;
    return shank == 0
        ? BoltBody.fullyThreaded(bolt.thread(), Length.mm(clamped), ends)
        : new BoltBody(bolt.thread(), Length.mm(shank), Length.mm(clamped - shank), ends);
  }

  private ClampedParts parts(Bolt bolt) throws Fault {
    wide(bolt);
    if (tube == null) {
      return new PressureCone(
          bolt.seat(), Length.mm(clamped), Length.mm(plate), PressureCone.Kind.THROUGH_BOLT);
    }
    BoltOptions.passes(bolt, "--tube", tube[1]);
    return ConeStack.of(bolt.seat(), Sleeve.of(clamped, tube[0], tube[1]));
  }

  /** Refuses a part narrower than the seat: what truly bears is then not the seat that is given. */
  private void wide(Bolt bolt) throws Fault {
    double outer = tube == null ? plate : tube[0];
    if (outer < bolt.seat().bearing().millimetres()) {
      throw new Fault(
          FigureCode.NARROW,
          tube == null ? "--plate" : "--tube",
          outer + " mm",
          "at least " + bolt.seat().bearing() + ", or a --seat as wide as what bears");
    }
  }

  /** The sizes, to be shown. */
  public List<Item> inputs() {
    if (clamped == null) {
      return List.of(Item.words("sizes of the joint", "not known"));
    }
    String parts =
        tube != null
            ? "a tube, " + tube[0] + " over " + tube[1] + " mm"
            : "plates of " + plate + " mm";
    return List.of(
        Item.number("clamped length", clamped, 1, "mm"),
        Item.number("full shank within it", shank, 1, "mm"),
        Item.words("clamped parts", parts + ", steel, hexagon head and nut"));
  }
}
