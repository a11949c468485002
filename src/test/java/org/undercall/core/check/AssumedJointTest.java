package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.BoltBody;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Seat;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;

@DisplayName("The joint that a check takes")
class AssumedJointTest {

  private static Fastener fastener(String more) throws Fault {
    Procedure procedure = OneJoint.procedure("M12x1.5", "10.9", "70±4", more);
    return ((Step.Fasten) procedure.phases().get(0).steps().get(0)).fastener();
  }

  private static Joint stated(String clamped) throws Fault {
    Fastener fastener = fastener("'clamped': {" + clamped + ", 'unit': 'mm'}");
    return Joints.stated(bolt(fastener), fastener).orElseThrow();
  }

  private static Bolt bolt(Fastener fastener) {
    return Bolts.marked(fastener, fastener.variants().get(0)).orElseThrow();
  }

  private static double free(Joint joint) {
    return joint.body().freeThread().millimetres();
  }

  private static double springs(Joint joint) {
    return joint.stiffness().parts().millimetresPerNewton();
  }

  @Nested
  @DisplayName("where it is stated")
  class Stated {

    @ParameterizedTest
    @CsvSource({
      "'''length'': 64, ''shank'': 40', 24",
      "'''length'': 64', 32",
      "'''length'': 64, ''shank'': 64', 1.2",
      "'''length'': 64, ''shank'': 63', 1.2",
      "'''length'': 64, ''shank'': 62.5', 1.5",
      "'''length'': 2, ''shank'': 2', 1"
    })
    @DisplayName("has the rest of its length as free thread: a tenth of a diameter, where it fits")
    void freeThread(String clamped, double expected) throws Fault {
      assertEquals(expected, free(stated(clamped)), 1e-9);
    }

    @Test
    @DisplayName("without a shank is threaded all along")
    void threaded() throws Fault {
      Joint joint = stated("'length': 64, 'shank': 0");
      assertEquals(64, free(joint), 1e-9);
      Bolt bolt = joint.bolt();
      BoltBody.Ends ends = BoltBody.Ends.HEXAGON_AND_NUT;
      assertEquals(BoltBody.fullyThreaded(bolt.thread(), Length.mm(64), ends), joint.body());
    }

    @Test
    @DisplayName("is reckoned with its own widths: those of the documented example")
    void widths() throws Fault {
      Joint joint = stated("'length': 64, 'shank': 40, 'outer': 28, 'inner': 14");
      PressureCone tube =
          new PressureCone(
              Seat.of(joint.bolt().seat().bearing().millimetres(), 14),
              Length.mm(64),
              Length.mm(28),
              PressureCone.Kind.THROUGH_BOLT);
      Joint expected = Joint.ofSteel(joint.bolt(), joint.body(), tube);
      assertEquals(springs(expected), springs(joint), 1e-15);
    }

    @Test
    @DisplayName("where the widths are missing, has parts twice as wide as the head, and its hole")
    void noWidths() throws Fault {
      Joint joint = stated("'length': 64, 'shank': 40");
      assertEquals(springs(Joints.of(joint.bolt(), 64 / 12.0)), springs(joint), 1e-12);
      double bearing = joint.bolt().seat().bearing().millimetres();
      Joint same = stated("'length': 64, 'shank': 40, 'outer': " + 2 * bearing);
      assertEquals(springs(same), springs(joint), 1e-15);
    }

    @Test
    @DisplayName("keeps a seat under the head and a ring of parts, whatever the widths")
    void narrow() throws Fault {
      Joint wide = stated("'length': 64, 'inner': 40, 'outer': 60");
      assertEquals(
          springs(stated("'length': 64, 'inner': 16.4637, 'outer': 60")), springs(wide), 1e-12);
      assertTrue(springs(stated("'length': 64, 'outer': 12")) > 0);
    }

    @Test
    @DisplayName("is softer in aluminium than in grey iron than in steel, by their moduli")
    void material() throws Fault {
      double steel = springs(stated("'length': 64, 'material': 'steel'"));
      double iron = springs(stated("'length': 64, 'material': 'cast-iron'"));
      double aluminium = springs(stated("'length': 64, 'material': 'aluminium'"));
      double modulus = Elasticity.STEEL.modulus().megapascals();
      assertEquals(modulus / Elasticity.GREY_IRON.modulus().megapascals(), iron / steel, 1e-9);
      assertEquals(modulus / Elasticity.ALUMINIUM.modulus().megapascals(), aluminium / steel, 1e-9);
      assertTrue(steel < iron && iron < aluminium);
    }

    @Test
    @DisplayName("in a tapped hole has a shorter end of thread, and one cone of pressure")
    void tapped() throws Fault {
      String clamped = "'clamped': {'length': 64, 'shank': 40, 'unit': 'mm'}";
      Fastener hole = fastener(clamped + ", 'tappedIn': 'steel', 'engagement': 15");
      Fastener through = fastener(clamped);
      Joint inHole = Joints.stated(bolt(hole), hole).orElseThrow();
      Joint withNut = Joints.stated(bolt(through), through).orElseThrow();
      assertEquals(new BoltBody.Ends(0.5, 0.33), inHole.body().ends());
      assertEquals(BoltBody.Ends.HEXAGON_AND_NUT, withNut.body().ends());
      assertTrue(springs(inHole) < springs(withNut), "one cone widens all along");
    }
  }

  @Nested
  @DisplayName("where none is stated")
  class Assumed {

    @ParameterizedTest
    @CsvSource({
      "M12x1.75, 96, 20.4, 24, 12, 48, 24",
      "M14x2, 112, 23.8, 28, 14, 56, 28",
      "M10x1.5, 80, 25, 20, 10, 40, 20"
    })
    @DisplayName("is long, short or usual: 8, 2 or 4 diameters, with the free thread of each")
    void lengths(
        String thread,
        double longest,
        double longFree,
        double shortest,
        double shortFree,
        double usual,
        double usualFree)
        throws Fault {
      Bolt bolt = Bolt.hexagon(thread, "10.9");
      assertEquals(longest, length(Joints.longest(bolt)), 1e-9);
      assertEquals(longFree, free(Joints.longest(bolt)), 1e-9);
      assertEquals(shortest, length(Joints.shortest(bolt)), 1e-9);
      assertEquals(shortFree, free(Joints.shortest(bolt)), 1e-9);
      assertEquals(usual, length(Joints.usual(bolt, fastener(""))), 1e-9);
      assertEquals(usualFree, free(Joints.usual(bolt, fastener(""))), 1e-9);
    }

    @Test
    @DisplayName("is never of more thread than length: an M4 is threaded over all its 32 mm")
    void small() {
      assertEquals(25, free(Joints.longest(Bolt.hexagon("M4x0.7", "8.8"))), 1e-9);
      assertEquals(32, length(Joints.longest(Bolt.hexagon("M4x0.7", "8.8"))), 1e-9);
    }

    private double length(Joint joint) {
      return joint.body().clamped().millimetres();
    }
  }

  @Nested
  @DisplayName("rubs")
  class FrictionOfIt {

    private static Rubs rubs(double threadLow, double threadHigh, double seatLow, double seatHigh) {
      return new Rubs(range(threadLow, threadHigh), range(seatLow, seatHigh));
    }

    private static Range<Friction> range(double low, double high) {
      return new Range<>(Friction.of(low), Friction.of(high));
    }

    @Test
    @DisplayName("from the least to the most of thread and seat")
    void both() {
      assertEquals(range(0.1, 0.2), rubs(0.1, 0.12, 0.14, 0.2).both());
      assertEquals(range(0.1, 0.2), rubs(0.14, 0.2, 0.1, 0.12).both());
      assertEquals(range(0.1, 0.2), rubs(0.1, 0.2, 0.1, 0.2).both());
    }

    @ParameterizedTest
    @CsvSource({
      "0.08, 0.24, 0.14",
      "0.14, 0.2, 0.14",
      "0.1, 0.14, 0.14",
      "0.16, 0.24, 0.16",
      "0.08, 0.12, 0.12"
    })
    @DisplayName("in the middle at 0.14, or as near to it as can be")
    void middle(double low, double high, double expected) {
      assertEquals(Friction.of(expected), rubs(low, high, low, high).middle());
    }

    @Test
    @DisplayName("between its ends, thread and seat alike")
    void between() {
      Rubs rubs = rubs(0.1, 0.12, 0.14, 0.2);
      assertEquals(rubs(0.1, 0.1, 0.14, 0.14), rubs.at(0));
      assertEquals(0.11, rubs.at(0.5).thread().low().coefficient(), 1e-12);
      assertEquals(0.17, rubs.at(0.5).seat().high().coefficient(), 1e-12);
      assertEquals(0.2, rubs.at(1).seat().low().coefficient(), 1e-12);
    }

    @Test
    @DisplayName("thread and seat apart in the torque that yields, VDI 2230 table A1: M12 8.8")
    void yields() {
      // 84 N·m is 90 % of yield at friction 0.12, 93 N·m at 0.14
      Bolt bolt = Bolt.hexagon("M12x1.75", "8.8");
      Rubs rubs = rubs(0.12, 0.14, 0.12, 0.14);
      assertEquals(84 / 0.9, rubs.yieldsFrom(bolt), 0.6);
      assertEquals(93 / 0.9, rubs.yieldsAlways(bolt), 0.6);
      double mixed = rubs(0.12, 0.12, 0.14, 0.14).yieldsFrom(bolt);
      assertTrue(rubs.yieldsFrom(bolt) < mixed && mixed < rubs.yieldsAlways(bolt) + 1);
    }

    @Test
    @DisplayName("so that 84 N·m on M12 8.8 make nine tenths of the yield preload at 0.12")
    void shares() {
      Bolt bolt = Bolt.hexagon("M12x1.75", "8.8");
      Torque torque = Torque.newtonMetres("84");
      Rubs rubs = rubs(0.12, 0.24, 0.12, 0.24);
      assertEquals(0.9, rubs.most(bolt, torque), 0.006);
      assertTrue(rubs.least(bolt, torque) < rubs.usual(bolt, torque));
      assertTrue(rubs.usual(bolt, torque) < rubs.most(bolt, torque));
    }

    @Test
    @DisplayName("as stated, else as its state allows")
    void of() throws Fault {
      Rubs stated = Rubs.of(fastener("'friction': {'least': 0.1, 'most': 0.16}")).orElseThrow();
      assertEquals(rubs(0.1, 0.16, 0.1, 0.16), stated);
      Rubs oiled = Rubs.of(fastener("'lubrication': 'oiled'")).orElseThrow();
      assertEquals(rubs(0.08, 0.16, 0.08, 0.16), oiled);
    }
  }

  @Nested
  @DisplayName("is of a bolt")
  class ABolt {

    @Test
    @DisplayName("of the marked class, or of the one that is given for none")
    void marked() throws Fault {
      Fastener fastener = fastener("");
      assertEquals("M12x1.5 10.9", Bolts.words(bolt(fastener), fastener.variants().get(0)));
      assertEquals(
          Optional.of(bolt(fastener)),
          Bolts.of(fastener, fastener.variants().get(0), PropertyClass.C4_6));
    }

    @ParameterizedTest
    @CsvSource({
      "'''shape'': ''flat'', ''outer'': 26', 26, 13.5",
      "'''shape'': ''flat'', ''inner'': 14', 16.63, 14",
      "'''shape'': ''flat''', 16.63, 13.5",
      "'''shape'': ''flat'', ''outer'': 13.5', 16.63, 13.5",
      "'''shape'': ''flat'', ''outer'': 13.6', 13.6, 13.5"
    })
    @DisplayName("with the seat that is stated; what is missing is that of a hexagon")
    void seat(String ring, double outer, double inner) throws Fault {
      Seat seat = bolt(fastener("'seat': {" + ring + ", 'unit': 'mm'}")).seat();
      assertEquals(outer, seat.bearing().millimetres(), 1e-9);
      assertEquals(inner, seat.hole().millimetres(), 1e-9);
    }

    @Test
    @DisplayName("on a cone or a ball; a ball is a tenth larger than its ring")
    void shapes() throws Fault {
      String ring = ", 'outer': 24, 'inner': 15, 'unit': 'mm'}";
      Seat cone = bolt(fastener("'seat': {'shape': 'cone', 'angle': 60" + ring)).seat();
      Seat ball = bolt(fastener("'seat': {'shape': 'ball'" + ring)).seat();
      assertEquals(Seat.cone(24, 15, 60), cone);
      assertEquals(Seat.ball(24, 15, 13.2).half().degrees(), ball.half().degrees(), 1e-9);
      assertEquals(24, ball.bearing().millimetres());
    }
  }

  @Test
  @DisplayName("is none for a thread that is not in the table")
  void unknown() throws Fault {
    Fastener fastener = fastener("'thread': 'M12x1.3'");
    assertEquals(Optional.empty(), Bolts.marked(fastener, fastener.variants().get(0)));
  }
}
