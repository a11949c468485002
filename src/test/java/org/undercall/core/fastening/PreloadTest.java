package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.term.Torque;

@DisplayName("Torque and preload")
class PreloadTest {
  private static final Bolt BOLT = Bolt.hexagon("M12x1.5", "10.9");
  private static final Torque HUNDRED = Torque.newtonMetres("100");
  private static final Friction MU = Friction.of(0.12);
  private static final Range<Friction> CLASS_B = FrictionClass.B.range();

  @Nested
  class InTheShortForm {

    @Test
    void areARangeOverTheNutFactor() {
      Range<NutFactor> k = new Range<>(NutFactor.of(0.1), NutFactor.of(0.2));
      Range<Force> preload = ShortForm.preload(k, HUNDRED, Length.mm(10));
      assertEquals(50, preload.low().inKilonewtons(), 1e-9);
      assertEquals(100, preload.high().inKilonewtons(), 1e-9);
      Range<Torque> torque = ShortForm.torque(k, Force.kilonewtons(50), Length.mm(10));
      assertEquals(50, torque.low().inNewtonMetres(), 1e-9);
      assertEquals(100, torque.high().inNewtonMetres(), 1e-9);
    }
  }

  @Nested
  class InTheLongForm {

    @ParameterizedTest
    @EnumSource(TorqueLaw.class)
    void leadBackToEachOther(TorqueLaw law) {
      LongForm form = new LongForm(BOLT, law);
      Friction seat = Friction.of(0.15);
      Force preload = form.preload(HUNDRED, MU, seat);
      assertEquals(100, form.torque(preload, MU, seat).inNewtonMetres(), 1e-9);
    }

    @Test
    void areARangeOverTheFriction() {
      Range<Force> preload = LongForm.of(BOLT).preload(HUNDRED, CLASS_B);
      assertEquals(40.51, preload.low().inKilonewtons(), 0.01);
      assertEquals(73.84, preload.high().inKilonewtons(), 0.01);
      Range<Torque> torque = LongForm.of(BOLT).torque(preload.low(), CLASS_B);
      assertEquals(100, torque.high().inNewtonMetres(), 1e-9);
      assertTrue(torque.low().inNewtonMetres() < 60);
    }

    @Test
    void tellThreadAndSeatFrictionApart() {
      LongForm form = LongForm.of(BOLT);
      double slipperySeat = form.preload(HUNDRED, MU, Friction.of(0.08)).inKilonewtons();
      double slipperyThread = form.preload(HUNDRED, Friction.of(0.08), MU).inKilonewtons();
      assertEquals(62.12, slipperySeat, 0.01);
      assertEquals(60.40, slipperyThread, 0.01);
    }

    @Test
    void splitIntoSharesThatMakeAWhole() {
      LongForm.Shares shares = LongForm.of(BOLT).shares(MU, MU);
      assertEquals(1, shares.pitch() + shares.thread() + shares.seat(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.08, 0.12, 0.16, 0.24})
    void agreeWithTheInclinedPlaneWithinOnePercent(double friction) {
      Friction mu = Friction.of(friction);
      Force preload = Force.kilonewtons(48.4);
      double plane = ThreadMechanics.torque(BOLT, preload, mu, mu).inNewtonMetres();
      double ours =
          new LongForm(BOLT, TorqueLaw.ISO_16047).torque(preload, mu, mu).inNewtonMetres();
      assertEquals(plane, ours, plane * 0.01);
    }

    @Test
    void haveTheAnglesOfTheThread() {
      assertEquals(2.480, ThreadMechanics.leadAngle(BOLT.thread()).degrees(), 0.0005);
      assertEquals(7.889, ThreadMechanics.frictionAngle(MU).degrees(), 0.0005);
    }
  }

  @Nested
  class AtAssembly {

    /** Solves √(σ² + 3τ²) = ν Rp numerically; τ of full plastic torsion, 12 MG/(π d0³). */
    private double solved(double friction, double share) {
      ThreadSize thread = BOLT.thread();
      double area = thread.stressArea().squareMillimetres();
      double d0 = thread.stressDiameter().millimetres();
      double arm =
          1.5 / (2 * Math.PI) + thread.pitchDiameter().millimetres() * friction / Math.sqrt(3);
      UnivariateFunction excess =
          newtons -> {
            double tau = 12 * newtons * arm / (Math.PI * Math.pow(d0, 3));
            double sigma = newtons / area;
            return Math.sqrt(sigma * sigma + 3 * tau * tau) - share * 940;
          };
      return new BrentSolver(1e-6).solve(200, excess, 1, 200_000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.08, 0.12, 0.16, 0.24})
    void theCombinedStressUsesNinetyPercentOfYield(double friction) {
      double ours = Assembly.of(BOLT).preload(Friction.of(friction)).newtons();
      assertEquals(solved(friction, 0.9), ours, ours * 0.001);
      double yield = Assembly.atYield(BOLT).preload(Friction.of(friction)).newtons();
      assertEquals(solved(friction, 1), yield, yield * 0.001);
    }

    @Test
    void preloadFallsAndTorqueRisesWithFriction() {
      Range<Force> preload = Assembly.of(BOLT).preload(CLASS_B);
      Range<Torque> torque = Assembly.of(BOLT).torque(CLASS_B);
      assertEquals(Assembly.of(BOLT).preload(CLASS_B.high()), preload.low());
      assertEquals(Assembly.of(BOLT).torque(CLASS_B.high(), CLASS_B.high()), torque.high());
      assertTrue(preload.low().compareTo(preload.high()) < 0);
      assertTrue(torque.low().compareTo(torque.high()) < 0);
    }

    @Test
    void needsItsParts() {
      assertThrows(
          NullPointerException.class, () -> new Assembly(null, Utilisation.YIELD, Torsion.PLASTIC));
      assertThrows(NullPointerException.class, () -> new LongForm(null, TorqueLaw.VDI_2230));
    }
  }

  @Nested
  class OfATighteningMethod {

    @Test
    void spreadTheLeastPreload() {
      Range<Force> least = TighteningMethod.IMPACT_WRENCH.leastPreload(Force.kilonewtons(40));
      assertEquals(10, least.low().inKilonewtons(), 1e-9);
      assertEquals(16, least.high().inKilonewtons(), 1e-9);
    }

    @Test
    void needAFactorOfOneOrMore() {
      assertEquals(5, TighteningMethod.leastPreload(new Force(5), 1).newtons());
      assertTrue(
          refusal(() -> TighteningMethod.leastPreload(new Force(1), 0.99)).startsWith("FAS-014"));
    }
  }

  @Nested
  class OfAPlausibleSpecification {

    private Plausibility.Verdict verdict(String torque, Bolt bolt) {
      return Plausibility.of(bolt, Torque.newtonMetres(torque), CLASS_B).verdict();
    }

    @Test
    @DisplayName("175 N·m on M14x1.5 10.9 (common practice, no source)")
    void aJointNut() {
      Bolt bolt = Bolt.hexagon("M14x1.5", "10.9");
      Plausibility judged = Plausibility.of(bolt, Torque.newtonMetres("175"), CLASS_B);
      assertTrue(judged.verdict().plausible());
      assertEquals(1.02, judged.highest(), 0.005);
      assertEquals(0.60, judged.lowest(), 0.02);
      Range<Friction> usual = new Range<>(MU, MU);
      Plausibility middle = Plausibility.of(bolt, Torque.newtonMetres("175"), usual);
      assertEquals(Plausibility.Verdict.PLAUSIBLE, middle.verdict());
    }

    @Test
    void fallIntoFourVerdicts() {
      assertEquals(Plausibility.Verdict.TOO_LOW, verdict("5", BOLT));
      assertEquals(Plausibility.Verdict.PLAUSIBLE, verdict("90", BOLT));
      assertEquals(Plausibility.Verdict.PLAUSIBLE_NEAR_YIELD, verdict("130", BOLT));
      assertEquals(Plausibility.Verdict.TOO_HIGH, verdict("250", BOLT));
      assertTrue(verdict("90", BOLT).plausible());
      assertTrue(verdict("130", BOLT).plausible());
      assertFalse(verdict("5", BOLT).plausible());
      assertFalse(verdict("250", BOLT).plausible());
    }
  }
}
