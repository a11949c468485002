package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.term.HeadMarking;

@DisplayName("Threads, classes and nuts")
class StrengthTest {

  @Nested
  class AThread {

    @Test
    void isShownWithoutThePitchOnlyIfCoarse() {
      assertEquals("M12", ThreadSize.of("M12").toString());
      assertEquals("M12", ThreadSize.of("M12x1.75").toString());
      assertEquals("M12x1.5", ThreadSize.of("M12x1.5").toString());
      assertEquals("M20x1", ThreadSize.of(" M20×1 ").toString());
      assertTrue(ThreadSize.of("M8").coarse());
      assertFalse(ThreadSize.of("M8x1").coarse());
    }

    @Test
    void ofEveryCatalogueEntryIsFoundByItsName() {
      assertEquals(42, ThreadCatalogue.all().size());
      for (ThreadSize thread : ThreadCatalogue.all()) {
        assertEquals(Optional.of(thread), ThreadCatalogue.find(thread.toString()));
      }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12x1.5", "M12x1.6", "M13", "M3", "M30", "UNF 1/2", "M12x"})
    void thatTheStandardDoesNotHaveIsRefused(String designation) {
      assertEquals(Optional.empty(), ThreadCatalogue.find(designation));
      assertEquals(
          "FAS-010 thread: found '"
              + designation
              + "', expected an ISO metric thread from M4 to M24, such as M12 or M12x1.5",
          refusal(() -> ThreadSize.of(designation)));
    }

    @Test
    void needsAPitchLessThanHalfItsDiameter() {
      assertTrue(refusal(() -> new ThreadSize(Length.mm(4), Length.mm(2))).startsWith("FAS-004"));
    }
  }

  @Nested
  class APropertyClass {

    @ParameterizedTest
    @EnumSource(PropertyClass.class)
    void isFoundByItsMarking(PropertyClass strength) {
      assertEquals(Optional.of(strength), PropertyClass.of(strength.marking()));
      assertEquals(strength.marking().text(), strength.toString());
    }

    @Test
    void thatIsUnknownIsNotGuessed() {
      assertEquals(Optional.empty(), PropertyClass.of(new HeadMarking("14.9")));
      assertEquals(
          "FAS-012 property class: found 14.9, expected 4.6 to 12.9",
          refusal(() -> Bolt.hexagon("M12", "14.9")));
    }

    @Test
    void of88RisesAboveSixteenMillimetresOnly() {
      assertEquals(640, PropertyClass.C8_8.yieldStrength(ThreadSize.of("M16")).megapascals());
      assertEquals(660, PropertyClass.C8_8.yieldStrength(ThreadSize.of("M18")).megapascals());
      assertEquals(940, PropertyClass.C10_9.yieldStrength(ThreadSize.of("M18")).megapascals());
    }

    @Test
    void of98EndsAtSixteenMillimetres() {
      assertTrue(PropertyClass.C9_8.exists(ThreadSize.of("M16")));
      assertFalse(PropertyClass.C9_8.exists(ThreadSize.of("M18")));
      assertTrue(PropertyClass.C8_8.exists(ThreadSize.of("M18")));
      assertTrue(refusal(() -> Bolt.hexagon("M18", "9.8")).startsWith("FAS-011"));
    }

    @Test
    void givesElongationWhereTheStandardDoes() {
      assertEquals(Optional.of(9), PropertyClass.C10_9.elongationPercent());
      assertEquals(Optional.empty(), PropertyClass.C5_8.elongationPercent());
    }
  }

  @Nested
  class ANut {

    @ParameterizedTest
    @CsvSource({
      "C4_6, 5",
      "C4_8, 5",
      "C5_6, 5",
      "C5_8, 5",
      "C6_8, 6",
      "C8_8, 8",
      "C9_8, 9",
      "C10_9, 10",
      "C12_9, 12"
    })
    void needsAtLeastTheFirstNumberOfTheBolt(PropertyClass bolt, String least) {
      assertEquals(NutClass.of(least).orElseThrow(), NutClass.leastFor(bolt));
      assertEquals(least, NutClass.leastFor(bolt).toString());
    }

    @Test
    void ofAHigherClassCarriesALowerBoltButNotTheOtherWayRound() {
      assertTrue(NutClass.N10.carries(PropertyClass.C8_8));
      assertFalse(NutClass.N8.carries(PropertyClass.C10_9));
    }

    @Test
    void thatIsThinCarriesNothingFully() {
      assertFalse(NutClass.N04.carries(PropertyClass.C4_6));
      assertFalse(NutClass.N05.carries(PropertyClass.C4_6));
      assertEquals(Optional.empty(), NutClass.of("7"));
    }
  }

  @Nested
  class ABolt {

    @Test
    void withAHexagonHeadHasTheStandardSeat() {
      assertEquals(15.065, Bolt.hexagon("M12x1.5", "10.9").seat().meanDiameter().millimetres());
      assertEquals("M12x1.5 10.9", Bolt.hexagon("M12x1.5", "10.9").toString());
    }

    @Test
    void withAFlangeTakesItsOwnSeat() {
      Bolt flanged = Bolt.hexagon("M12", "8.8").with(Seat.of(24, 13.5));
      assertEquals(18.75, flanged.seat().meanDiameter().millimetres());
    }

    @Test
    void withoutAStandardSeatIsRefused() {
      assertEquals(
          "FAS-013 seat: found none for M7, expected its diameters",
          refusal(() -> Bolt.hexagon("M7", "8.8")));
    }
  }

  @Nested
  class AStateOfLubrication {

    @Test
    void givesARangeOfFriction() {
      assertEquals(mu(0.14, 0.45), FrictionClass.expect(Lubrication.DRY));
      assertEquals(mu(0.08, 0.16), FrictionClass.expect(Lubrication.OILED));
      assertEquals(mu(0.08, 0.24), FrictionClass.expect(Lubrication.AS_DELIVERED));
      assertEquals(mu(0.08, 0.24), FrictionClass.expect(Lubrication.UNSTATED));
    }

    @Test
    @DisplayName("of a paste is class A, and a workshop's grease may hold what a paste holds")
    void pasteIsClassAAndGreaseMayBe() {
      assertEquals(mu(0.04, 0.10), FrictionClass.expect(Lubrication.PASTE));
      assertEquals(mu(0.04, 0.16), FrictionClass.expect(Lubrication.GREASED));
      Bolt bolt = Bolt.hexagon("M12x1.5", "8.8");
      Friction moly = Friction.of(0.05);
      assertEquals(51, Assembly.atYield(bolt).torque(moly, moly).inNewtonMetres(), 1);
      Range<Friction> greased = FrictionClass.expect(Lubrication.GREASED).orElseThrow();
      assertTrue(Assembly.atYield(bolt).torque(greased).low().inNewtonMetres() < 51);
    }

    @Test
    @DisplayName("with adhesive stands in class C")
    void threadlockerIsClassC() {
      assertEquals(mu(0.14, 0.24), FrictionClass.expect(Lubrication.THREADLOCKER));
    }

    private Optional<Range<Friction>> mu(double low, double high) {
      return Optional.of(new Range<>(Friction.of(low), Friction.of(high)));
    }

    @Test
    void givesARangeOfNutFactors() {
      assertEquals(k(0.17, 0.50), SurfaceState.expect(Lubrication.DRY));
      assertEquals(k(0.15, 0.22), SurfaceState.expect(Lubrication.OILED));
      assertEquals(k(0.10, 0.20), SurfaceState.expect(Lubrication.GREASED));
      assertEquals(k(0.10, 0.16), SurfaceState.expect(Lubrication.PASTE));
      assertEquals(k(0.10, 0.35), SurfaceState.expect(Lubrication.AS_DELIVERED));
      assertEquals(k(0.10, 0.35), SurfaceState.expect(Lubrication.UNSTATED));
      assertEquals(Optional.empty(), SurfaceState.expect(Lubrication.THREADLOCKER));
    }

    private Optional<Range<NutFactor>> k(double low, double high) {
      return Optional.of(new Range<>(NutFactor.of(low), NutFactor.of(high)));
    }
  }
}
