package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

@DisplayName("Units")
class UnitsTest {

  /** Builds the units from their definitions in a units library of its own. */
  static Unit<Energy> independent(TorqueUnit unit) {
    Unit<Mass> pound = tech.units.indriya.unit.Units.KILOGRAM.multiply(0.45359237);
    Unit<Length> inch = tech.units.indriya.unit.Units.METRE.multiply(0.0254);
    Unit<Length> foot = inch.multiply(12);
    Unit<Acceleration> gravity =
        tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND.multiply(9.80665);
    Unit<Force> poundForce = pound.multiply(gravity).asType(Force.class);
    Unit<Force> kilogramForce =
        tech.units.indriya.unit.Units.KILOGRAM.multiply(gravity).asType(Force.class);
    return switch (unit) {
      case NEWTON_METRE -> tech.units.indriya.unit.Units.JOULE;
      case POUND_FORCE_FOOT -> poundForce.multiply(foot).asType(Energy.class);
      case POUND_FORCE_INCH -> poundForce.multiply(inch).asType(Energy.class);
      case KILOGRAM_FORCE_METRE ->
          kilogramForce.multiply(tech.units.indriya.unit.Units.METRE).asType(Energy.class);
    };
  }

  @ParameterizedTest
  @EnumSource(TorqueUnit.class)
  void agreeWithAnIndependentLibraryInEveryPair(TorqueUnit from) {
    for (TorqueUnit to : TorqueUnit.values()) {
      double ours =
          Units.convert(new Torque(new BigDecimal("123.4"), from), to).amount().doubleValue();
      double theirs = independent(from).getConverterTo(independent(to)).convert(123.4);
      assertEquals(theirs, ours, Math.abs(theirs) * 1e-14, from + " to " + to);
    }
  }

  @Test
  void areExactWhereTheResultEnds() {
    assertEquals(
        new BigDecimal("135.58179483314004"),
        Units.convert(
                new Torque(new BigDecimal("100"), TorqueUnit.POUND_FORCE_FOOT),
                TorqueUnit.NEWTON_METRE)
            .amount());
    assertEquals(
        new Torque(new BigDecimal("12"), TorqueUnit.POUND_FORCE_INCH),
        Units.convert(
            new Torque(BigDecimal.ONE, TorqueUnit.POUND_FORCE_FOOT), TorqueUnit.POUND_FORCE_INCH));
  }

  @Test
  void leaveTheSameUnitAlone() {
    Torque torque = Torque.newtonMetres("110");
    assertSame(torque, Units.convert(torque, TorqueUnit.NEWTON_METRE));
  }

  @Test
  void torquesCompareAcrossUnits() {
    Torque foot = new Torque(BigDecimal.ONE, TorqueUnit.POUND_FORCE_FOOT);
    Torque inches = new Torque(new BigDecimal("12"), TorqueUnit.POUND_FORCE_INCH);
    assertEquals(0, foot.compareTo(inches));
    assertTrue(foot.compareTo(Torque.newtonMetres("1.35")) > 0);
    assertTrue(foot.compareTo(Torque.newtonMetres("1.36")) < 0);
  }

  @ParameterizedTest
  @CsvSource({
    "1, INCH, MILLIMETRE, 25.4",
    "381, MILLIMETRE, INCH, 15",
    "1, KILOMETRE, MILLIMETRE, 1000000",
    "382, MILLIMETRE, MILLIMETRE, 382"
  })
  void convertLengths(String amount, MeasureUnit from, MeasureUnit to, String expected) {
    Measure measure = new Measure(new BigDecimal(amount), from);
    assertEquals(new Measure(new BigDecimal(expected), to), Units.convert(measure, to));
  }

  @Test
  void readALengthInInches() {
    Measure measure = new Measure(new BigDecimal("15"), MeasureUnit.INCH);
    assertEquals(381, Units.length(measure).millimetres(), 1e-12);
  }

  @Test
  void refuseWhatIsNoLength() {
    for (MeasureUnit unit : List.of(MeasureUnit.BAR, MeasureUnit.DEGREE)) {
      Measure measure = new Measure(BigDecimal.ONE, unit);
      assertEquals(
          "FAS-020 length: found " + unit.symbol() + ", expected a unit of length",
          refusal(() -> Units.length(measure)));
    }
  }

  @Nested
  class AToolsScale {
    private final Torque exact = Torque.newtonMetres("110");

    @Test
    void showsTheNearestMarkAndSaysSo() {
      ScaleReading reading = ScaleReading.of(exact, TorqueUnit.POUND_FORCE_FOOT, BigDecimal.ONE);
      assertEquals(new Torque(new BigDecimal("81"), TorqueUnit.POUND_FORCE_FOOT), reading.shown());
      assertEquals(exact, reading.exact());
      assertFalse(reading.isExact());
      assertEquals("110 N·m (shown as 81 lbf·ft, rounded to 1)", reading.toString());
    }

    @ParameterizedTest
    @CsvSource({"95.6522, 0.5, 95.5", "95.75, 0.5, 96", "95.74, 0.5, 95.5", "95.5, 1, 96"})
    void roundsHalfAStepUp(String torque, String step, String shown) {
      ScaleReading reading =
          ScaleReading.of(
              Torque.newtonMetres(torque), TorqueUnit.NEWTON_METRE, new BigDecimal(step));
      assertEquals(Torque.newtonMetres(shown), reading.shown());
    }

    @Test
    void showsAnExactValueWithoutRemark() {
      ScaleReading same = ScaleReading.of(exact, TorqueUnit.NEWTON_METRE, BigDecimal.ONE);
      assertTrue(same.isExact());
      assertEquals("110 N·m", same.toString());
      Torque foot = new Torque(BigDecimal.ONE, TorqueUnit.POUND_FORCE_FOOT);
      ScaleReading other = ScaleReading.of(foot, TorqueUnit.POUND_FORCE_INCH, BigDecimal.ONE);
      assertEquals("1 lbf·ft (shown as 12 lbf·in)", other.toString());
    }

    @Test
    void refusesAStepOrTorqueOfNothing() {
      assertTrue(
          refusal(() -> ScaleReading.of(exact, TorqueUnit.NEWTON_METRE, BigDecimal.ZERO))
              .startsWith("FAS-021"));
      assertTrue(
          refusal(() -> ScaleReading.of(exact, TorqueUnit.NEWTON_METRE, new BigDecimal("1000")))
              .startsWith("FAS-022"));
    }
  }
}
