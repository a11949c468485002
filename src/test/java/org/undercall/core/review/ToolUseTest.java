package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.undercall.core.check.CheckRule;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Angle;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Torque;

/** Invented values throughout. */
class ToolUseTest {
  private static final Tool SMALL = tool("small", "10", "60");
  private static final Tool LARGE = tool("large", "40", "200");
  private static final Tool OTHER = tool("other", "50", "150");
  private static final StepRef STEP = new StepRef("bolts", Side.CAR);

  private final Walk walk = Walk.of(procedure());

  @Test
  void aTorqueStageCountsForEveryToolThatCouldHaveServedOncePerFastener() {
    assertEquals(Map.of("large", 5, "other", 5), uses(at("2026-06-01", stage(1))));
  }

  @Test
  void aTorqueStageCountsForTheToolThatWasNamed() {
    Recorded named = at("2026-06-01", new SessionEvent.WrenchNamed(STEP, "other"));
    assertEquals(Map.of("other", 5), uses(named, at("2026-06-01", stage(1))));
    Recorded misfit = at("2026-06-01", new SessionEvent.WrenchNamed(STEP, "small"));
    assertEquals(Map.of("large", 5, "other", 5), uses(misfit, at("2026-06-01", stage(1))));
  }

  @Test
  void anAngleStageUsesNoTorqueWrench() {
    assertEquals(Map.of(), uses(at("2026-06-01", stage(2))));
  }

  @Test
  void usesBeforeTheCalibrationDoNotCount() {
    assertEquals(Map.of(), uses(at("2026-01-31", stage(1))));
    assertEquals(Map.of("large", 5, "other", 5), uses(at("2026-02-01", stage(1))));
  }

  @Test
  void fiveThousandUsesMakeACalibrationDue() {
    assertEquals(List.of(), calibrationFindings(Map.of("large", 4999)));
    assertEquals(
        List.of("large used 5000 times since its calibration"),
        calibrationFindings(Map.of("large", 5000)));
  }

  @Test
  void areShownInAReviewWithWhetherTheCalibrationHeldOnItsDay() {
    List<ToolState> held = Review.of(walk, List.of(at("2027-01-31", stage(1)))).head().tools();
    assertEquals(
        List.of("small", "large", "other"), held.stream().map(t -> t.tool().id()).toList());
    assertEquals(List.of(0, 0, 0), held.stream().map(ToolState::uses).toList());
    assertEquals(List.of(0, 5, 5), held.stream().map(ToolState::possible).toList());
    assertEquals(Calibration.State.VALID, held.get(1).calibration().orElseThrow().state());
    List<ToolState> over = Review.of(walk, List.of(at("2027-02-01", stage(1)))).head().tools();
    assertEquals(Calibration.State.DUE_BY_DATE, over.get(1).calibration().orElseThrow().state());
    assertEquals(LocalDate.parse("2027-02-01"), over.get(1).calibration().orElseThrow().due());
    List<ToolState> early = Review.of(walk, List.of(at("2026-01-31", stage(1)))).head().tools();
    assertEquals(Calibration.State.DATE_NOT_YET, early.get(1).calibration().orElseThrow().state());
  }

  private List<String> calibrationFindings(Map<String, Integer> uses) {
    return ProcedureCheck.of(walk.procedure(), LocalDate.parse("2026-06-01"), uses).stream()
        .filter(finding -> finding.rule() == CheckRule.CALIBRATION_OVER)
        .map(finding -> finding.found())
        .toList();
  }

  private Map<String, Integer> uses(Recorded... decisions) {
    ToolUse use = new ToolUse(List.of(SMALL, LARGE, OTHER));
    use.add(walk, List.of(decisions));
    return use.uses();
  }

  private static SessionEvent stage(int number) {
    return new SessionEvent.StageClosed(STEP, number, "value");
  }

  private static Recorded at(String day, SessionEvent event) {
    Moment moment = new Moment(OffsetDateTime.parse(day + "T10:00:00+01:00"), 0);
    return new Recorded(1, moment, Optional.empty(), List.of(event), "");
  }

  private static Tool tool(String id, String least, String most) {
    return new Tool(
        id, Torque.newtonMetres(least), Torque.newtonMetres(most), LocalDate.parse("2026-02-01"));
  }

  private static Procedure procedure() {
    Fastener bolts =
        new Fastener(
            "wheel bolts",
            "M14x1.5",
            new BigDecimal("19"),
            new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY),
            LoadCondition.ANY,
            new Fastener.FastenerSet(5, List.of(1, 3, 5, 2, 4)),
            List.of(
                new Variant(
                    Optional.empty(),
                    List.of(
                        new Stage.TorqueStage(Torque.newtonMetres("135"), BigDecimal.TEN),
                        new Stage.AngleStage(Angle.degrees("30"), BigDecimal.ONE)))),
            Fastener.Joint.UNSTATED);
    Step step = new Step.Fasten(new Step.Head("bolts", "Bolts", List.of(), false), bolts);
    return new Procedure(
        new Procedure.About("Wheels", "invented van", "Test", "1", "invented"),
        List.of(Caution.of("Stands carry the van.")),
        List.of(SMALL, LARGE, OTHER),
        Optional.empty(),
        List.of(new WorkPhase("tighten", Each.CAR, List.of(step))));
  }
}
