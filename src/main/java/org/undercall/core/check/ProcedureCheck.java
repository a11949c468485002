package org.undercall.core.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.core.procedure.Procedure;

/** Looks for everything in a procedure that can be walked and still looks wrong. */
public final class ProcedureCheck {
  private ProcedureCheck() {}

  /**
   * All findings, errors first, each kind in the order of the rules and of the procedure.
   *
   * @param procedure what is judged
   * @param on the day for which calibrations are judged
   */
  public static List<Finding> of(Procedure procedure, LocalDate on) {
    return of(procedure, on, Map.of());
  }

  /**
   * All findings, with the uses of the tools since their calibration.
   *
   * @param uses by the tool's id; an absent tool was not counted
   */
  public static List<Finding> of(Procedure procedure, LocalDate on, Map<String, Integer> uses) {
    List<Spot> spots = Spot.of(procedure);
    List<Finding> findings = new ArrayList<>();
    findings.addAll(CautionRules.check(procedure));
    findings.addAll(ToolRules.calibrations(procedure.tools(), on, uses));
    findings.addAll(ToolRules.uncertainties(procedure.tools()));
    findings.addAll(CarRules.lifts(spots));
    for (Spot spot : spots) {
      findings.addAll(TorqueRules.check(spot, procedure.tools()));
      findings.addAll(StageRules.check(spot, procedure.tools()));
      findings.addAll(VariantRules.check(spot));
      findings.addAll(ClampRules.check(spot, procedure.tools()));
      findings.addAll(AngleRules.check(spot, procedure.tools()));
      findings.addAll(HardwareRules.check(spot));
      findings.addAll(JointRules.check(spot));
      findings.addAll(ToolRules.ranges(spot, procedure.tools()));
      findings.addAll(WheelRules.check(spot));
      findings.addAll(DueRule.check(spot));
    }
    findings.addAll(HardwareRules.cures(spots));
    findings.addAll(JointRules.mixedLoads(spots));
    findings.addAll(LikeRules.check(spots));
    findings.addAll(SideRules.check(spots));
    findings.addAll(LoadWordRules.check(spots));
    findings.addAll(WheelRules.handOver(spots));
    findings.addAll(WheelsOnRule.check(procedure, spots));
    findings.addAll(CarRules.check(procedure, spots));
    return sorted(findings);
  }

  /** The weight of the heaviest finding; empty if there is none. */
  public static Optional<Severity> heaviest(List<Finding> findings) {
    return findings.stream().map(f -> f.rule().severity()).min(Comparator.naturalOrder());
  }

  private static List<Finding> sorted(List<Finding> findings) {
    Comparator<Finding> bySeverity = Comparator.comparing(f -> f.rule().severity());
    Stream<Finding> stream = findings.stream().distinct();
    return stream.sorted(bySeverity.thenComparing(Finding::rule)).toList();
  }
}
