package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.HeadMarking;
import org.undercall.port.Fault;

@DisplayName("The torque to expect after the last angle")
class TorqueToExpectTest {
  private static final String SIZES =
      "'oneTimeUse': true, 'clamped': {'length': 64, 'shank': 40, 'outer': 28, 'inner': 13,"
          + " 'unit': 'mm'}";

  private static Optional<AngleStage.Band> band(String stages, String more, String marking)
      throws Fault {
    Procedure procedure = OneJoint.procedure("M12x1.5", "10.9", stages, more);
    Fastener fastener = ((Step.Fasten) procedure.phases().get(0).steps().get(0)).fastener();
    return TorqueToExpect.of(
        fastener, Optional.ofNullable(marking).map(HeadMarking::new), procedure.tools());
  }

  private static AngleStage.Band band(String stages) throws Fault {
    return band(stages, SIZES, "10.9").orElseThrow();
  }

  private static BigDecimal least(String stages) throws Fault {
    return band(stages).least().amount();
  }

  private static BigDecimal most(String stages) throws Fault {
    return band(stages).most().amount();
  }

  @Test
  @DisplayName("without tolerances is the band that the check knows, in whole numbers outwards")
  void exactly() throws Fault {
    assertEquals("101 N·m", band("70±0 + 90°±0").least() + "");
    assertEquals("280 N·m", band("70±0 + 90°±0").most() + "");
  }

  @Test
  @DisplayName("begins with the least torque and angle and ends with the most")
  void tolerances() throws Fault {
    assertEquals(least("66±0 + 85°±0"), least("70±4 + 90°±5"));
    assertEquals(most("74±0 + 95°±0"), most("70±4 + 90°±5"));
    assertTrue(least("70±0 + 30°±20").compareTo(least("70±0 + 30°±0")) < 0);
    assertTrue(most("40±4 + 10°±1").compareTo(most("40±0 + 10°±0")) > 0);
    assertTrue(most("40±0 + 10°±5").compareTo(most("40±0 + 10°±0")) > 0);
  }

  @Test
  @DisplayName("of two angles is that of both together, after the last torque")
  void twoAngles() throws Fault {
    assertEquals(band("70±4 + 30°±5"), band("70±4 + 10°±2 + 20°±3"));
    assertEquals(band("70±4 + 30°±5"), band("20±2 + 70±4 + 30°±5"));
    assertEquals(band("70±4 + 30°±5"), band("90±5 + back 90°±5 + 70±4 + 30°±5"));
  }

  @Test
  @DisplayName("is told in the unit of the specification")
  void unit() throws Fault {
    AngleStage.Band band = band("50±3 lbf·ft + 90°±5");
    assertEquals("lbf·ft", band.least().unit().symbol());
    assertEquals("lbf·ft", band.most().unit().symbol());
    AngleStage.Band metric = band("67.8±4 + 90°±5");
    assertEquals(
        metric.least().inNewtonMetres(), band.least().inNewtonMetres(), 2, "one pound-foot off");
    assertEquals(metric.most().inNewtonMetres(), band.most().inNewtonMetres(), 2);
  }

  @Test
  @DisplayName("is one at least, however little is turned")
  void atLeastOne() throws Fault {
    assertEquals("1 N·m", band("1±0.5 + 2°±1").least() + "");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "another class is read|70±4 + 90°±5||8.8",
        "no class is read|70±4 + 90°±5||",
        "no sizes are stated|70±4 + 90°±5|'clamped': null|10.9",
        "a nut locks itself|70±4 + 90°±5|'hardware': 'self-locking-nut'|10.9",
        "a nut is measured as it runs down|70±4 + 90°±5|'runDown': 'added'|10.9",
        "it ends with a torque|50±4 + 70±4||10.9",
        "it ends with a torque after a back-off|50±4 + back 30°±5 + 70±4||10.9",
        "it ends with a back-off|70±4 + back 90°±5||10.9",
        "the angle follows a back-off|70±4 + back 90°±5 + 120°±5||10.9"
      })
  @DisplayName("is not known if")
  void unknown(String why, String stages, String more, String marking) throws Fault {
    String rest = more == null ? "" : ", " + more;
    assertTrue(band("70±4 + 90°±5", SIZES, "10.9").isPresent());
    assertEquals(Optional.empty(), band(stages, SIZES + rest, marking), why);
  }
}
