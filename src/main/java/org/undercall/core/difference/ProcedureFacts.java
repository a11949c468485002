package org.undercall.core.difference;

import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.WorkPhase;

/** The fields of a procedure beside its steps. */
final class ProcedureFacts {
  private ProcedureFacts() {}

  /** Everything of the procedure but tools and phases. */
  static Facts whole(Procedure procedure) {
    Procedure.About about = procedure.about();
    Facts facts =
        new Facts()
            .put(Weight.WORK, "vehicle", about.vehicle())
            .put(Weight.WORK, "cautions", texts(procedure.cautions()))
            .put(Weight.TEXT, "brief cautions", briefs(procedure.cautions()))
            .put(Weight.WORK, "load holds", Facts.time(procedure.loadHolds()))
            .put(Weight.WORK, "wrenches in order", names(procedure.tools()))
            .put(Weight.TEXT, "title", about.title())
            .put(Weight.TEXT, "author", about.author())
            .put(Weight.TEXT, "revision", about.revision())
            .put(Weight.TEXT, "source of the values", about.values())
            .put(Weight.TEXT, "brief source of the values", about.valuesBrief());
    procedure.rideHeight().ifPresent(height -> rideHeight(facts, height));
    return facts;
  }

  private static List<String> texts(List<Caution> cautions) {
    return cautions.stream().map(Caution::text).toList();
  }

  /** The brief forms; one that is missing keeps its place. */
  private static List<String> briefs(List<Caution> cautions) {
    boolean none = cautions.stream().allMatch(caution -> caution.brief().isEmpty());
    return none ? List.of() : cautions.stream().map(c -> c.brief().orElse("")).toList();
  }

  private static List<String> names(List<Tool> tools) {
    return tools.stream().map(Tool::id).toList();
  }

  private static void rideHeight(Facts facts, RideHeight height) {
    facts
        .put(Weight.WORK, "ride height tolerance", height.plusMinus(), " mm")
        .amount(Weight.WORK, "ride height left to right", height.sides(), " mm");
    Optional<RideHeight.Arm> arm = height.arm();
    facts
        .amount(Weight.WORK, "arm length", arm.map(RideHeight.Arm::length), " mm")
        .amount(Weight.WORK, "arm at ride height", arm.map(RideHeight.Arm::ride), " mm")
        .amount(Weight.WORK, "arm at full droop", arm.map(RideHeight.Arm::droop), " mm")
        .amount(Weight.WORK, "arm at full bump", arm.map(RideHeight.Arm::bump), " mm")
        .amount(Weight.WORK, "preset limit", arm.map(RideHeight.Arm::presetLimit), "°")
        .amount(Weight.WORK, "arm ratio", arm.map(RideHeight.Arm::ratio), "");
  }

  /** A torque wrench. */
  static Facts tool(Tool tool) {
    return new Facts()
        .put(Weight.WORK, "kind", tool.kind())
        .torque(Weight.WORK, "least", tool.least())
        .torque(Weight.WORK, "most", tool.most())
        .put(Weight.WORK, "calibrated", tool.calibrated().map(Object::toString))
        .amount(Weight.WORK, "uncertainty", tool.uncertainty(), " %");
  }

  /** A phase without its steps. */
  static Facts phase(WorkPhase phase) {
    return new Facts()
        .put(Weight.TIGHTENS, "each", phase.each())
        .put(Weight.TEXT, "phase", phase.name());
  }
}
