package org.undercall.command.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.ClampedParts;
import org.undercall.core.fastening.ConeStack;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.SleeveStack.Sleeve;
import org.undercall.core.procedure.Fastener.Joint.Material;
import org.undercall.core.procedure.Sizes;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** The sizes of a joint: clamped length, full shank, and a plate or a tube. */
public final class JointOptions {
  /** The width of plates whose outer diameter is not stated, in bearing diameters. */
  private static final double WIDE = 2;

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

  @Option(
      names = "--material",
      paramLabel = "MATERIAL",
      description = "Of the clamped parts: steel (default), cast_iron or aluminium.")
  private Material material;

  @Option(
      names = "--tapped",
      paramLabel = "MATERIAL",
      description = "The bolt is screwed into a tapped hole of this material, not into a nut.")
  private Material tapped;

  private final List<String> assumed = new ArrayList<>();

  /** Made by the command line reader. */
  public JointOptions() {}

  /** Takes from a procedure what is not typed; what it lacks too is assumed, and said so. */
  void take(Taken taken, Bolt bolt) {
    if (tapped == null) {
      tapped = taken.fastener().joint().tapped().map(t -> t.material()).orElse(null);
    }
    boolean typed = clamped != null || shank != null || plate != null || tube != null;
    Optional<Sizes.Clamped> stated = taken.fastener().joint().sizes().clamped();
    if (!typed && stated.isPresent()) {
      take(stated.get(), bolt);
    }
  }

  private void take(Sizes.Clamped stated, Bolt bolt) {
    clamped = stated.length().doubleValue();
    shank = stated.shank().map(BigDecimal::doubleValue).orElse(clamped / 2);
    if (stated.shank().isEmpty()) {
      assumed.add("shank: half of the length");
    }
    double outer =
        stated
            .outer()
            .map(BigDecimal::doubleValue)
            .orElse(WIDE * bolt.seat().bearing().millimetres());
    if (stated.outer().isEmpty()) {
      assumed.add("outer diameter: twice the seat's");
    }
    if (stated.inner().isPresent()) {
      tube = new double[] {outer, stated.inner().get().doubleValue()};
    } else {
      plate = outer;
    }
    material = material == null ? stated.material() : material;
  }

  /** What the clamped parts are made of. */
  Material material() {
    return material == null ? Material.STEEL : material;
  }

  /** What the thread is cut into; empty for a nut. */
  Optional<Material> tapped() {
    return Optional.ofNullable(tapped);
  }

  /**
   * The joint; empty if no size is given.
   *
   * @throws Fault FIG-003 or FIG-004 if the sizes are not whole, FIG-009 or FIG-010 if the bolt
   *     does not pass the tube, or the seat is wider than the part
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
    return Optional.of(Joint.of(bolt, body(bolt), parts(bolt), Elasticity.STEEL, elasticity()));
  }

  private Elasticity elasticity() {
    return switch (material()) {
      case STEEL -> Elasticity.STEEL;
      case CAST_IRON -> Elasticity.GREY_IRON;
      case ALUMINIUM -> Elasticity.ALUMINIUM;
    };
  }

  private BoltBody body(Bolt bolt) {
    BoltBody.Ends ends =
        tapped == null ? BoltBody.Ends.HEXAGON_AND_NUT : new BoltBody.Ends(0.5, 0.33);
    return shank == 0
        ? BoltBody.fullyThreaded(bolt.thread(), Length.mm(clamped), ends)
        : new BoltBody(bolt.thread(), Length.mm(shank), Length.mm(clamped - shank), ends);
  }

  private ClampedParts parts(Bolt bolt) throws Fault {
    wide(bolt);
    PressureCone.Kind kind =
        tapped == null ? PressureCone.Kind.THROUGH_BOLT : PressureCone.Kind.TAPPED_HOLE;
    if (tube == null) {
      return new PressureCone(bolt.seat(), Length.mm(clamped), Length.mm(plate), kind);
    }
    BoltOptions.passes(bolt, "--tube", tube[1]);
    return new ConeStack(bolt.seat(), List.of(Sleeve.of(clamped, tube[0], tube[1])), kind);
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
    String end = tapped == null ? "nut" : "hole tapped in " + words(tapped);
    List<Item> items = new ArrayList<>();
    items.add(Item.number("clamped length", clamped, 1, "mm"));
    items.add(Item.number("full shank within it", shank, 1, "mm"));
    items.add(
        Item.words(
            "clamped parts", parts + ", " + words(material()) + ", hexagon head and " + end));
    if (!assumed.isEmpty()) {
      items.add(Item.words("assumed, not stated", String.join("; ", assumed)));
    }
    return items;
  }

  /** A material in words. */
  static String words(Material material) {
    return material.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
