package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.core.term.Angle;

@DisplayName("Quantities")
class QuantitiesTest {

  static String refusal(Executable action) {
    return assertThrows(IllegalArgumentException.class, action).getMessage();
  }

  static Stream<Arguments> outOfBounds() {
    return Stream.of(
        refused("FAS-001", () -> new Length(0)),
        refused("FAS-001", () -> new Length(Double.NaN)),
        refused("FAS-001", () -> new Length(Double.POSITIVE_INFINITY)),
        refused("FAS-001", () -> new Area(0)),
        refused("FAS-001", () -> new Friction(0)),
        refused("FAS-001", () -> new NutFactor(-1)),
        refused("FAS-001", () -> new Compliance(0)),
        refused("FAS-001", () -> new Deviation(0)),
        refused("FAS-001", () -> new Utilisation(0)),
        refused("FAS-001", () -> Units.newtonMetres(0)),
        refused("FAS-001", () -> Elasticity.ofMegapascals(0)),
        refused("FAS-002", () -> new Force(-1)),
        refused("FAS-002", () -> new Force(Double.NaN)),
        refused("FAS-002", () -> new Force(Double.POSITIVE_INFINITY)),
        refused("FAS-002", () -> new Stress(-1)),
        refused("FAS-003", () -> new Height(Double.NaN)),
        refused("FAS-003", () -> new Rotation(Double.NEGATIVE_INFINITY)),
        refused("FAS-003", () -> new Moment(Double.NaN)),
        refused("FAS-005", () -> new Range<>(new Force(2), new Force(1))),
        refused("FAS-006", () -> new Utilisation(1.01)),
        refused("FAS-007", () -> new Deviation(100)));
  }

  private static Arguments refused(String code, Executable action) {
    return Arguments.of(code, action);
  }

  @ParameterizedTest(name = "{0} [{index}]")
  @MethodSource("outOfBounds")
  void refuseWhatCannotBeWithACode(String code, Executable action) {
    assertTrue(refusal(action).startsWith(code + " "), () -> refusal(action));
  }

  @Test
  void aRefusalNamesPlaceFoundAndExpected() {
    assertEquals(
        "FAS-001 length: found -2.0 mm, expected more than zero and finite",
        refusal(() -> new Length(-2)));
    assertEquals(
        "FAS-004 bearing diameter of a seat: found 9.00 mm, expected more than 9.00 mm",
        refusal(() -> Seat.of(9, 9)));
  }

  @Test
  void acceptTheirBounds() {
    assertEquals(0, new Force(0).newtons());
    assertEquals(0, new Stress(0).megapascals());
    assertEquals(1, Utilisation.YIELD.share());
    assertEquals(0.9, Utilisation.ASSEMBLY.share());
    assertEquals(0.999, new Deviation(99.9).share(), 1e-12);
  }

  @Test
  void showTheirUnit() {
    assertEquals("48.4 kN", Force.kilonewtons(48.4).toString());
    assertEquals("640 MPa", new Stress(640).toString());
    assertEquals("88.1 mm²", new Area(88.13).toString());
    assertEquals("12.00 mm", Length.mm(12).toString());
    assertEquals("-20.0 mm", Height.mm(-20).toString());
    assertEquals("49.1°", Rotation.degrees(49.149).toString());
    assertEquals("0.12", Friction.of(0.12).toString());
    assertEquals("0.20", NutFactor.of(0.2).toString());
    assertEquals("2.949 µm/kN", new Compliance(2.949e-6).toString());
    assertEquals("-9.9 N·m", new Moment(-9.87).toString());
    assertEquals("±4 %", new Deviation(4).toString());
    assertEquals("0.90", Utilisation.ASSEMBLY.toString());
  }

  @Test
  void compareBySize() {
    assertTrue(new Force(1).compareTo(new Force(2)) < 0);
    assertTrue(new Stress(2).compareTo(new Stress(1)) > 0);
    assertTrue(new Area(2).compareTo(new Area(1)) > 0);
    assertTrue(Height.mm(-2).compareTo(Height.mm(1)) < 0);
    assertTrue(NutFactor.of(0.2).compareTo(NutFactor.of(0.1)) > 0);
    assertTrue(new Compliance(2).compareTo(new Compliance(1)) > 0);
    assertTrue(new Moment(2).compareTo(new Moment(1)) > 0);
    assertTrue(new Deviation(4).compareTo(new Deviation(6)) < 0);
    assertTrue(Utilisation.YIELD.compareTo(Utilisation.ASSEMBLY) > 0);
  }

  @Test
  void convertWithinThemselves() {
    assertEquals(1.5, new Force(1500).inKilonewtons());
    assertEquals(25.4, Length.inches(1).millimetres());
    assertEquals(2, Length.mm(50.8).inInches(), 1e-12);
    assertEquals(36, Length.mm(12).times(3).millimetres());
    assertEquals(180, Rotation.radians(Math.PI).degrees(), 1e-12);
    assertEquals(90, Rotation.of(Angle.degrees("90")).degrees());
    assertEquals(5, Rotation.degrees(-5).size().degrees());
    assertEquals(-15, Rotation.degrees(-5).minus(Rotation.degrees(10)).degrees());
    assertEquals(-30, Height.mm(-20).above(Height.mm(10)).millimetres());
    assertEquals(200, new Stress(2).on(new Area(100)).newtons());
    assertEquals(2, new Area(100).under(new Force(200)).megapascals());
    assertEquals(Math.PI * 25, Area.ofCircle(Length.mm(10)).squareMillimetres(), 1e-12);
    assertEquals(0.25, new Compliance(0.5).under(new Force(0.5)).millimetres());
  }

  @Nested
  class Ranges {
    private final Range<Force> range = new Range<>(new Force(1), new Force(3));

    @Test
    void containTheirEnds() {
      assertTrue(range.contains(new Force(1)));
      assertTrue(range.contains(new Force(3)));
      assertFalse(range.contains(new Force(0.99)));
      assertFalse(range.contains(new Force(3.01)));
    }

    @Test
    void mayBeASinglePoint() {
      assertTrue(new Range<>(new Force(2), new Force(2)).contains(new Force(2)));
    }

    @Test
    void followAFallingFunctionTheRightWayRound() {
      assertEquals(
          new Range<>(new Force(-3 + 4), new Force(-1 + 4)),
          range.map(force -> new Force(4 - force.newtons())));
      assertEquals(range, range.map(force -> force));
      assertEquals(range, Range.between(new Force(3), new Force(1)));
      assertEquals("0.0 kN to 0.0 kN", range.toString());
    }
  }
}
