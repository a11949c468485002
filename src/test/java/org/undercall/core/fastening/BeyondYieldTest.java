package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.fastening.Stretch.Verdict;
import org.undercall.core.fastening.TorqueAlone.Reach;
import org.undercall.core.term.Torque;

@DisplayName("Beyond yield")
class BeyondYieldTest {
  private static final Joint JOINT = Joints.documented("8.8");
  private static final ClampedParts PARTS =
      ConeStack.of(JOINT.bolt().seat(), SleeveStack.Sleeve.of(64, 28, 13));
  private static final Torque SNUG = Torque.newtonMetres("45");

  private static Torque newtonMetres(double amount) {
    return Units.newtonMetres(amount);
  }

  @Nested
  class AStretch {

    private Stretch at(double degrees, double friction) {
      return Stretch.of(JOINT, SNUG, Rotation.degrees(degrees), Friction.of(friction));
    }

    @ParameterizedTest
    @CsvSource({
      "10, ELASTIC",
      "30, AT_YIELD",
      "60, BEYOND_YIELD",
      "200, NEAR_THE_LIMIT",
      "400, TOO_FAR",
      "700, TOO_FAR"
    })
    void hasAVerdictByTheAngle(double degrees, Verdict verdict) {
      Rotation turn = Rotation.degrees(degrees);
      assertEquals(verdict, Stretch.most(JOINT, SNUG, turn, Joints.AS_DELIVERED).verdict());
    }

    @Test
    @DisplayName("of 700 degrees is 2.8 mm, about the elongation after fracture of class 8.8")
    void of700DegreesIsNearFracture() {
      Stretch ours = at(700, 0.08);
      assertEquals(2.82, ours.plastic(), 0.05);
      assertEquals(ours.plastic() / 24, ours.strain(), 1e-9);
      assertEquals(ours.plastic() / 64, ours.meanStrain(), 1e-9);
      assertEquals(0.12, ours.leastElongation());
      assertTrue(ours.strain() > 0.09);
      assertFalse(ours.mayBreak());
      assertTrue(at(760, 0.08).mayBreak());
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 20, 40, 90, 360})
    @DisplayName("shares out the whole advance of the nut, P times the turn")
    void sharesOutTheWholeAdvance(double degrees) {
      Friction mu = Friction.of(0.12);
      Stretch after = at(degrees, 0.12);
      double snug = LongForm.of(JOINT.bolt()).preload(SNUG, mu, mu).newtons();
      double springs =
          JOINT.stiffness().bolt().plus(JOINT.stiffness().parts()).millimetresPerNewton();
      double elastic = after.elasticBolt() + after.elasticParts() - springs * snug;
      assertEquals(1.5 * degrees / 360, elastic + after.plastic(), 1e-9);
    }

    @Test
    void afterTheTorqueStageIsThatOfItsPreload() {
      Friction mu = Friction.of(0.12);
      Stretch ours = Stretch.afterTorque(JOINT, SNUG, mu);
      double snug = LongForm.of(JOINT.bolt()).preload(SNUG, mu, mu).newtons();
      assertEquals(
          snug * JOINT.stiffness().bolt().millimetresPerNewton(), ours.elasticBolt(), 1e-9);
      assertEquals(
          snug * JOINT.stiffness().parts().millimetresPerNewton(), ours.elasticParts(), 1e-9);
      assertEquals(Verdict.ELASTIC, ours.verdict());
      assertEquals(0, Stretch.afterTorque(JOINT, newtonMetres(400), mu).plastic());
    }

    @Test
    void belowYieldHasNoPlasticPart() {
      assertEquals(0, at(10, 0.12).plastic());
      assertEquals(Verdict.ELASTIC, at(10, 0.12).verdict());
    }

    @Test
    @DisplayName("below yield is most at the least friction, which leaves the most preload")
    void belowYieldIsMostAtTheLeastFriction() {
      Stretch most = Stretch.most(JOINT, SNUG, Rotation.degrees(10), Joints.AS_DELIVERED);
      assertEquals(at(10, 0.08), most);
      assertTrue(most.elasticBolt() > at(10, 0.24).elasticBolt());
    }

    @Test
    @DisplayName("may break from the least elongation on, and says what it is of")
    void mayBreakFromTheLeastElongationOn() {
      assertTrue(new Stretch(0.1, 0.1, 2.88, 0.12, 0.045, 0.12, Verdict.TOO_FAR).mayBreak());
      assertFalse(new Stretch(0.1, 0.1, 2.87, 0.1199, 0.045, 0.12, Verdict.TOO_FAR).mayBreak());
      assertEquals(
          "2.88 mm, 12.0 % of the free thread, " + Verdict.TOO_FAR.words(),
          new Stretch(0.1, 0.1, 2.88, 0.12, 0.045, 0.12, Verdict.TOO_FAR) + "");
    }

    @Test
    void goesFartherInAShorterFreeThread() {
      Bolt bolt = JOINT.bolt();
      BoltBody shorter =
          new BoltBody(bolt.thread(), Length.mm(58), Length.mm(6), BoltBody.Ends.HEXAGON_AND_NUT);
      Joint joint = Joint.ofSteel(bolt, shorter, PARTS);
      Stretch ours = Stretch.of(joint, SNUG, Rotation.degrees(90), Friction.of(0.12));
      assertTrue(ours.strain() > 3 * at(90, 0.12).strain());
    }

    @Test
    void ofATorqueBeyondYieldBeginsAtYield() {
      Stretch ours = Stretch.of(JOINT, newtonMetres(400), Rotation.degrees(36), Friction.of(0.12));
      assertEquals(0.15, ours.plastic(), 1e-9);
    }

    @Test
    @DisplayName(
        "is held against an elongation for every class, also where the standard has only Af")
    void hasAnElongationForEveryClass() {
      assertEquals(0.09, PropertyClass.C10_9.leastElongation());
      assertEquals(0.14, PropertyClass.C4_8.leastElongation());
      for (PropertyClass each : PropertyClass.values()) {
        assertTrue(each.leastElongation() >= 0.08, each + "");
      }
    }
  }

  @Nested
  class AnAngleWindow {

    @Test
    void goesFromYieldAtTheHighestFrictionToALimitOfStrain() {
      AngleWindow ours =
          AngleWindow.toYield(JOINT, SNUG, Joints.AS_DELIVERED, Verdict.BEYOND_YIELD);
      assertTrue(ours.open());
      Friction rough = Joints.AS_DELIVERED.high();
      Stretch least =
          Stretch.of(JOINT, SNUG, Rotation.degrees(ours.least().degrees() + 1e-6), rough);
      assertEquals(Verdict.AT_YIELD, least.verdict());
      Stretch most = Stretch.of(JOINT, SNUG, ours.most(), Joints.AS_DELIVERED.low());
      assertEquals(0.25 * 0.12, most.strain(), 1e-9);
      assertTrue(ours.contains(Rotation.degrees(60)));
      assertFalse(ours.contains(Rotation.degrees(30)));
      assertFalse(ours.contains(Rotation.degrees(200)));
    }

    @Test
    void isClosedWhereNoAngleIsRightForAll() {
      AngleWindow ours =
          AngleWindow.toYield(
              JOINT, Torque.newtonMetres("70"), Joints.AS_DELIVERED, Verdict.ELASTIC);
      assertFalse(ours.open());
      assertTrue(ours.toString().startsWith("none: "), ours.toString());
    }

    @Test
    void toAPreloadReachesItWithTheHighestFriction() {
      Force wanted = Force.kilonewtons(40);
      AngleWindow ours =
          AngleWindow.toPreload(JOINT, SNUG, Joints.AS_DELIVERED, wanted, Verdict.BEYOND_YIELD);
      AngleJob job = AngleJob.of(JOINT.bolt(), SNUG, ours.least(), JOINT.stiffness());
      Friction rough = Joints.AS_DELIVERED.high();
      Force there = AngleTightening.preload(job, rough).orElseThrow();
      assertEquals(40, there.inKilonewtons(), 1e-6);
    }

    @Test
    void cannotReachAPreloadAboveYield() {
      Force wanted = Force.kilonewtons(45);
      assertTrue(
          refusal(
                  () ->
                      AngleWindow.toPreload(
                          JOINT, SNUG, Joints.AS_DELIVERED, wanted, Verdict.AT_YIELD))
              .startsWith("FAS-035 "));
    }
  }

  @Nested
  class ATorqueAlone {
    private final Bolt bolt = JOINT.bolt();

    @ParameterizedTest
    @CsvSource({
      "45, BELOW_YIELD",
      "80, MAY_YIELD",
      "130, MAY_BREAK",
      "160, MAY_BREAK",
      "200, WOULD_BREAK",
      "500, WOULD_BREAK"
    })
    void goesAsFarAsItsFrictionLets(double torque, Reach reach) {
      TorqueAlone ours = TorqueAlone.of(bolt, newtonMetres(torque), Joints.AS_DELIVERED);
      assertEquals(reach, ours.reach());
    }

    @Test
    void yieldsBeforeItMayBreakWhereFrictionIsKnown() {
      Range<Friction> known = Joints.exactly(0.12);
      double yield = Assembly.atYield(bolt).torque(known).low().inNewtonMetres();
      TorqueAlone above = TorqueAlone.of(bolt, newtonMetres(yield * 1.1), known);
      assertEquals(Reach.YIELDS, above.reach());
      assertEquals(
          Reach.WOULD_BREAK, TorqueAlone.of(bolt, newtonMetres(yield * 1.26), known).reach());
    }

    @Test
    @DisplayName("of 500 N·m shows no preload above the one that breaks the bolt")
    void neverShowsMoreThanBreaks() {
      TorqueAlone ours = TorqueAlone.of(bolt, newtonMetres(500), Joints.AS_DELIVERED);
      assertEquals(Assembly.breaking(bolt, Friction.of(0.08)), ours.preload().high());
      assertEquals(Assembly.breaking(bolt, Friction.of(0.24)), ours.preload().low());
      Force pulled = bolt.strength().ultimateLoad(bolt.thread());
      assertTrue(ours.preload().high().compareTo(pulled) < 0);
    }

    @ParameterizedTest
    @EnumSource(
        value = PropertyClass.class,
        names = {"C8_8", "C10_9", "C12_9"})
    @DisplayName("breaks above yield by the ratio of tensile and yield strength")
    void breaksAboveYieldByTheRatioOfStrengths(PropertyClass strength) {
      Bolt other = Bolt.hexagon("M10", strength.toString());
      double yield = Assembly.atYield(other).preload(Friction.of(0.12)).newtons();
      double ratio =
          strength.tensileStrength(other.thread()).megapascals()
              / strength.yieldStrength(other.thread()).megapascals();
      double breaks = Assembly.breaking(other, Friction.of(0.12)).newtons();
      assertEquals(ratio, breaks / yield, 1e-9);
    }
  }

  @Nested
  class YieldControl {

    @Test
    void scattersByStrengthAndThreadFrictionAlone() {
      YieldControlled ours = YieldControlled.of(JOINT.bolt(), Joints.exactly(0.12), 1.2);
      assertEquals(1.2, ours.factor(), 1e-9);
      YieldControlled wide = YieldControlled.of(JOINT.bolt(), Joints.CLASS_B, 1.2);
      assertTrue(wide.factor() > 1.2 && wide.factor() < 1.4, wide.factor() + "");
      Seat broad = Seat.of(30, 13.5);
      assertEquals(wide, YieldControlled.of(JOINT.bolt().with(broad), Joints.CLASS_B, 1.2));
    }

    @Test
    void hasASpreadOfOneOrMore() {
      for (double spread : new double[] {0.9, Double.NaN, Double.POSITIVE_INFINITY}) {
        assertTrue(
            refusal(() -> YieldControlled.of(JOINT.bolt(), Joints.CLASS_B, spread))
                .startsWith("FAS-016 "));
      }
    }
  }

  @Nested
  class AJointWithItsSizes {

    @Test
    void mustFitTogether() {
      Bolt other = Bolt.hexagon("M10", "8.8");
      assertTrue(refusal(() -> Joint.ofSteel(other, JOINT.body(), PARTS)).startsWith("FAS-033 "));
      BoltBody longer =
          BoltBody.fullyThreaded(
              JOINT.bolt().thread(), Length.mm(70), BoltBody.Ends.HEXAGON_AND_NUT);
      assertTrue(refusal(() -> Joint.ofSteel(JOINT.bolt(), longer, PARTS)).startsWith("FAS-034 "));
      assertEquals(64.0 / 12, JOINT.slenderness(), 1e-9);
    }

    @Test
    void threadedToTheHeadIsSofter() {
      BoltBody threaded =
          BoltBody.fullyThreaded(
              JOINT.bolt().thread(), Length.mm(64), BoltBody.Ends.HEXAGON_AND_NUT);
      assertEquals(64, threaded.clamped().millimetres());
      Compliance soft = threaded.compliance(Elasticity.STEEL);
      assertTrue(soft.compareTo(JOINT.body().compliance(Elasticity.STEEL)) > 0);
      double root = JOINT.bolt().thread().rootDiameter().millimetres();
      double more = 40 / 205_000.0 * 4 / Math.PI * (1 / (root * root) - 1 / 144.0);
      assertEquals(
          JOINT.body().compliance(Elasticity.STEEL).millimetresPerNewton() + more,
          soft.millimetresPerNewton(),
          1e-12);
    }
  }
}
