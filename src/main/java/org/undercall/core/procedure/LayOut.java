package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What to lay out before the work begins, because nobody can fetch it from under the car.
 *
 * @param drives size of each socket or key in mm, and the fasteners it is for
 * @param wrenches the torque wrenches that a stage needs: of those that cover it the first listed
 * @param newParts the hardware that is used once, for all sides
 * @param angles whether an angle is turned, so that it must be measured
 * @param adaptors the fasteners that are tightened over an adaptor
 * @param units what is measured, as units
 * @param supplies what is used up, and what carries and holds
 */
public record LayOut(
    Map<BigDecimal, Set<String>> drives,
    List<Tool> wrenches,
    List<Part> newParts,
    boolean angles,
    Set<String> adaptors,
    Set<String> units,
    Supplies supplies) {

  /**
   * Hardware that is used once.
   *
   * @param count how many, on all sides together
   * @param hardware bolt or nut
   * @param markings the property classes that the procedure knows; empty if it asks for none
   * @param nutClass the property class of the nut, if it is stated
   */
  public record Part(
      int count,
      String name,
      String thread,
      Hardware hardware,
      List<String> markings,
      Optional<String> nutClass) {
    public Part {
      markings = List.copyOf(markings);
    }

    private Part and(Part more) {
      Set<String> all = new LinkedHashSet<>(markings);
      all.addAll(more.markings);
      Optional<String> ofNut = nutClass.or(more::nutClass);
      return new Part(count + more.count, name, thread, hardware, List.copyOf(all), ofNut);
    }
  }

  public LayOut {
    drives = Collections.unmodifiableMap(new TreeMap<>(drives));
    wrenches = List.copyOf(wrenches);
    newParts = List.copyOf(newParts);
    adaptors = Collections.unmodifiableSet(new LinkedHashSet<>(adaptors));
    units = Collections.unmodifiableSet(new LinkedHashSet<>(units));
    Objects.requireNonNull(supplies, "supplies");
  }

  /** What a procedure needs. */
  public static LayOut of(Procedure procedure) {
    Collected all = new Collected(procedure.tools());
    for (WorkPhase phase : procedure.phases()) {
      phase.steps().forEach(step -> all.add(step, phase.each().sides().size()));
    }
    List<Tool> wrenches = procedure.tools().stream().filter(all.wrenches::contains).toList();
    return new LayOut(
        all.drives,
        wrenches,
        List.copyOf(all.parts.values()),
        all.angles,
        all.adaptors,
        all.units,
        Supplies.of(procedure));
  }

  private static final class Collected {
    private final List<Tool> tools;
    private final Map<BigDecimal, Set<String>> drives = new TreeMap<>();
    private final Set<Tool> wrenches = new LinkedHashSet<>();
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Set<String> adaptors = new LinkedHashSet<>();
    private final Set<String> units = new LinkedHashSet<>();
    private boolean angles;

    Collected(List<Tool> tools) {
      this.tools = tools;
    }

    void add(Step step, int times) {
      if (step instanceof Step.Measure measure) {
        units.add(measure.unit().symbol());
      } else if (step instanceof Step.Fasten fasten) {
        add(fasten.fastener(), times);
      }
    }

    private void add(Fastener fastener, int times) {
      String name = fastener.name();
      drives.computeIfAbsent(fastener.drive(), d -> new LinkedHashSet<>()).add(name);
      if (fastener.part().oneTimeUse()) {
        List<String> markings = new ArrayList<>();
        fastener.variants().forEach(v -> v.marking().ifPresent(m -> markings.add(m.text())));
        Part part =
            new Part(
                times * fastener.set().count(),
                name,
                fastener.thread(),
                fastener.part().hardware(),
                markings,
                fastener.joint().nutClass());
        parts.merge(name + " " + part.thread() + part.hardware(), part, Part::and);
      }
      for (Variant variant : fastener.variants()) {
        variant.stages().forEach(stage -> add(stage, name));
      }
    }

    private void add(Stage stage, String name) {
      if (stage instanceof Stage.TorqueStage torque) {
        torque.dialled().ifPresent(d -> adaptors.add(name));
        tools.stream().filter(t -> t.covers(torque.setting())).findFirst().ifPresent(wrenches::add);
      } else {
        angles = true;
      }
    }
  }
}
