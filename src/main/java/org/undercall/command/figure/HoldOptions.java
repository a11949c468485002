package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Embedding.Load;
import org.undercall.core.fastening.Embedding.Roughness;
import org.undercall.core.fastening.Engagement.Strength;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.SeatMaterial;
import org.undercall.core.fastening.Stress;
import org.undercall.core.procedure.Fastener.Joint.Material;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** What the parts around a bolt bear: the seat, the inner thread, the surfaces, warmth. */
final class HoldOptions {
  /** Shear over tensile strength of cast iron: VDI 2230 Part 1, table 6, nodular, from memory. */
  private static final double CAST_IRON = 0.9;

  @Option(
      names = "--under",
      paramLabel = "MATERIAL",
      description = "Under the head or nut, for the pressure: ${COMPLETION-CANDIDATES}.")
  private SeatMaterial under;

  @Option(names = "--nut", paramLabel = "CLASS", description = "Class of the nut, such as 10.")
  private String nut;

  @Option(
      names = "--self-locking",
      description = "The nut locks itself: its torque is taken off what clamps (ISO 2320).")
  private boolean locking;

  @Option(
      names = "--engagement",
      paramLabel = "MM",
      description = "Length of thread in the tapped hole; needs --tapped and --strength.")
  private Double engagement;

  @Option(
      names = "--strength",
      paramLabel = "MPA",
      description = "Least tensile strength of the material tapped into.")
  private Double strength;

  @Option(
      names = "--roughness",
      paramLabel = "KIND",
      description = "fine (Rz below 10), medium (below 40) or rough (below 160), for embedding.")
  private Roughness roughness;

  @Option(
      names = "--interfaces",
      paramLabel = "COUNT",
      defaultValue = "1",
      description = "Inner interfaces between the clamped parts (default: ${DEFAULT-VALUE}).")
  private int interfaces;

  @Option(
      names = "--load",
      paramLabel = "KIND",
      defaultValue = "SHEAR",
      description = "How the joint is loaded, axial or shear (default: shear).")
  private Load load;

  @Option(
      names = "--warmer",
      paramLabel = "KELVIN",
      description = "How much warmer the whole joint gets; negative for colder.")
  private Double warmer;

  Optional<SeatMaterial> under() {
    return Optional.ofNullable(under);
  }

  Optional<Double> warmer() {
    return Optional.ofNullable(warmer);
  }

  Optional<Roughness> roughness() {
    return Optional.ofNullable(roughness);
  }

  int interfaces() {
    return interfaces;
  }

  Load load() {
    return load;
  }

  /** The class of the nut; empty if it is not stated. */
  Optional<NutClass> nut(JointOptions sizes, Optional<Taken> taken) throws Fault {
    Optional<String> marked =
        Optional.ofNullable(nut).or(() -> taken.flatMap(t -> t.fastener().joint().nutClass()));
    if (nut != null && sizes.tapped().isPresent()) {
      throw end("--nut and --tapped");
    }
    if (marked.isEmpty()) {
      if (locking) {
        throw end("--self-locking without --nut");
      }
      return Optional.empty();
    }
    return Optional.of(
        NutClass.of(marked.get())
            .orElseThrow(
                () ->
                    new Fault(
                        FigureCode.NO_CLASS,
                        "--nut",
                        marked.get(),
                        "04, 05, 5, 6, 8, 9, 10 or 12")));
  }

  boolean locking() {
    return locking;
  }

  /** The length of engagement in a tapped hole; empty if it is not stated. */
  Optional<Double> engagement(JointOptions sizes, Optional<Taken> taken) throws Fault {
    if (engagement != null && sizes.tapped().isEmpty()) {
      throw end("--engagement without --tapped");
    }
    Optional<Double> length =
        Optional.ofNullable(engagement)
            .or(
                () ->
                    taken
                        .flatMap(t -> t.fastener().joint().tapped())
                        .flatMap(t -> t.engagement())
                        .map(java.math.BigDecimal::doubleValue));
    if ((engagement != null && strength == null) || (strength != null && length.isEmpty())) {
      throw end(strength == null ? "--engagement without --strength" : "--strength alone");
    }
    return length;
  }

  /** The strength of the material tapped into; empty if it is not stated. */
  Optional<Strength> strength(Material tapped) {
    return Optional.ofNullable(strength)
        .map(
            rm ->
                switch (tapped) {
                  case STEEL -> Strength.steel(rm);
                  case ALUMINIUM -> Strength.aluminium(rm);
                  case CAST_IRON -> new Strength(new Stress(rm), CAST_IRON);
                });
  }

  private static Fault end(String found) {
    return new Fault(
        FigureCode.THREAD_END,
        "end of the thread",
        found,
        "--nut CLASS, or --tapped MATERIAL with --engagement MM and --strength MPA");
  }

  List<Item> inputs(JointOptions sizes, Optional<Taken> taken) throws Fault {
    List<Item> items = new ArrayList<>();
    nut(sizes, taken)
        .ifPresent(n -> items.add(Item.words("nut", n + (locking ? ", self-locking" : ""))));
    engagement(sizes, taken)
        .ifPresent(l -> items.add(Item.number("length of engagement", l, 1, "mm")));
    if (strength != null) {
      items.add(Item.number("tensile strength tapped into", strength, 0, "MPa"));
    }
    under().ifPresent(u -> items.add(Item.words("under the head or nut", u.words())));
    roughness()
        .ifPresent(
            r ->
                items.add(
                    Item.words(
                        "surfaces",
                        word(r)
                            + ", loaded in "
                            + (load == Load.SHEAR ? "shear" : "line with the bolt")
                            + ", inner interfaces: "
                            + interfaces)));
    warmer().ifPresent(k -> items.add(Item.number("warmer by", k, 0, "K")));
    return items;
  }

  private static String word(Enum<?> kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }
}
