package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.LayOut;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Step;
import org.undercall.port.Fault;

@DisplayName("A joint of which more is stated")
class StatedJointTest {
  private static final String SIZES =
      "'clamped': {'length': 64, 'shank': 40, 'outer': 28, 'inner': 13, 'material': 'aluminium',"
          + " 'unit': 'mm'}, 'seat': {'shape': 'flat', 'outer': 26, 'inner': 13.5, 'unit': 'mm'}";

  private static Fastener fastener(String stages, String more) throws Fault {
    Procedure procedure = OneJoint.procedure("M12x1.5", "10.9", stages, more);
    return ((Step.Fasten) procedure.phases().get(0).steps().get(0)).fastener();
  }

  private static Set<CheckRule> rules(String stages, String more) throws Fault {
    return Set.copyOf(
        OneJoint.findings("M12x1.5", "10.9", stages, more).stream().map(Finding::rule).toList());
  }

  @Test
  @DisplayName("is read with its sizes, seat and friction")
  void read() throws Fault {
    Sizes sizes =
        fastener("70±4", SIZES + ", 'friction': {'least': 0.1, 'most': 0.16}").joint().sizes();
    assertEquals(new BigDecimal("64"), sizes.clamped().orElseThrow().length());
    assertEquals(Fastener.Joint.Material.ALUMINIUM, sizes.clamped().orElseThrow().material());
    assertEquals(Sizes.Shape.FLAT, sizes.seat().orElseThrow().shape());
    assertEquals(new BigDecimal("0.16"), sizes.friction().orElseThrow().seat().most());
  }

  @Test
  @DisplayName("may have friction of thread and seat apart")
  void apart() throws Fault {
    Sizes.FrictionKnown known =
        fastener(
                "70±4",
                "'friction': {'thread': {'least': 0.1, 'most': 0.12},"
                    + " 'seat': {'least': 0.14, 'most': 0.2}}")
            .joint()
            .sizes()
            .friction()
            .orElseThrow();
    assertEquals(new BigDecimal("0.12"), known.thread().most());
    assertEquals(new BigDecimal("0.14"), known.seat().least());
  }

  @Test
  @DisplayName("is for one use if there is a reason to renew it, and is laid out as a new part")
  void renewed() throws Fault {
    Procedure procedure =
        OneJoint.procedure(
            "M12x1.5", "10.9", "70±4", "'renew': ['yielded', 'maker'], 'oneTimeUse': true");
    Fastener fastener = ((Step.Fasten) procedure.phases().get(0).steps().get(0)).fastener();
    assertTrue(fastener.part().oneTimeUse());
    assertEquals(Set.of(Renewal.YIELDED, Renewal.MAKER), fastener.part().renew());
    assertEquals(1, LayOut.of(procedure).newParts().size());
  }

  @Test
  @DisplayName("may say whether an angle goes beyond yield")
  void beyondYield() throws Fault {
    assertEquals(Optional.of(true), angle("70±4 + {90°±5}"));
    assertEquals(Optional.of(false), angle("70±4 + [90°±5]"));
    assertEquals(Optional.empty(), angle("70±4 + 90°±5"));
  }

  private static Optional<Boolean> angle(String stages) throws Fault {
    return ((AngleStage) fastener(stages, null).variants().get(0).stages().get(1)).beyondYield();
  }

  @Test
  @DisplayName("is judged with the friction that is stated")
  void friction() throws Fault {
    assertTrue(rules("100±6", null).contains(CheckRule.TOP_YIELDS));
    assertEquals(Set.of(), rules("100±6", "'friction': {'least': 0.12, 'most': 0.16}"));
  }

  @Test
  @DisplayName("is judged with the seat that is stated: a flange needs more torque")
  void flange() throws Fault {
    String flange = "'seat': {'shape': 'flat', 'outer': 28, 'inner': 13.5, 'unit': 'mm'}";
    assertTrue(rules("108±5", null).contains(CheckRule.TORQUE_MAY_BE_TOO_HIGH));
    assertFalse(rules("108±5", flange).contains(CheckRule.TORQUE_MAY_BE_TOO_HIGH));
  }

  @Test
  @DisplayName("is judged with the sizes that are stated: a long bolt bears more turn")
  void sizes() throws Fault {
    String once = "'oneTimeUse': true, ";
    String longOne = once + "'clamped': {'length': 200, 'shank': 20, 'unit': 'mm'}";
    assertTrue(rules("65±3 + 300°±5", "'oneTimeUse': true").contains(CheckRule.TURNED_TOO_FAR));
    assertFalse(rules("65±3 + 300°±5", longOne).contains(CheckRule.TURNED_TOO_FAR));
  }

  @Test
  @DisplayName("is judged with the certificate of the wrench")
  void certificate() throws Fault {
    assertTrue(rules("62±2", null).contains(CheckRule.TOLERANCE_NARROW));
    assertFalse(rules("62±2.5", null).contains(CheckRule.TOLERANCE_NARROW));
  }

  @Test
  @DisplayName("tells in a finding what it found by words and by drawing lots")
  void told() throws Fault {
    List<Finding> findings = OneJoint.findings("M12x1.5", "8.8", "105±10", "'lubrication': 'dry'");
    assertTrue(findings.get(0).found().contains("% of them would yield"), findings::toString);
    List<Finding> lugs =
        OneJoint.findings(
            "M12x1.5", null, "100±10", "'name': 'lug nuts', 'hardware': 'nut', 'count': 5");
    assertTrue(
        lugs.stream().allMatch(f -> f.found().contains("guessed from the name \"lug nuts\"")),
        lugs::toString);
  }

  @Test
  @DisplayName("is shown the end of its range, where the tolerance is one")
  void placeOfARange() throws Fault {
    Finding range = OneJoint.findings("M12x1.5", "10.9", "25..75", null).get(0);
    assertTrue(range.pointer().endsWith("/stages/0/upTo"), range.pointer());
    Finding wide = OneJoint.findings("M12x1.5", "10.9", "50±25", null).get(0);
    assertTrue(wide.pointer().endsWith("/stages/0/plusMinus"), wide.pointer());
  }
}
