package org.undercall.core.fastening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.core.fastening.QuantitiesTest.refusal;

import java.util.List;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.fastening.SleeveStack.Sleeve;

@DisplayName("Joints")
class JointTest {
  private static final Bolt BOLT = Bolt.hexagon("M12x1.5", "8.8");
  private static final BoltBody BODY =
      new BoltBody(BOLT.thread(), Length.mm(50), Length.mm(20), BoltBody.Ends.HEXAGON_AND_NUT);
  private static final SleeveStack SLEEVES =
      new SleeveStack(List.of(Sleeve.of(8, 30, 13.5), Sleeve.of(62, 22, 12.5)));
  private static final JointStiffness JOINT = JointStiffness.of(BODY, SLEEVES, Elasticity.STEEL);

  @Nested
  class APressureCone {
    private static final double MODULUS = 205_000;

    private PressureCone cone(double clamped, double outer, PressureCone.Kind kind) {
      return new PressureCone(Seat.of(16.63, 13.5), Length.mm(clamped), Length.mm(outer), kind);
    }

    /** Integrates dx/(E A(x)) along the clamped length, slice by slice. */
    private double integrated(PressureCone cone) {
      double tangent = cone.coneTangent();
      double length = cone.clamped().millimetres();
      boolean through = cone.kind() == PressureCone.Kind.THROUGH_BOLT;
      double half = through ? length / 2 : length;
      double edge = Math.max(cone.outer().millimetres(), 16.63);
      double ends = Math.min(half, (edge - 16.63) / 2 / tangent);
      SimpsonIntegrator integrator = new SimpsonIntegrator(1e-10, 1e-14, 5, 60);
      double sloped =
          ends < 1e-9
              ? 0
              : integrator.integrate(100_000, x -> slice(16.63 + 2 * x * tangent), 0, ends);
      double straight = (half - ends) * slice(Math.min(cone.outer().millimetres(), edge));
      return (through ? 2 : 1) * (sloped + straight);
    }

    private double slice(double diameter) {
      return 4 / (Math.PI * (diameter * diameter - 13.5 * 13.5) * MODULUS);
    }

    @ParameterizedTest
    @CsvSource({
      "42, 80, THROUGH_BOLT",
      "42, 80, TAPPED_HOLE",
      "42, 24, THROUGH_BOLT",
      "42, 24, TAPPED_HOLE",
      "90, 40, THROUGH_BOLT",
      "90, 40, TAPPED_HOLE",
      "20, 17, THROUGH_BOLT"
    })
    void agreesWithNumericalIntegration(double clamped, double outer, PressureCone.Kind kind) {
      PressureCone cone = cone(clamped, outer, kind);
      double ours = cone.compliance(Elasticity.STEEL).millimetresPerNewton();
      assertEquals(integrated(cone), ours, ours * 1e-6);
    }

    @Test
    void isASleeveWhereThePartIsNoWiderThanTheSeat() {
      double cone =
          cone(40, 16, PressureCone.Kind.THROUGH_BOLT)
              .compliance(Elasticity.STEEL)
              .millimetresPerNewton();
      double sleeve =
          new SleeveStack(List.of(Sleeve.of(40, 16, 13.5)))
              .compliance(Elasticity.STEEL)
              .millimetresPerNewton();
      assertEquals(sleeve, cone, sleeve * 1e-12);
    }

    @Test
    void spreadsWiderFromATappedHole() {
      PressureCone tapped = cone(42, 80, PressureCone.Kind.TAPPED_HOLE);
      assertEquals(0.663, tapped.coneTangent(), 0.001);
      assertEquals(72.31, tapped.coneLimit().millimetres(), 0.1);
    }

    @Test
    void needsMaterialAroundTheHole() {
      assertTrue(
          refusal(() -> cone(40, 13.5, PressureCone.Kind.THROUGH_BOLT)).startsWith("FAS-004"));
    }
  }

  @Nested
  class AStackUnderASeat {
    private static final Seat SEAT = Seat.of(16.63, 13.5);

    private double compliance(PressureCone.Kind kind, Sleeve... sleeves) {
      return new ConeStack(SEAT, List.of(sleeves), kind)
          .compliance(Elasticity.STEEL)
          .millimetresPerNewton();
    }

    @ParameterizedTest
    @CsvSource({
      "42, 80, THROUGH_BOLT",
      "42, 24, THROUGH_BOLT",
      "90, 40, TAPPED_HOLE",
      "42, 24, TAPPED_HOLE",
      "64, 28, THROUGH_BOLT",
      "20, 17, THROUGH_BOLT"
    })
    void ofOnePartIsThePressureCone(double clamped, double outer, PressureCone.Kind kind) {
      double cone =
          new PressureCone(SEAT, Length.mm(clamped), Length.mm(outer), kind)
              .compliance(Elasticity.STEEL)
              .millimetresPerNewton();
      double ours = compliance(kind, Sleeve.of(clamped, outer, 13.5));
      assertEquals(cone, ours, 1e-3 * cone);
    }

    @Test
    @DisplayName("takes a tube of 28 over 13 mm as softer than one loaded over its whole section")
    void takesTheTubeOfTheDocumentedExampleAsACone() {
      Sleeve tube = Sleeve.of(64, 28, 13);
      double whole =
          new SleeveStack(List.of(tube)).compliance(Elasticity.STEEL).millimetresPerNewton();
      assertEquals(0.646e-6, whole, 0.001e-6);
      double closed = closedFormOfTheDocumentedExample();
      double ours = compliance(PressureCone.Kind.THROUGH_BOLT, tube);
      assertEquals(closed, ours, 1e-3 * closed);
      assertTrue(ours > 1.25 * whole, ours + "");
    }

    /** Two cones from 16.63 mm out to 28 mm and a sleeve between, by the logarithms of VDI 2230. */
    private double closedFormOfTheDocumentedExample() {
      double tangent = 0.362 + 0.032 * Math.log(64 / 16.63 / 2) + 0.153 * Math.log(28 / 16.63);
      double ratio = (16.63 + 13) * (28 - 13) / ((16.63 - 13) * (28 + 13));
      double cones = 2 * Math.log(ratio) / (205_000 * Math.PI * 13 * tangent);
      double between = 64 - (28 - 16.63) / tangent;
      double section = Math.PI / 4 * (28 * 28 - 13 * 13);
      return cones + between / (205_000 * section);
    }

    @Test
    void cutInTwoIsTheSameStack() {
      double whole = compliance(PressureCone.Kind.THROUGH_BOLT, Sleeve.of(64, 28, 13.5));
      double halves =
          compliance(
              PressureCone.Kind.THROUGH_BOLT, Sleeve.of(20, 28, 13.5), Sleeve.of(44, 28, 13.5));
      assertEquals(whole, halves, 1e-4 * whole);
    }

    @Test
    void ofTwoMaterialsLiesBetweenThem() {
      Sleeve half = Sleeve.of(30, 28, 13.5);
      ConeStack stack = new ConeStack(SEAT, List.of(half, half), PressureCone.Kind.THROUGH_BOLT);
      double steel = stack.compliance(Elasticity.STEEL).millimetresPerNewton();
      double light = stack.compliance(Elasticity.ALUMINIUM).millimetresPerNewton();
      double mixed =
          stack.compliance(List.of(Elasticity.STEEL, Elasticity.ALUMINIUM)).millimetresPerNewton();
      assertEquals((steel + light) / 2, mixed, 1e-9 * steel);
      assertTrue(refusal(() -> stack.compliance(List.of(Elasticity.STEEL))).startsWith("FAS-039"));
    }

    @Test
    void turnedRoundIsTheSameStack() {
      Sleeve wall = Sleeve.of(8, 40, 13.5);
      Sleeve tube = Sleeve.of(50, 22, 12.5);
      double one = compliance(PressureCone.Kind.THROUGH_BOLT, wall, tube);
      double other = compliance(PressureCone.Kind.THROUGH_BOLT, tube, wall);
      assertEquals(one, other, 1e-9 * one);
    }

    @Test
    void liesBetweenItsNarrowestAndItsWidest() {
      double narrow = compliance(PressureCone.Kind.THROUGH_BOLT, Sleeve.of(60, 20, 13.5));
      double mixed =
          compliance(
              PressureCone.Kind.THROUGH_BOLT, Sleeve.of(30, 20, 13.5), Sleeve.of(30, 40, 13.5));
      double wide = compliance(PressureCone.Kind.THROUGH_BOLT, Sleeve.of(60, 40, 13.5));
      assertTrue(narrow > mixed && mixed > wide, narrow + " " + mixed + " " + wide);
    }

    @Test
    void mustNotLetTheSeatOrAPartFallThrough() {
      Sleeve tube = Sleeve.of(20, 30, 13.5);
      String seat = refusal(() -> ConeStack.of(SEAT, Sleeve.of(20, 30, 16.63)));
      assertTrue(seat.startsWith("FAS-004"), seat);
      PressureCone.Kind kind = PressureCone.Kind.THROUGH_BOLT;
      Sleeve wide = Sleeve.of(20, 30, 15.5);
      Sleeve thin = Sleeve.of(20, 15, 13.5);
      assertTrue(
          refusal(() -> new ConeStack(SEAT, List.of(thin, wide), kind)).startsWith("FAS-004"));
      assertTrue(
          refusal(() -> new ConeStack(SEAT, List.of(wide, thin), kind)).startsWith("FAS-004"));
      assertTrue(refusal(() -> new ConeStack(SEAT, List.of(), kind)).startsWith("FAS-030"));
      assertEquals(40, new ConeStack(SEAT, List.of(tube, tube), kind).clamped().millimetres());
    }
  }

  @Nested
  class AJoint {

    @Test
    void addsUpItsLengths() {
      assertEquals(70, BODY.clamped().millimetres());
      assertEquals(70, SLEEVES.clamped().millimetres());
    }

    @Test
    void turnsForAGainAsItGainsForATurn() {
      Force gain = JOINT.gain(BOLT.thread(), Rotation.degrees(37));
      assertEquals(37, JOINT.turnFor(BOLT.thread(), gain).degrees(), 1e-9);
    }

    @Test
    void needsAtLeastOneSleeveThatIsATube() {
      assertTrue(refusal(() -> new SleeveStack(List.of())).startsWith("FAS-030"));
      assertTrue(refusal(() -> Sleeve.of(10, 12, 12)).startsWith("FAS-004"));
      assertTrue(refusal(() -> new BoltBody.Ends(0, 0.4)).startsWith("FAS-001"));
      assertTrue(refusal(() -> new BoltBody.Ends(0.4, 0)).startsWith("FAS-001"));
    }
  }
}
