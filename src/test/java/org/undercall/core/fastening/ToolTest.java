package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.procedure.Tool;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

@DisplayName("Torque tools")
class ToolTest {
  private static final Torque TWO_HUNDRED = Torque.newtonMetres("200");

  @Nested
  class ARange {

    @ParameterizedTest
    @CsvSource({"39.9, BELOW", "40, WITHIN", "110, WITHIN", "200, WITHIN", "200.1, ABOVE"})
    void runsFromAFifthOfTheLargestValueUnlessTheToolSaysOtherwise(
        String torque, ToolRange.Place place) {
      assertEquals(place, ToolRange.upTo(TWO_HUNDRED).place(Torque.newtonMetres(torque)));
    }

    @Test
    void isTheOneTheToolStates() {
      LocalDate day = LocalDate.of(2026, 1, 1);
      Tool tool = new Tool("W1", Torque.newtonMetres("10"), TWO_HUNDRED, day);
      assertEquals(ToolRange.Place.WITHIN, ToolRange.of(tool).place(Torque.newtonMetres("10")));
      assertEquals(TWO_HUNDRED, ToolRange.of(tool).most());
    }

    @Test
    void comparesAcrossUnits() {
      Torque feet = new Torque(new BigDecimal("150"), TorqueUnit.POUND_FORCE_FOOT);
      assertEquals(ToolRange.Place.ABOVE, ToolRange.upTo(TWO_HUNDRED).place(feet));
    }

    @Test
    void goesUp() {
      assertEquals(
          "FAS-040 range of a tool: found 200 N·m to 200 N·m, expected one that goes up",
          refusal(() -> new ToolRange(TWO_HUNDRED, TWO_HUNDRED)));
    }
  }

  @Nested
  class ACalibration {
    private final LocalDate last = LocalDate.of(2025, 3, 31);

    @ParameterizedTest
    @CsvSource({
      "2025-03-30, 0, DATE_NOT_YET",
      "2025-03-31, 0, VALID",
      "2026-03-30, 4999, VALID",
      "2026-03-31, 0, DUE_BY_DATE",
      "2026-03-31, 9000, DUE_BY_DATE",
      "2025-04-01, 5000, DUE_BY_USES"
    })
    void isDueAfterTwelveMonthsOrFiveThousandUses(
        LocalDate today, int uses, Calibration.State state) {
      Calibration calibration = new Calibration(last, OptionalInt.of(uses));
      assertEquals(state, calibration.on(today, Calibration.Interval.ISO_6789));
    }

    @Test
    void goesByTheDateAloneIfNobodyCounts() {
      Calibration calibration = new Calibration(last, OptionalInt.empty());
      Calibration.Interval half = new Calibration.Interval(6, 1);
      assertEquals(LocalDate.of(2025, 9, 30), calibration.dueOn(half));
      assertEquals(Calibration.State.VALID, calibration.on(LocalDate.of(2025, 9, 29), half));
      assertEquals(Calibration.State.DUE_BY_DATE, calibration.on(LocalDate.of(2025, 9, 30), half));
    }

    @Test
    void refusesNegativeCountsAndEmptyPeriods() {
      assertTrue(refusal(() -> new Calibration(last, OptionalInt.of(-1))).startsWith("FAS-002"));
      assertTrue(refusal(() -> new Calibration.Interval(0, 1)).startsWith("FAS-001"));
      assertTrue(refusal(() -> new Calibration.Interval(1, 0)).startsWith("FAS-001"));
    }
  }

  @Nested
  class AWrenchClass {

    @Test
    void tellsIndicatingToolsFromSettingOnes() {
      assertTrue(WrenchClass.I_E.indicating());
      assertFalse(WrenchClass.II_A.indicating());
      assertEquals(1, WrenchClass.I_B.preloadings());
      assertEquals(5, WrenchClass.II_A.preloadings());
      assertEquals(5, WrenchClass.II_G.readings());
      assertEquals(10, WrenchClass.II_B.readings());
      assertEquals("wrench, adjustable, graduated", WrenchClass.II_A.words());
    }
  }

  @Nested
  class AWindowOfTrueTorque {
    private final Range<Torque> window =
        TorqueWindow.of(Torque.newtonMetres("110"), new Deviation(4));

    private Range<Torque> permitted(String low, String high) {
      return new Range<>(Torque.newtonMetres(low), Torque.newtonMetres(high));
    }

    @Test
    void meetsASpecificationOnlyWithBothEnds() {
      assertTrue(TorqueWindow.meets(window, permitted("105", "115")));
      assertFalse(TorqueWindow.meets(window, permitted("106", "115")));
      assertFalse(TorqueWindow.meets(window, permitted("105", "114")));
    }
  }

  @Nested
  class AnAdaptor {
    private final Adaptor adaptor =
        new Adaptor(Length.mm(400), Length.mm(60), Rotation.degrees(30));

    @Test
    void leadsBackToTheTorqueAtTheFastener() {
      Torque setting = adaptor.setting(Torque.newtonMetres("110"));
      assertEquals(110, adaptor.atFastener(setting).inNewtonMetres(), 1e-9);
    }

    @Test
    void keepsTheUnitOfTheTorque() {
      Torque feet = new Torque(new BigDecimal("80"), TorqueUnit.POUND_FORCE_FOOT);
      assertEquals(TorqueUnit.POUND_FORCE_FOOT, adaptor.setting(feet).unit());
      assertEquals(80 * 0.885031, adaptor.setting(feet).amount().doubleValue(), 0.0001);
    }

    @Test
    void turnedBackPastTheGripIsRefused() {
      assertTrue(
          refusal(() -> new Adaptor(Length.mm(60), Length.mm(60), Rotation.degrees(180)))
              .startsWith("FAS-041"));
    }
  }
}
