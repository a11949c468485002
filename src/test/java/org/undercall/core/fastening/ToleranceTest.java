package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.fastening.ToleranceTrial.Assumed;
import org.undercall.core.fastening.ToleranceTrial.Spread;
import org.undercall.core.term.Torque;

@DisplayName("Tolerances stacked up")
class ToleranceTest {
  private static final Joint JOINT = Joints.documented("8.8");
  private static final Torque TORQUE = Torque.newtonMetres("60");
  private static final Force NONE = new Force(0);

  private static ToleranceStack stack(Range<Friction> friction) {
    return ToleranceStack.ofTorque(JOINT, TORQUE, 3, new Deviation(4), friction);
  }

  @Nested
  class ByIntervals {

    @Test
    void takeEverythingTheSameWay() {
      Range<Force> ours = stack(Joints.CLASS_B).worstCase();
      double arm = 0.16 * 1.5 + (0.58 * 11.026 + 15.065 / 2) * 0.16;
      assertEquals(57 / 1.04 / arm, ours.low().inKilonewtons(), 0.01);
      double slippery = 0.16 * 1.5 + (0.58 * 11.026 + 15.065 / 2) * 0.08;
      assertEquals(63 / 0.96 / slippery, ours.high().inKilonewtons(), 0.02);
      double factor = ours.high().newtons() / ours.low().newtons();
      assertEquals(factor, stack(Joints.CLASS_B).factor(), 1e-12);
    }

    @Test
    void tellThreadAndSeatApart() {
      ToleranceStack seat =
          stack(Joints.exactly(0.12)).withFriction(Joints.exactly(0.12), Joints.CLASS_B);
      ToleranceStack thread =
          stack(Joints.exactly(0.12)).withFriction(Joints.CLASS_B, Joints.exactly(0.12));
      double both = stack(Joints.CLASS_B).factor();
      assertTrue(seat.factor() < both && thread.factor() < both);
      assertTrue(seat.factor() > thread.factor(), "the seat's arm is the longer one");
    }

    @Test
    void areNarrowerForScrewsSetToTheBandOfTheCarIndustry() {
      assertTrue(stack(Friction.VDA_235_101).factor() < stack(Joints.CLASS_B).factor());
    }

    @Test
    void neverGoBeyondBreakingOrAfterAnAngleBeyondYield() {
      Torque high = Torque.newtonMetres("300");
      ToleranceStack torque =
          ToleranceStack.ofTorque(JOINT, high, 0, new Deviation(4), Joints.CLASS_B);
      Friction low = Joints.CLASS_B.low();
      assertEquals(Assembly.breaking(JOINT.bolt(), low), torque.worstCase().high());
      ToleranceStack angle = torque.withTurn(Rotation.degrees(90), Rotation.degrees(5));
      assertEquals(Assembly.atYield(JOINT.bolt()).preload(low), angle.worstCase().high());
    }

    @Test
    void ofAnAngleStageAddTheGainOfTheErrorOfTheAngle() {
      ToleranceStack exact = stack(Joints.exactly(0.16));
      ToleranceStack turned = exact.withTurn(Rotation.degrees(8), Rotation.degrees(2));
      double gain = JOINT.stiffness().gain(JOINT.bolt().thread(), Rotation.degrees(6)).newtons();
      assertEquals(
          exact.worstCase().low().newtons() + gain, turned.worstCase().low().newtons(), 1e-6);
    }

    @Test
    void refuseWhatCannotBe() {
      for (double plusMinus : new double[] {-1, 60, Double.NaN}) {
        assertTrue(
            refusal(
                    () ->
                        ToleranceStack.ofTorque(
                            JOINT, TORQUE, plusMinus, new Deviation(4), Joints.CLASS_B))
                .startsWith("FAS-017 "));
      }
      ToleranceStack stack = stack(Joints.CLASS_B);
      assertTrue(
          refusal(() -> stack.withTurn(Rotation.degrees(10), Rotation.degrees(10)))
              .startsWith("FAS-001 "));
      assertTrue(
          refusal(() -> stack.withTurn(Rotation.degrees(10), Rotation.degrees(-1)))
              .startsWith("FAS-002 "));
    }
  }

  @Nested
  class ByDrawingLots {

    private ToleranceTrial drawn(Spread spread, boolean together, long seed) {
      Assumed assumed = new Assumed(spread, spread, together, 20_000, seed);
      return ToleranceTrial.of(stack(Joints.CLASS_B), assumed, Force.kilonewtons(33));
    }

    @Test
    void comeOutTheSameForTheSameSeedOnly() {
      assertEquals(drawn(Spread.NORMAL, false, 7), drawn(Spread.NORMAL, false, 7));
      assertNotEquals(drawn(Spread.NORMAL, false, 7), drawn(Spread.NORMAL, false, 8));
    }

    @Test
    void stayWithinTheWorstCase() {
      Range<Force> ends = stack(Joints.CLASS_B).worstCase();
      ToleranceTrial ours = drawn(Spread.UNIFORM, false, 1);
      assertTrue(ends.contains(ours.middle().low()) && ends.contains(ours.middle().high()));
      assertTrue(ours.middle().contains(ours.median()));
    }

    @Test
    void spreadWiderWhenThreadAndSeatGoTogether() {
      ToleranceTrial apart = drawn(Spread.UNIFORM, false, 1);
      ToleranceTrial together = drawn(Spread.UNIFORM, true, 1);
      double one = apart.middle().high().newtons() - apart.middle().low().newtons();
      double other = together.middle().high().newtons() - together.middle().low().newtons();
      assertTrue(other > 1.2 * one, one + " and " + other);
    }

    @Test
    @DisplayName("with even friction alone give the preload's own distribution")
    void withOneCauseAgreeWithItsDistribution() {
      Range<Friction> band = Joints.CLASS_B;
      ToleranceStack stack = ToleranceStack.ofTorque(JOINT, TORQUE, 0, new Deviation(1e-6), band);
      Assumed assumed = new Assumed(Spread.UNIFORM, Spread.UNIFORM, true, 40_000, 3);
      Friction middle = Friction.of(0.12);
      Force wanted = LongForm.of(JOINT.bolt()).preload(TORQUE, middle, middle);
      ToleranceTrial ours = ToleranceTrial.of(stack, assumed, wanted);
      assertEquals(0.5, ours.loose(), 0.01);
      assertEquals(wanted.newtons(), ours.median().newtons(), 0.01 * wanted.newtons());
      Friction late = Friction.of(0.158);
      double low = LongForm.of(JOINT.bolt()).preload(TORQUE, late, late).newtons();
      assertEquals(low, ours.middle().low().newtons(), 0.01 * low);
    }

    @Test
    @DisplayName("with normal causes lie within the ends 95 times of 100")
    void withNormalCausesKeepTheEndsAtTwoDeviations() {
      ToleranceStack stack =
          ToleranceStack.ofTorque(JOINT, TORQUE, 0, new Deviation(1e-6), Joints.CLASS_B);
      Assumed assumed = new Assumed(Spread.NORMAL, Spread.NORMAL, true, 40_000, 3);
      Force end = stack.worstCase().low();
      assertEquals(0.023, ToleranceTrial.of(stack, assumed, end).loose(), 0.004);
    }

    @Test
    void countTheShareThatYieldsAndTheShareThatIsLoose() {
      Range<Friction> exact = Joints.exactly(0.12);
      double yield = Assembly.atYield(JOINT.bolt()).torque(exact).low().inNewtonMetres();
      ToleranceStack stack =
          ToleranceStack.ofTorque(JOINT, Units.newtonMetres(yield), 4, new Deviation(1e-6), exact);
      ToleranceTrial ours = ToleranceTrial.of(stack, Assumed.USUAL, NONE);
      assertEquals(0.5, ours.yields(), 0.02);
      assertEquals(0, ours.loose());
      assertTrue(ours.toString().contains("reach yield"), ours.toString());
    }

    @Test
    void turnTheBoltToYieldByAngle() {
      ToleranceStack stack =
          stack(Joints.CLASS_B).withTurn(Rotation.degrees(60), Rotation.degrees(4));
      ToleranceTrial ours = ToleranceTrial.of(stack, Assumed.USUAL, NONE);
      assertEquals(1, ours.yields());
      assertTrue(ours.toString().endsWith(", 100.0 % reach yield, 0.0 % are loose"), ours + "");
      ToleranceTrial loose = ToleranceTrial.of(stack, Assumed.USUAL, Force.kilonewtons(500));
      assertTrue(loose.toString().endsWith(", 100.0 % are loose"), loose + "");
    }

    @Test
    @DisplayName("at the very preload that is wanted are not loose")
    void atThePreloadWantedAreNotLoose() {
      Range<Friction> exact = Joints.exactly(0.12);
      ToleranceStack stack = stack(exact).withTurn(Rotation.degrees(60), Rotation.degrees(4));
      Force yield = Assembly.atYield(JOINT.bolt()).preload(exact.low());
      assertEquals(0, ToleranceTrial.of(stack, Assumed.USUAL, yield).loose());
      Force more = new Force(yield.newtons() + 1);
      assertEquals(1, ToleranceTrial.of(stack, Assumed.USUAL, more).loose());
    }

    @Test
    @DisplayName("a wrench that shows 20 % too much has turned 1/1.2 of what it shows")
    void deviateByWhatTheWrenchShows() {
      Range<Friction> exact = Joints.exactly(0.12);
      ToleranceStack stack = ToleranceStack.ofTorque(JOINT, TORQUE, 0, new Deviation(20), exact);
      Assumed even = new Assumed(Spread.UNIFORM, Spread.UNIFORM, true, 40_000, 3);
      Force nominal = LongForm.of(JOINT.bolt()).preload(TORQUE, exact.low(), exact.low());
      Range<Force> middle = ToleranceTrial.of(stack, even, NONE).middle();
      assertEquals(1 / 1.19, middle.low().newtons() / nominal.newtons(), 0.005);
      assertEquals(1 / 0.81, middle.high().newtons() / nominal.newtons(), 0.005);
    }

    @Test
    void needAHundredJointsOrMore() {
      assertTrue(
          refusal(() -> new Assumed(Spread.NORMAL, Spread.NORMAL, false, 99, 1))
              .startsWith("FAS-018 "));
      assertTrue(
          refusal(() -> new Assumed(Spread.NORMAL, Spread.NORMAL, false, 10_000_001, 1))
              .startsWith("FAS-018 "));
    }
  }

  @Nested
  class TwoVariants {

    @Test
    @DisplayName("68 N·m on 8.8 against 70 N·m and 90 degrees on 10.9: about twice the clamp force")
    void differByAboutTwo() {
      VariantComparison ours =
          VariantComparison.of(
              JOINT,
              Tightening.by(Torque.newtonMetres("68")),
              Joints.documented("10.9"),
              Tightening.by(Torque.newtonMetres("70"), Rotation.degrees(90)),
              Joints.exactly(0.12));
      assertEquals(2.1, ours.ratio().low(), 0.1);
      assertEquals(
          ours.other().low().newtons() / ours.one().low().newtons(), ours.ratio().low(), 1e-9);
    }

    @Test
    void areToldApartAtTheSameFriction() {
      Tightening way = Tightening.by(Torque.newtonMetres("40"));
      VariantComparison same = VariantComparison.of(JOINT, way, JOINT, way, Joints.AS_DELIVERED);
      assertEquals(new Range<>(1.0, 1.0), same.ratio());
      assertTrue(same.one().high().newtons() > 2 * same.one().low().newtons());
    }

    @Test
    void areToldInWords() {
      assertEquals("40 N·m", Tightening.by(Torque.newtonMetres("40")).toString());
      assertEquals(
          "40 N·m and then 90.0°",
          Tightening.by(Torque.newtonMetres("40"), Rotation.degrees(90)).toString());
    }
  }
}
