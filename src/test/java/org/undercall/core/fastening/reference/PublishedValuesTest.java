package org.undercall.core.fastening.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.core.fastening.Adaptor;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.WrenchClass;
import org.undercall.core.term.Torque;

@DisplayName("Outside values")
class PublishedValuesTest {

  static Stream<Arguments> checks() {
    return AllChecks.list().stream()
        .map(check -> argumentSet(check.group().title() + ": " + check.name(), check));
  }

  static Stream<Arguments> knownBad() {
    return KnownBad.numbers().map(bad -> argumentSet(bad.name(), bad));
  }

  @ParameterizedTest(name = "{argumentSetName}")
  @MethodSource("checks")
  void agreeWithinTheToleranceOfTheirGroup(Check check) {
    assertTrue(
        check.holds(),
        () -> "ours " + check.ours() + " is off by " + check.deviation() + check.group().unit());
  }

  @Test
  void thatGoOnElasticallyAboveYieldAreCutOffInOurs() {
    Range<Force> ours = JointChecks.stackOf("70 N.m + 45 deg").worstCase();
    Bolt bolt = Bolt.hexagon("M12x1.5", "10.9");
    assertEquals(Assembly.atYield(bolt).preload(Friction.of(0.10)), ours.high());
    assertTrue(ours.high().inKilonewtons() < 82.18);
    List<String> left = JointChecks.withoutOurs();
    assertEquals(
        List.of("4-2 elastic total", "4-2 utilisation", "4-3 elastic total", "4-3 utilisation"),
        left);
  }

  @Nested
  @DisplayName("known to be wrong")
  class KnownToBeWrong {

    static Stream<Arguments> knownBad() {
      return PublishedValuesTest.knownBad();
    }

    @ParameterizedTest(name = "{argumentSetName}")
    @MethodSource("knownBad")
    void differFromOursAsStated(KnownBad bad) {
      assertEquals(bad.stated(), bad.deviation(), 0.1 + Math.abs(bad.stated()) * 0.001);
      assertTrue(Math.abs(bad.deviation()) > 0.8);
    }

    @Test
    void theProbableMisprintOfThePreloadTableLiesFarOff() {
      Check misprint = StrengthChecks.misprint();
      assertEquals(4.6, misprint.published());
      assertEquals(5.7, misprint.deviation(), 0.05);
    }

    @Test
    void atNinetyDegreesAnAdaptorHasNoEffectRatherThanTheMost() {
      Torque target = Torque.newtonMetres("80");
      Adaptor square = new Adaptor(Length.mm(400), Length.mm(50), Rotation.degrees(90));
      Adaptor inLine = new Adaptor(Length.mm(400), Length.mm(50), Rotation.degrees(0));
      assertEquals(80, square.setting(target).inNewtonMetres(), 1e-9);
      assertEquals(71.11, inLine.setting(target).inNewtonMetres(), 0.01);
    }

    @Test
    void theLeverOfAnAdaptorIsASumNotAProduct() {
      Adaptor adaptor = new Adaptor(Length.inches(12), Length.inches(2), Rotation.degrees(60));
      assertEquals(13, adaptor.lever().inInches(), 1e-9);
      assertNotEquals(12, adaptor.lever().inInches(), 0.5);
    }

    @Test
    void torqueToolsAreNotHeldToTwoOrThreePercentAfterThreeLoadings() {
      Torque small = Torque.newtonMetres("8");
      Torque large = Torque.newtonMetres("200");
      assertEquals(6, WrenchClass.I_B.permissible(small).percent());
      assertEquals(4, WrenchClass.I_B.permissible(large).percent());
      assertEquals(4, WrenchClass.II_A.permissible(large).percent());
      assertEquals(5, WrenchClass.II_A.preloadings());
    }
  }
}
