package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.fastening.AngleOutcome.Expected;
import org.undercall.core.fastening.AngleOutcome.Missing;
import org.undercall.core.fastening.AngleOutcome.NotKnown;
import org.undercall.core.fastening.AngleOutcome.Reach;
import org.undercall.core.fastening.SleeveStack.Sleeve;
import org.undercall.core.term.Torque;

@DisplayName("Angle stages")
class AngleTest {
  private static final Bolt BOLT = Bolt.hexagon("M12x1.5", "8.8");
  private static final BoltBody BODY =
      new BoltBody(BOLT.thread(), Length.mm(50), Length.mm(20), BoltBody.Ends.HEXAGON_AND_NUT);
  private static final SleeveStack SLEEVES =
      new SleeveStack(List.of(Sleeve.of(8, 30, 13.5), Sleeve.of(62, 22, 12.5)));
  private static final JointStiffness JOINT = JointStiffness.of(BODY, SLEEVES, Elasticity.STEEL);
  private static final Range<Friction> CLASS_B = FrictionClass.B.range();

  private static AngleJob job(String torque, double degrees) {
    return AngleJob.of(BOLT, Torque.newtonMetres(torque), Rotation.degrees(degrees), JOINT);
  }

  private static Expected expect(String torque, double degrees) {
    return assertInstanceOf(
        Expected.class, AngleTightening.expect(job(torque, degrees), Optional.of(CLASS_B)));
  }

  @Nested
  class AnAngleStage {

    @Test
    @DisplayName("of 90 degrees after 68 N·m on M12x1.5 8.8 ends about yield (no source)")
    void ofAControlArmBoltEndsAboutYield() {
      Expected ours = expect("68", 90);
      assertEquals(Reach.ABOUT_YIELD, ours.reach());
      assertEquals(ours.yieldPreload(), ours.preload());
      assertTrue(ours.angleToYield().high().degrees() < 90);
      assertTrue(ours.toString().startsWith("about yield preload, "), ours.toString());
    }

    @Test
    void thatIsShortStaysBelowYield() {
      Expected ours = expect("30", 10);
      assertEquals(Reach.BELOW_YIELD, ours.reach());
      double gain = JOINT.gain(BOLT.thread(), Rotation.degrees(10)).newtons();
      assertEquals(ours.afterTorque().low().newtons() + gain, ours.preload().low().newtons(), 1e-6);
      assertEquals(
          ours.afterTorque().high().newtons() + gain, ours.preload().high().newtons(), 1e-6);
      assertTrue(ours.toString().contains(", below yield ("), ours.toString());
    }

    @Test
    void mayReachYieldWhenTheFrictionIsLow() {
      Expected ours = expect("60", 15);
      assertEquals(Reach.MAY_REACH_YIELD, ours.reach());
      assertEquals(ours.yieldPreload().high(), ours.preload().high());
      assertTrue(ours.preload().low().compareTo(ours.yieldPreload().low()) < 0);
      assertTrue(ours.toString().contains("may reach yield (after "), ours.toString());
    }

    @Test
    void afterATorqueBeyondYieldAddsNothing() {
      Expected ours = expect("400", 30);
      assertEquals(ours.yieldPreload(), ours.afterTorque());
      assertEquals(ours.yieldPreload(), ours.preload());
      assertEquals(0, ours.angleToYield().high().degrees(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"5, 10", "68, 90", "150, 180", "300, 360"})
    void neverShowsMoreThanTheYieldPreload(String torque, double degrees) {
      Expected ours = expect(torque, degrees);
      assertTrue(ours.preload().high().compareTo(ours.yieldPreload().high()) <= 0);
      assertTrue(ours.preload().low().compareTo(ours.yieldPreload().low()) <= 0);
    }

    @Test
    void thatEndsExactlyAtTheAngleToYieldCountsAsYield() {
      Friction mu = Friction.of(0.12);
      Optional<Range<Friction>> exact = Optional.of(new Range<>(mu, mu));
      Expected first = (Expected) AngleTightening.expect(job("68", 10), exact);
      double angle = first.angleToYield().low().degrees();
      Expected just = (Expected) AngleTightening.expect(job("68", angle + 1e-9), exact);
      Expected before = (Expected) AngleTightening.expect(job("68", angle - 0.01), exact);
      assertEquals(Reach.ABOUT_YIELD, just.reach());
      assertEquals(Reach.BELOW_YIELD, before.reach());
    }

    @Test
    void withoutJointSizesSaysWhatItCannotKnow() {
      AngleJob unknown =
          AngleJob.unknownJoint(BOLT, Torque.newtonMetres("68"), Rotation.degrees(90));
      AngleOutcome outcome = AngleTightening.expect(unknown, Optional.of(CLASS_B));
      assertEquals(new NotKnown(Set.of(Missing.JOINT_SIZES)), outcome);
      assertEquals(
          "the preload cannot be told without the sizes of the clamped parts and the bolt's free"
              + " length",
          outcome.toString());
      assertEquals(Optional.empty(), AngleTightening.preload(unknown, Friction.of(0.12)));
    }

    @Test
    void withoutFrictionSaysSoToo() {
      assertEquals(
          new NotKnown(Set.of(Missing.FRICTION)),
          AngleTightening.expect(job("68", 90), Optional.empty()));
      AngleJob unknown =
          AngleJob.unknownJoint(BOLT, Torque.newtonMetres("68"), Rotation.degrees(90));
      AngleOutcome both = AngleTightening.expect(unknown, Optional.empty());
      assertTrue(both.toString().endsWith("length and the friction of thread and seat"));
    }

    @Test
    void turnsForward() {
      assertTrue(refusal(() -> job("68", 0)).startsWith("FAS-001 angle stage"));
      assertTrue(refusal(() -> new NotKnown(Set.of())).startsWith("FAS-031"));
    }
  }
}
