package org.undercall.command.figure;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.check.ToolRules;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;

/**
 * What a procedure states of one fastener: what is not typed is taken from here.
 *
 * @param about the procedure
 * @param step the step that tightens it
 * @param variant its stages for one head marking
 * @param tools the torque wrenches at hand
 */
record Taken(Procedure.About about, Step.Fasten step, Variant variant, List<Tool> tools) {

  /**
   * The fastener of a step.
   *
   * @param marking the head marking that is typed, if any
   * @throws Fault FIG-012 if there is no such step, FIG-013 if the marking is not stated or
   *     unknown, or as for any procedure that cannot be used
   */
  static Taken of(Path file, Optional<String> id, Optional<String> marking) throws Fault {
    Procedure procedure = ProcedureFile.load(file).procedure();
    Step.Fasten step = step(procedure, id);
    return new Taken(procedure.about(), step, variant(step.fastener(), marking), procedure.tools());
  }

  private static Step.Fasten step(Procedure procedure, Optional<String> id) throws Fault {
    List<Step.Fasten> all = new ArrayList<>();
    for (Walk.Place place : Walk.of(procedure).places()) {
      if (place.step() instanceof Step.Fasten fasten && !all.contains(fasten)) {
        all.add(fasten);
      }
    }
    return all.stream()
        .filter(s -> id.filter(s.head().id()::equals).isPresent())
        .findFirst()
        .orElseThrow(
            () ->
                new Fault(
                    FigureCode.NO_STEP,
                    "--step",
                    id.orElse("none"),
                    all.stream()
                        .map(s -> s.head().id())
                        .distinct()
                        .collect(Collectors.joining(", ", "one of ", ""))));
  }

  private static Variant variant(Fastener fastener, Optional<String> marking) throws Fault {
    List<Variant> variants = fastener.variants();
    if (!fastener.dependsOnMarking()) {
      return variants.get(0);
    }
    List<String> known = variants.stream().map(v -> v.marking().orElseThrow().text()).toList();
    if (marking.isEmpty() && known.size() == 1) {
      return variants.get(0);
    }
    int at = marking.map(known::indexOf).orElse(-1);
    if (at < 0) {
      String all = String.join(" or ", known);
      throw new Fault(FigureCode.NO_VARIANT, "--class", marking.orElse("none"), all);
    }
    return variants.get(at);
  }

  /** The same fastener with another head marking. */
  Taken with(Variant other) {
    return new Taken(about, step, other, tools);
  }

  Fastener fastener() {
    return step.fastener();
  }

  /** The last torque before the angles; a check pass is none. */
  Stage.TorqueStage torque() {
    return (Stage.TorqueStage) variant.stages().get(lastTorque());
  }

  private int lastTorque() {
    int last = 0;
    for (int i = 0; i < variant.stages().size(); i++) {
      if (variant.stages().get(i) instanceof Stage.TorqueStage torque
          && torque.form() != Stage.TorqueStage.Form.CHECK_PASS) {
        last = i;
      }
    }
    return last;
  }

  /** The angles after that torque, together; empty if there is none. */
  Optional<Rotation> turn() {
    double degrees = angles().mapToDouble(a -> a.target().degrees().doubleValue()).sum();
    return degrees > 0 ? Optional.of(Rotation.degrees(degrees)) : Optional.empty();
  }

  /** Their tolerances, together. */
  double turnPlusMinus() {
    return angles().map(Stage.AngleStage::plusMinus).mapToDouble(BigDecimal::doubleValue).sum();
  }

  /** Whether the last of them is meant to reach yield; empty if that is not stated. */
  Optional<Boolean> beyondYield() {
    return angles().reduce((first, second) -> second).flatMap(Stage.AngleStage::beyondYield);
  }

  /**
   * How far the best wrench for that torque may be off, either way in percent, as the check takes
   * it; empty if none covers the torque.
   */
  Optional<Double> wrench() {
    return ToolRules.deviation(tools, torque().setting()).map(BigDecimal::doubleValue);
  }

  private java.util.stream.Stream<Stage.AngleStage> angles() {
    return variant.stages().stream()
        .skip(lastTorque() + 1L)
        .filter(Stage.AngleStage.class::isInstance)
        .map(Stage.AngleStage.class::cast)
        .filter(a -> !a.backOff());
  }

  /** Where this was taken from, in words. */
  String words() {
    return "step "
        + step.head().id()
        + " of "
        + about.title()
        + ", revision "
        + about.revision()
        + ": "
        + fastener().name();
  }
}
