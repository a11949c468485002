package org.undercall.core.fastening.reference;

import java.util.stream.IntStream;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Compliance;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.PressureCone;
import org.undercall.core.fastening.PressureCone.Kind;
import org.undercall.core.fastening.Seat;

/**
 * The springs of worked examples whose pressure cone has a fixed angle.
 *
 * <p>Our cone takes its angle from the width of the parts, so a width is chosen that gives the
 * angle of the example: what is checked is the compliance of the cone, not its angle.
 */
final class Springs {
  static final double TAN_30 = Math.tan(Math.toRadians(30));

  /** A frustum is put together from so many, so that none is cut by its chosen width. */
  private static final int SLICES = 8;

  private Springs() {}

  /** The stiffness of a bolt of two sections in N/mm. */
  static double bolt(Elasticity material, double[] lengths, Area[] areas) {
    return 1
        / IntStream.range(0, lengths.length)
            .mapToObj(i -> material.bar(Length.mm(lengths[i]), areas[i]))
            .reduce(Compliance::plus)
            .orElseThrow()
            .millimetresPerNewton();
  }

  /** Shank and thread in the grip. */
  static double bolt(Elasticity material, double d, double shank, double free, Area stress) {
    Area nominal = Area.ofCircle(Length.mm(d));
    return bolt(material, new double[] {shank, free}, new Area[] {nominal, stress});
  }

  /** A pair of frusta over the whole grip, in N/mm. */
  static double both(double hole, double end, double grip, double tangent, Elasticity material) {
    double y = Math.exp((tangent - 0.362 - 0.032 * Math.log(grip / end / 2)) / 0.153);
    PressureCone cone =
        new PressureCone(
            Seat.of(end, hole), Length.mm(grip), Length.mm(end * y), Kind.THROUGH_BOLT);
    return 1 / cone.compliance(material).millimetresPerNewton();
  }

  /** One frustum of 30 degrees that widens from one end. */
  static Compliance frustum(double hole, double end, double thickness, Elasticity material) {
    double step = thickness / SLICES;
    return IntStream.range(0, SLICES)
        .mapToObj(i -> cone(hole, end + 2 * TAN_30 * step * i, step).compliance(material))
        .reduce(Compliance::plus)
        .orElseThrow();
  }

  /** How wide a cone of 30 degrees is behind a thickness. */
  static double behind(double end, double thickness) {
    return cone(end / 2, end, thickness).coneLimit().millimetres();
  }

  private static PressureCone cone(double hole, double end, double thickness) {
    double y = Math.exp((TAN_30 - 0.348 - 0.013 * Math.log(thickness / end)) / 0.193);
    return new PressureCone(
        Seat.of(end, hole), Length.mm(thickness), Length.mm(end * y), Kind.TAPPED_HOLE);
  }

  /** A joint from the two stiffnesses in N/mm. */
  static JointStiffness joint(double bolt, double parts) {
    return new JointStiffness(new Compliance(1 / bolt), new Compliance(1 / parts));
  }
}
