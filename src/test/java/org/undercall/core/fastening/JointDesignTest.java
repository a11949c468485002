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
import org.undercall.core.fastening.Embedding.Load;
import org.undercall.core.fastening.Embedding.Roughness;
import org.undercall.core.fastening.Engagement.First;
import org.undercall.core.fastening.Engagement.Strength;
import org.undercall.core.fastening.ExpectedTorque.Hint;
import org.undercall.core.term.Torque;

@DisplayName("The joint")
class JointDesignTest {
  private static final Joint JOINT = Joints.documented("8.8");

  @Nested
  class ASeat {

    @Test
    @DisplayName("of an M12 hexagon under a yielding 10.9 bolt carries about 1,000 MPa")
    void underAYieldingBoltCarriesMoreThanMostSteels() {
      Bolt bolt = Bolt.hexagon("M12x1.5", "10.9");
      Force preload = Assembly.atYield(bolt).preload(Friction.of(0.12));
      SeatPressure ours = SeatPressure.of(bolt.seat(), preload, SeatMaterial.S355);
      assertEquals(74, bolt.seat().area().squareMillimetres(), 0.5);
      assertEquals(1000, ours.pressure().megapascals(), 10);
      assertFalse(ours.bears());
      assertEquals(0.757, ours.safety(), 0.01);
      assertTrue(SeatPressure.of(bolt.seat(), preload, SeatMaterial.STEEL_34CRNIMO6).bears());
      assertFalse(SeatMaterial.C45.checked());
    }

    @Test
    @DisplayName("on a 60 degree cone brings 34 kN at 140 N·m where a flat one brings 54")
    void onAConeBringsLessPreload() {
      Bolt bolt = Bolt.hexagon("M12x1.5", "10.9");
      Friction mu = Friction.of(0.14);
      Torque torque = Torque.newtonMetres("140");
      Force flat = LongForm.of(bolt.with(Seat.of(24, 18))).preload(torque, mu, mu);
      Force cone = LongForm.of(bolt.with(Seat.cone(24, 18, 60))).preload(torque, mu, mu);
      assertEquals(53.7, flat.inKilonewtons(), 0.2);
      assertEquals(34.4, cone.inKilonewtons(), 0.2);
    }

    @Test
    void onAConeRubsAsMuchAsAFlatOneOfTwiceTheDiameter() {
      assertEquals(42, Seat.cone(24, 18, 60).frictionDiameter().millimetres(), 1e-9);
      assertEquals(21, Seat.of(24, 18).frictionDiameter().millimetres());
      assertTrue(Seat.of(24, 18).flat());
      assertFalse(Seat.cone(24, 18, 120).flat());
    }

    @Test
    @DisplayName("on a ball is the cone that touches it in the middle of the ring")
    void onABallIsTheConeThatTouchesIt() {
      // r = 10.5 mm on a ball of 14 mm: sin of the half angle is √(1 - (r/R)²) = 0.6614
      Seat ball = Seat.ball(24, 18, 14);
      assertEquals(21 / 0.66144, ball.frictionDiameter().millimetres(), 1e-3);
      assertTrue(refusal(() -> Seat.ball(24, 18, 12)).startsWith("FAS-004 "));
    }

    @ParameterizedTest
    @CsvSource({"0, FAS-001", "-60, FAS-001", "181, FAS-015", "NaN, FAS-003"})
    void hasAnAngleThatCanBe(double whole, String code) {
      assertTrue(refusal(() -> Seat.cone(24, 18, whole)).startsWith(code));
    }
  }

  @Nested
  class AnEmbedding {

    @Test
    void addsUpThreadBearingsAndInterfaces() {
      assertEquals(3 + 2 * 2.5 + 1.5, Embedding.of(Roughness.FINE, Load.AXIAL, 2, 1).micrometres());
      assertEquals(
          3 + 6.5 + 3 * 3.5, Embedding.of(Roughness.ROUGH, Load.SHEAR, 1, 3).micrometres());
      assertEquals("9.5 µm", Embedding.of(Roughness.FINE, Load.AXIAL, 2, 1).toString());
    }

    @Test
    void costsMostInAStiffJoint() {
      Embedding embedding = Embedding.of(Roughness.MEDIUM, Load.SHEAR, 2, 1);
      JointStiffness springs = JOINT.stiffness();
      double both = springs.bolt().plus(springs.parts()).millimetresPerNewton();
      assertEquals(0.0145 / both, embedding.loss(springs).newtons(), 1e-6);
      JointStiffness stiff = new JointStiffness(new Compliance(1e-6), new Compliance(0.2e-6));
      assertTrue(embedding.loss(stiff).compareTo(embedding.loss(springs)) > 0);
      assertEquals(new Force(0), embedding.left(Force.kilonewtons(10), stiff));
      double left = embedding.left(Force.kilonewtons(40), springs).newtons();
      assertEquals(40_000 - 0.0145 / both, left, 1e-6);
    }

    @Test
    void refusesCountsThatCannotBe() {
      assertTrue(
          refusal(() -> Embedding.of(Roughness.FINE, Load.AXIAL, 3, 0)).startsWith("FAS-036"));
      assertTrue(
          refusal(() -> Embedding.of(Roughness.FINE, Load.AXIAL, 0, 0)).startsWith("FAS-036"));
      assertTrue(
          refusal(() -> Embedding.of(Roughness.FINE, Load.AXIAL, 2, -1)).startsWith("FAS-037"));
    }
  }

  @Nested
  class Warming {
    private final JointStiffness springs = JOINT.stiffness();
    private final Length clamped = Length.mm(64);

    @Test
    void tightensSteelBoltsInAluminiumAndCoolingLoosensThem() {
      double both = springs.bolt().plus(springs.parts()).millimetresPerNewton();
      ForceChange warm = Expansion.STEEL.change(springs, clamped, Expansion.ALUMINIUM, 80);
      assertEquals(12e-6 * 80 * 64 / both, warm.newtons(), 1e-6);
      ForceChange cold = Expansion.STEEL.change(springs, clamped, Expansion.ALUMINIUM, -80);
      assertEquals(-warm.newtons(), cold.newtons(), 1e-9);
      assertTrue(cold.toString().startsWith("-"), cold.toString());
      assertTrue(warm.compareTo(cold) > 0);
    }

    @Test
    void changesNothingInOneMaterial() {
      assertEquals(0, Expansion.STEEL.change(springs, clamped, Expansion.STEEL, 300).newtons());
    }

    @Test
    void cannotMakeABoltPush() {
      assertEquals(new Force(0), new ForceChange(-5000).on(new Force(4000)));
      assertEquals(new Force(9000), new ForceChange(5000).on(new Force(4000)));
      assertEquals(-5, new ForceChange(-5000).inKilonewtons());
    }

    @Test
    void refusesWhatIsNoTemperature() {
      assertTrue(
          refusal(() -> Expansion.STEEL.change(springs, clamped, Expansion.STEEL, Double.NaN))
              .startsWith("FAS-003"));
      assertTrue(refusal(() -> new Expansion(0)).startsWith("FAS-001"));
    }
  }

  @Nested
  class AThread {
    private final Bolt m12 = Bolt.hexagon("M12", "8.8");

    private Engagement tapped(double length, Strength hole) {
      return Engagement.tapped(m12, Length.mm(length), hole);
    }

    @Test
    void hasTheShearAreasOfItsBasicProfile() {
      // By hand for 10 mm of M12: ten less the chamfers over 1.75 are 4.914 turns.
      Engagement ours = tapped(10, Strength.steel(600));
      double turns = 10 / 1.75 - 0.8;
      double tan = 1 / Math.sqrt(3);
      assertEquals(
          Math.PI * 12 * turns * (0.875 + (12 - 10.863) * tan),
          ours.innerArea().squareMillimetres(),
          0.1);
      assertEquals(
          Math.PI * 10.106 * turns * (0.875 + (10.863 - 10.106) * tan),
          ours.boltArea().squareMillimetres(),
          0.1);
    }

    @Test
    void stripsInAluminiumWhereItHoldsInSteel() {
      assertEquals(First.INNER_THREAD_STRIPS, tapped(10, Strength.aluminium(240)).first());
      assertEquals(First.BOLT_BREAKS, tapped(10, Strength.steel(600)).first());
      assertEquals(First.BOLT_BREAKS, tapped(15, Strength.aluminium(240)).first());
    }

    @Test
    void stripsOnTheBoltInAHardHole() {
      Engagement ours = tapped(5, Strength.steel(1400));
      assertEquals(First.BOLT_THREAD_STRIPS, ours.first());
      assertEquals(ours.boltStrips(), ours.holds());
    }

    @ParameterizedTest
    @CsvSource({"400, 0.6", "600, 0.6", "240, 0.7"})
    void isLongEnoughAtJustTheLengthNeeded(double tensile, double ratio) {
      Strength hole = new Strength(new Stress(tensile), ratio);
      double needed = tapped(10, hole).needed().millimetres();
      assertEquals(First.BOLT_BREAKS, strongest(needed + 1e-6, hole).first());
      assertFalse(strongest(needed - 0.01, hole).first() == First.BOLT_BREAKS);
    }

    /** A bolt of 1.2 times the least strength of its class. */
    private Engagement strongest(double length, Strength hole) {
      Strength least = Strength.of(m12.strength(), m12.thread());
      Stress most = new Stress(1.2 * least.tensile().megapascals());
      Strength bolt = new Strength(most, least.shearRatio());
      return new Engagement(m12.thread(), Length.mm(length), bolt, hole, Optional.empty());
    }

    @Test
    void needsMoreLengthForAStrongerBolt() {
      Strength hole = Strength.aluminium(240);
      Bolt strong = Bolt.hexagon("M12", "10.9");
      Length more = Engagement.tapped(strong, Length.mm(12), hole).needed();
      assertTrue(more.compareTo(tapped(12, hole).needed()) > 0);
    }

    @Test
    @DisplayName("in a nut of 18 mm over its flats is weaker than in a block, C1 = 0.84")
    void inANutIsWeakerThanInABlock() {
      Strength steel = Strength.steel(800);
      Strength bolt = Strength.of(PropertyClass.C8_8, m12.thread());
      Engagement nut =
          new Engagement(m12.thread(), Length.mm(10), bolt, steel, Optional.of(Length.mm(18)));
      assertEquals(3.8 * 1.5 - 2.25 - 2.61, nut.widening(), 1e-12);
      double block = tapped(10, steel).innerStrips().newtons();
      assertEquals(0.84 * block, nut.innerStrips().newtons(), 1e-6 * block);
      double ofTheBolt = tapped(10, steel).boltStrips().newtons();
      assertEquals(0.84 * ofTheBolt, nut.boltStrips().newtons(), 1e-6 * ofTheBolt);
      Engagement wide =
          new Engagement(m12.thread(), Length.mm(10), bolt, steel, Optional.of(Length.mm(24)));
      assertEquals(1, wide.widening());
      assertTrue(
          refusal(
                  () ->
                      new Engagement(
                          m12.thread(), Length.mm(10), bolt, steel, Optional.of(Length.mm(16))))
              .startsWith("FAS-038"));
      Bolt m10 = Bolt.hexagon("M10", "8.8");
      Strength same = Strength.of(PropertyClass.C8_8, m10.thread());
      Optional<Length> narrowest = Optional.of(Length.mm(14));
      assertEquals(
          3.8 * 1.4 - 1.96 - 2.61,
          new Engagement(m10.thread(), Length.mm(10), same, steel, narrowest).widening(),
          1e-12,
          "1.4 diameters are just enough");
    }

    @Test
    @DisplayName("has factors C2 and C3 that meet at 0.897 for equal strengths")
    void hasFactorsThatMeetAtEqualStrengths() {
      double ratio = tapped(10, Strength.steel(600)).strengthRatio();
      double equal = 600 / ratio;
      Engagement even = tapped(10, Strength.steel(equal));
      assertEquals(1, even.strengthRatio(), 1e-9);
      assertEquals(0.897, even.boltBending(), 0.001);
      assertEquals(0.897, even.innerBending(), 0.001);
      assertEquals(1.055, tapped(10, Strength.steel(equal * 0.2)).innerBending(), 0.001);
      assertEquals(1.187, tapped(10, Strength.steel(equal * 3)).boltBending(), 0.001);
    }

    @Test
    @DisplayName("strips in both threads at once if they are equally strong, and in none before")
    void stripsInBothAtOnceIfEquallyStrong() {
      Engagement some = tapped(10, Strength.steel(600));
      // by hand: 12 (0.875 + 1.137 tan 30°) 360 MPa over 10.106 (0.875 + 0.757 tan 30°) shear
      double bolt = Strength.of(PropertyClass.C8_8, m12.thread()).shear();
      assertEquals(18.378 * 360 / (13.26 * bolt), some.strengthRatio(), 0.002);
      Engagement even = tapped(10, Strength.steel(600 / some.strengthRatio()));
      double inner = even.innerStrips().newtons();
      assertEquals(inner, even.boltStrips().newtons(), 1e-3 * inner);
    }

    @Test
    void mustBeLongerThanItsChamfers() {
      assertTrue(refusal(() -> tapped(1.4, Strength.steel(600))).startsWith("FAS-004"));
      assertTrue(refusal(() -> new Strength(new Stress(0), 0.6)).startsWith("FAS-001"));
      assertTrue(refusal(() -> new Strength(new Stress(400), 0)).startsWith("FAS-001"));
    }
  }

  @Nested
  class ANut {

    @ParameterizedTest
    @CsvSource({
      "M12, N8, 74200",
      "M12, N10, 88500",
      "M16, N5, 95800",
      "M12x1.5, N8, 84100",
      "M12x1.5, N10, 97800",
      "M8x1, N10, 43100",
      "M10x1.25, N10, 67300"
    })
    void hasAProofLoad(String thread, NutClass strength, double newtons) {
      double ours = strength.proofLoad(ThreadSize.of(thread)).orElseThrow().newtons();
      assertEquals(newtons, ours, 0.002 * newtons);
    }

    @Test
    void hasNoneWhereNoTableWasRead() {
      assertEquals(Optional.empty(), NutClass.N9.proofLoad(ThreadSize.of("M12")));
      assertEquals(Optional.empty(), NutClass.N05.proofLoad(ThreadSize.of("M12")));
      assertEquals(Optional.empty(), NutClass.N8.proofLoad(ThreadSize.of("M12x1")));
      assertEquals(Optional.empty(), NutClass.N12.proofLoad(ThreadSize.of("M12x1.5")));
    }

    @ParameterizedTest
    @CsvSource({"N8, C8_8", "N10, C10_9", "N12, C12_9"})
    @DisplayName("of the right class proves more than the proof load of its bolt")
    void ofTheRightClassProvesMoreThanItsBolt(NutClass nut, PropertyClass bolt) {
      for (ThreadSize thread : ThreadCatalogue.all()) {
        nut.proofLoad(thread)
            .ifPresent(
                load -> assertTrue(load.compareTo(bolt.proofLoad(thread)) > 0, thread + " " + nut));
      }
    }

    @Test
    void thatLocksTakesPartOfTheTorque() {
      PrevailingTorque ours =
          PrevailingTorque.of(ThreadSize.of("M12x1.5"), NutClass.N10).orElseThrow();
      assertEquals(21, ours.firstOn().inNewtonMetres());
      assertEquals(3.1, ours.firstOff().inNewtonMetres());
      Range<Torque> left = ours.left(Torque.newtonMetres("70"));
      assertEquals(49, left.low().inNewtonMetres(), 1e-9);
      assertEquals(70, left.high().inNewtonMetres(), 1e-9);
      assertTrue(refusal(() -> ours.left(Torque.newtonMetres("20"))).startsWith("FAS-001"));
      assertEquals(Optional.empty(), PrevailingTorque.of(ThreadSize.of("M7"), NutClass.N8));
      assertEquals(Optional.empty(), PrevailingTorque.of(ThreadSize.of("M12"), NutClass.N05));
    }
  }

  @Nested
  class TheTorqueShownWhileTurning {
    private final Torque snug = Torque.newtonMetres("45");
    private final ExpectedTorque ours =
        new ExpectedTorque(
            JOINT, snug, FrictionClass.B.range(), new Deviation(4), ExpectedTorque.SOFTNESS);

    private Hint judge(double torque, double degrees) {
      return ours.judge(Units.newtonMetres(torque), Rotation.degrees(degrees));
    }

    @Test
    void isTheTorqueOfTheStageBeforeAnyTurn() {
      Range<Torque> band = ours.after(Rotation.degrees(0));
      assertEquals(45 * 0.96, band.low().inNewtonMetres(), 1e-9);
      assertEquals(45 * 1.04, band.high().inNewtonMetres(), 1e-9);
    }

    @Test
    void growsToYieldAndNoFarther() {
      Torque least = Assembly.atYield(JOINT.bolt()).torque(FrictionClass.B.range()).low();
      Torque most = Assembly.atYield(JOINT.bolt()).torque(FrictionClass.B.range()).high();
      Range<Torque> band = ours.after(Rotation.degrees(300));
      assertEquals(least.inNewtonMetres() * 0.96, band.low().inNewtonMetres(), 1e-9);
      assertEquals(most.inNewtonMetres() * 1.2 * 1.04, band.high().inNewtonMetres(), 1e-9);
    }

    @Test
    @DisplayName("is expected for a joint as reckoned, whatever its friction")
    void isExpectedForAJointAsReckoned() {
      for (double mu : new double[] {0.08, 0.12, 0.16}) {
        for (double turn : new double[] {5, 15, 25, 90}) {
          Friction friction = Friction.of(mu);
          AngleJob job = AngleJob.of(JOINT.bolt(), snug, Rotation.degrees(turn), JOINT.stiffness());
          Force preload = AngleTightening.preload(job, friction).orElseThrow();
          double torque =
              LongForm.of(JOINT.bolt()).torque(preload, friction, friction).inNewtonMetres();
          assertEquals(Hint.EXPECTED, judge(torque, turn), mu + " " + turn);
        }
      }
    }

    @Test
    void hintsAtAStrippedThreadAndAtACrossedOne() {
      assertEquals(Hint.TOO_SOFT, judge(48, 60));
      assertEquals(Hint.TOO_HARD, judge(200, 60));
      assertEquals(Hint.TOO_HARD, judge(120, 5));
    }

    @Test
    @DisplayName("hints at an 8.8 bolt where a 10.9 was meant")
    void hintsAtABoltOfALowerClass() {
      ExpectedTorque meant =
          new ExpectedTorque(
              Joints.documented("10.9"), snug, Joints.exactly(0.12), new Deviation(4), 0.2);
      double soft =
          Assembly.atYield(JOINT.bolt()).torque(Joints.exactly(0.12)).low().inNewtonMetres();
      assertEquals(Hint.TOO_SOFT, meant.judge(Units.newtonMetres(soft), Rotation.degrees(60)));
    }

    @Test
    void hasPointsForDrawing() {
      var points = ours.points(Rotation.degrees(90), 6);
      assertEquals(7, points.size());
      assertEquals(15, points.get(1).turn().degrees());
      for (int i = 1; i < points.size(); i++) {
        assertTrue(points.get(i).torque().low().compareTo(points.get(i - 1).torque().low()) >= 0);
        assertTrue(points.get(i).torque().high().compareTo(points.get(i - 1).torque().high()) >= 0);
      }
    }

    @Test
    void refusesWhatCannotBe() {
      assertTrue(refusal(() -> ours.after(Rotation.degrees(-1))).startsWith("FAS-002"));
      assertTrue(refusal(() -> ours.points(Rotation.degrees(9), 0)).startsWith("FAS-001"));
      for (double softness : new double[] {-0.1, 1, Double.NaN}) {
        assertTrue(
            refusal(
                    () ->
                        new ExpectedTorque(JOINT, snug, Joints.CLASS_B, new Deviation(4), softness))
                .startsWith("FAS-019"));
      }
    }
  }
}
