package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Bush twist")
class BushTest {
  private static final Range<Height> TRAVEL = new Range<>(Height.mm(-100), Height.mm(70));
  private final ArmSwing arm = new ArmSwing(Length.mm(350), Height.mm(-10), TRAVEL);

  @Nested
  class OfAnArm {

    @Test
    void isZeroAtRideHeightIfTightenedThere() {
      ArmSwing.Twist twist = arm.tightenedAt(Height.mm(-10));
      assertEquals(0, twist.atRide().degrees());
      assertEquals(0, twist.here().degrees());
      assertEquals(-14.964, twist.atDroop().degrees(), 0.001);
      assertEquals(13.174, twist.atBump().degrees(), 0.001);
      assertEquals(14.964, twist.worst().degrees(), 0.001);
    }

    @Test
    void isPresetIfTightenedHangingFree() {
      ArmSwing.Twist twist = arm.tightenedAt(Height.mm(-100));
      assertEquals(-14.964, twist.here().degrees(), 0.001);
      assertEquals(14.964, twist.atRide().degrees(), 0.001);
      assertEquals(0, twist.atDroop().degrees());
      assertEquals(28.139, twist.worst().degrees(), 0.001);
    }

    @Test
    void followsTheWheelArch() {
      assertEquals(Height.mm(-10), arm.heightFor(Length.mm(382), Length.mm(382)));
      assertEquals(Height.mm(-50), arm.heightFor(Length.mm(382), Length.mm(422)));
      assertEquals(Height.mm(10), arm.heightFor(Length.mm(382), Length.mm(362)));
    }

    @Test
    void followsTheWheelArchByTheMotionRatio() {
      MotionRatio half = new MotionRatio(0.5);
      assertEquals(Height.mm(-30), arm.heightFor(Length.mm(382), Length.mm(422), half));
      assertEquals(Height.mm(0), arm.heightFor(Length.mm(382), Length.mm(362), half));
      assertEquals(Height.mm(40), half.ofWheel(half.ofJoint(Height.mm(40))));
      assertTrue(refusal(() -> new MotionRatio(0)).startsWith("FAS-001"));
      assertTrue(refusal(() -> new MotionRatio(5.1)).startsWith("FAS-053"));
      assertTrue(refusal(() -> new MotionRatio(Double.NaN)).startsWith("FAS-001"));
    }

    @Test
    @DisplayName("turns more per millimetre when it does not lie level")
    void ofASlopingArmTurnsMorePerMillimetre() {
      Range<Height> travel = new Range<>(Height.mm(-250), Height.mm(-50));
      ArmSwing sloping = new ArmSwing(Length.mm(350), Height.mm(-175), travel);
      double perMillimetre = sloping.perMillimetreAtRide().degrees();
      assertEquals(Math.toDegrees(1 / (350 * Math.cos(Math.toRadians(30)))), perMillimetre, 1e-9);
      double lower = sloping.tightenedAt(Height.mm(-176)).atRide().degrees();
      assertEquals(perMillimetre, lower, 1e-3 * perMillimetre);
      Range<Height> tolerance = sloping.tolerance(Rotation.degrees(5));
      assertTrue(-tolerance.low().millimetres() < tolerance.high().millimetres(), tolerance + "");
      for (Height end : new Height[] {tolerance.low(), tolerance.high()}) {
        Height height = Height.mm(-175 + end.millimetres());
        assertEquals(5, sloping.tightenedAt(height).atRide().size().degrees(), 1e-9);
      }
    }

    @Test
    void staysWithinALimitInsideTheTolerance() {
      Range<Height> tolerance = arm.tolerance(Rotation.degrees(5));
      for (Height offset : new Height[] {tolerance.low(), tolerance.high()}) {
        Height height = Height.mm(-10 + offset.millimetres());
        assertEquals(5, arm.tightenedAt(height).atRide().size().degrees(), 1e-9);
      }
      assertEquals(-30.5, tolerance.low().millimetres(), 0.1);
      assertEquals(30.5, tolerance.high().millimetres(), 0.1);
    }

    @Test
    void toleranceEndsWhereTheArmStandsUpright() {
      Range<Height> tolerance = arm.tolerance(Rotation.degrees(120));
      assertEquals(-340, tolerance.low().millimetres(), 1e-9);
      assertEquals(360, tolerance.high().millimetres(), 1e-9);
    }

    @Test
    void refusesHeightsTheArmCannotReach() {
      assertTrue(refusal(() -> arm.angleAt(Height.mm(351))).startsWith("FAS-052"));
      assertEquals(90, arm.angleAt(Height.mm(350)).degrees(), 1e-9);
      assertEquals(-90, arm.angleAt(Height.mm(-350)).degrees(), 1e-9);
      assertTrue(
          refusal(() -> new ArmSwing(Length.mm(99), Height.mm(0), TRAVEL)).startsWith("FAS-050"));
      assertTrue(
          refusal(
                  () ->
                      new ArmSwing(
                          Length.mm(60), Height.mm(0), new Range<>(Height.mm(0), Height.mm(61))))
              .startsWith("FAS-050"));
      assertTrue(
          refusal(() -> new ArmSwing(Length.mm(350), Height.mm(71), TRAVEL)).startsWith("FAS-051"));
      assertTrue(refusal(() -> arm.tolerance(Rotation.degrees(0))).startsWith("FAS-001"));
    }

    @Test
    void mayReachAsFarAsItIsLong() {
      Range<Height> whole = new Range<>(Height.mm(-100), Height.mm(100));
      ArmSwing upright = new ArmSwing(Length.mm(100), Height.mm(0), whole);
      assertEquals(90, upright.tightenedAt(Height.mm(0)).atBump().degrees(), 1e-9);
    }
  }

  @Nested
  class WithALimit {

    @Test
    void warnsAboveItAndNotAtIt() {
      assertFalse(PresetLimit.PROPOSED.exceededBy(Rotation.degrees(5)));
      assertTrue(PresetLimit.PROPOSED.exceededBy(Rotation.degrees(5.01)));
      assertTrue(PresetLimit.PROPOSED.exceededBy(Rotation.degrees(-5.01)));
    }

    @Test
    void isASettingThatLeavesATolerance() {
      PresetLimit limit = new PresetLimit(Rotation.degrees(3));
      assertEquals(arm.tolerance(Rotation.degrees(3)), limit.tolerance(arm));
      assertTrue(refusal(() -> new PresetLimit(Rotation.degrees(0))).startsWith("FAS-001"));
    }
  }

  @Nested
  class OfRubber {
    private final BondedBush bush =
        new BondedBush(Length.mm(12), Length.mm(20), Length.mm(50), new Stress(0.8));

    @Test
    void strainAddsUpToTheTwist() {
      Rotation twist = Rotation.degrees(15);
      double inside = bush.strainInside(twist);
      SimpsonIntegrator integrator = new SimpsonIntegrator();
      double angle = integrator.integrate(10_000, r -> inside * 12 * 12 / (r * r) / r, 12, 20);
      assertEquals(twist.inRadians(), angle, 1e-6);
      assertEquals(inside * 144 / 400, bush.strainOutside(twist), 1e-12);
    }

    @Test
    void momentCarriesTheSignAndStrainDoesNot() {
      Rotation back = Rotation.degrees(-15);
      assertEquals(-29.61, bush.moment(back).newtonMetres(), 0.005);
      assertEquals(0.818, bush.strainInside(back), 0.0005);
    }

    @Test
    void needsRubberBetweenItsSleeves() {
      assertTrue(
          refusal(
                  () ->
                      new BondedBush(Length.mm(12), Length.mm(12), Length.mm(50), new Stress(0.8)))
              .startsWith("FAS-004"));
      assertTrue(
          refusal(() -> new BondedBush(Length.mm(12), Length.mm(20), Length.mm(50), new Stress(0)))
              .startsWith("FAS-001"));
    }
  }

  @Nested
  class AtRest {
    private final BondedBush bush =
        new BondedBush(Length.mm(8), Length.mm(18), Length.mm(40), new Stress(0.8));
    private final BushAtRest rest = new BushAtRest(arm, bush);

    @Test
    void isFreeIfTightenedAtRideHeight() {
      BushAtRest.Rest ours = rest.tightenedAt(Height.mm(-10));
      assertEquals(0, ours.moment().newtonMetres());
      assertEquals(0, ours.strain());
      assertEquals(0, ours.error().millimetres());
      assertTrue(ours.worstStrain() > 0);
    }

    @Test
    @DisplayName("keeps the moment and strain of its twist if it was tightened hanging free")
    void keepsAMomentIfTightenedHangingFree() {
      BushAtRest.Rest ours = rest.tightenedAt(Height.mm(-100));
      double twist = Math.asin(100 / 350.0) - Math.asin(10 / 350.0);
      double curvature = 1 / 64.0 - 1 / 324.0;
      assertEquals(-90, ours.error().millimetres());
      assertEquals(twist, ours.twist().inRadians(), 1e-9);
      double moment = 4 * Math.PI * 0.8 * 40 / curvature / 1000 * twist;
      assertEquals(moment, ours.moment().newtonMetres(), 1e-9);
      assertEquals(2 * twist / 64 / curvature, ours.strain(), 1e-9);
      double worst = Math.asin(100 / 350.0) + Math.asin(70 / 350.0);
      assertEquals(2 * worst / 64 / curvature, ours.worstStrain(), 1e-9);
    }

    @Test
    void pushesTheOuterJointByItsMomentOverTheReach() {
      double reach = 350 * Math.cos(Math.asin(10 / 350.0));
      assertEquals(-10_000 / reach, rest.atOuterJoint(new Moment(-10)).newtons(), 1e-9);
    }

    @Test
    void differsLeftFromRightByTheHeightsTheyWereTightenedAt() {
      assertEquals(0, rest.leftOverRight(Height.mm(-30), Height.mm(-30)).newtonMetres());
      double left = rest.tightenedAt(Height.mm(-30)).moment().newtonMetres();
      double right = rest.tightenedAt(Height.mm(10)).moment().newtonMetres();
      double more = rest.leftOverRight(Height.mm(-30), Height.mm(10)).newtonMetres();
      assertEquals(left - right, more, 1e-12);
      assertTrue(left > 0 && right < 0, left + " " + right);
    }
  }
}
