package org.undercall.core.fastening;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.undercall.core.fastening.SleeveStack.Sleeve;
import org.undercall.core.term.Refused;

/**
 * Tubes or plates one behind the other under a seat: the pressure spreads in a cone through all of
 * them, as far as each is wide enough.
 *
 * <p>VDI 2230 Part 1, section 5.1.2.1, concentric: the cone of {@link PressureCone}, which this
 * equals for one part over its whole length. The cone widens from the head, and with a through bolt
 * from the nut too; where a part is narrower than the cone, the part's whole section carries. A
 * part no wider than the seat is a tube loaded over its whole section.
 *
 * <p>Approximations of this program: one cone angle for the whole stack, from the outer diameter
 * averaged over the length; behind a narrow part the cone goes on from that part's diameter; the
 * same seat at both ends of a through bolt; the cone is summed up in {@value #SLICES} slices of
 * each part, less than a thousandth off. Cannot see: parts that do not touch all over, a flange or
 * bracket that spreads the pressure beyond its own outer diameter, bending.
 *
 * @param seat the seat, of which the bearing diameter dw counts
 * @param sleeves the parts from the head on, at least one; their bores count, not the seat's
 * @param kind through bolt or tapped hole
 */
public record ConeStack(Seat seat, List<Sleeve> sleeves, PressureCone.Kind kind)
    implements ClampedParts {
  private static final int SLICES = 400;

  public ConeStack {
    Objects.requireNonNull(kind, "kind");
    sleeves = List.copyOf(sleeves);
    if (sleeves.isEmpty()) {
      throw new Refused("FAS-030", "clamped parts", "no sleeve", "one or more");
    }
    for (Sleeve sleeve : sleeves) {
      Require.larger("bearing diameter of a seat", sleeve.inner(), seat.bearing());
    }
    for (int i = 1; i < sleeves.size(); i++) {
      Sleeve before = sleeves.get(i - 1);
      Require.larger("outer diameter of a sleeve", sleeves.get(i).inner(), before.outer());
      Require.larger("outer diameter of a sleeve", before.inner(), sleeves.get(i).outer());
    }
  }

  /** One tube or plate under a seat, with a through bolt. */
  public static ConeStack of(Seat seat, Sleeve sleeve) {
    return new ConeStack(seat, List.of(sleeve), PressureCone.Kind.THROUGH_BOLT);
  }

  @Override
  public Length clamped() {
    return new Length(sleeves.stream().mapToDouble(s -> s.length().millimetres()).sum());
  }

  /** The tangent of the half angle of the cone. */
  public double coneTangent() {
    double weighed =
        sleeves.stream().mapToDouble(s -> s.outer().millimetres() * s.length().millimetres()).sum();
    double mean = Math.max(weighed / clamped().millimetres(), seat.bearing().millimetres());
    return PressureCone.tangent(kind, seat.bearing(), clamped(), new Length(mean));
  }

  @Override
  public Compliance compliance(Elasticity material) {
    return compliance(Collections.nCopies(sleeves.size(), material));
  }

  /**
   * The compliance δP of parts of several materials. The cone is the same; that it bends where a
   * soft part follows a hard one cannot be seen.
   *
   * @param materials one for each part, in their order
   */
  public Compliance compliance(List<Elasticity> materials) {
    if (materials.size() != sleeves.size()) {
      throw new Refused("FAS-039", "materials", materials.size() + "", sleeves.size() + "");
    }
    double[] fromHead = spread(sleeves);
    double[] fromNut = kind == PressureCone.Kind.THROUGH_BOLT ? spread(reversed()) : null;
    double sum = 0;
    for (int i = 0; i < fromHead.length; i++) {
      Sleeve sleeve = sleeves.get(i / SLICES);
      double nut = fromNut == null ? fromHead[i] : fromNut[fromNut.length - 1 - i];
      double width = Math.min(fromHead[i], nut);
      double bore = sleeve.inner().millimetres();
      double area = Math.PI / 4 * (width * width - bore * bore);
      double modulus = materials.get(i / SLICES).modulus().megapascals();
      sum += sleeve.length().millimetres() / SLICES / area / modulus;
    }
    return new Compliance(sum);
  }

  private List<Sleeve> reversed() {
    return IntStream.rangeClosed(1, sleeves.size())
        .mapToObj(i -> sleeves.get(sleeves.size() - i))
        .toList();
  }

  /** The diameter of a cone from the first part on, in the middle of each slice. */
  private double[] spread(List<Sleeve> parts) {
    double[] widths = new double[parts.size() * SLICES];
    double slope = 2 * coneTangent();
    double edge = seat.bearing().millimetres();
    for (int i = 0; i < widths.length; i++) {
      Sleeve sleeve = parts.get(i / SLICES);
      double step = slope * sleeve.length().millimetres() / SLICES;
      double outer = sleeve.outer().millimetres();
      edge = Math.min(edge, outer);
      widths[i] = Math.min(edge + step / 2, outer);
      edge = Math.min(edge + step, outer);
    }
    return widths;
  }
}
