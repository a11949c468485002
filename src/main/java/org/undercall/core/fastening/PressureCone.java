package org.undercall.core.fastening;

import java.util.Objects;

/**
 * Clamped plates wider than the seat: the pressure spreads in a cone on each side.
 *
 * <p>VDI 2230 Part 1, section 5.1.2.1, concentric: the substitute cone of half angle φ and, where
 * the cone would be wider than the part, a sleeve between. Through bolt (w = 1): tan φ = 0.362 +
 * 0.032 ln(βL/2) + 0.153 ln y; tapped hole (w = 2): tan φ = 0.348 + 0.013 ln βL + 0.193 ln y; βL =
 * lK/dw, y = DA/dw.
 *
 * @param seat the seat: its bearing diameter dw and the hole dh
 * @param clamped the clamped length lK
 * @param outer the outer diameter DA of the clamped part
 * @param kind through bolt or tapped hole
 */
public record PressureCone(Seat seat, Length clamped, Length outer, Kind kind)
    implements ClampedParts {

  /** How the bolt is held at its far end. */
  public enum Kind {
    THROUGH_BOLT,
    TAPPED_HOLE
  }

  public PressureCone {
    Objects.requireNonNull(clamped, "clamped");
    Objects.requireNonNull(kind, "kind");
    Require.larger("outer diameter of the clamped part", seat.hole(), outer);
  }

  /** The tangent of the half angle of the cone. */
  public double coneTangent() {
    return tangent(kind, seat.bearing(), clamped, outer);
  }

  static double tangent(Kind kind, Length bearing, Length clamped, Length outer) {
    double slenderness = clamped.millimetres() / bearing.millimetres();
    double width = Math.log(outer.millimetres() / bearing.millimetres());
    return switch (kind) {
      case THROUGH_BOLT -> 0.362 + 0.032 * Math.log(slenderness / 2) + 0.153 * width;
      case TAPPED_HOLE -> 0.348 + 0.013 * Math.log(slenderness) + 0.193 * width;
    };
  }

  /** The diameter DA,Gr from which on the cone is not cut by the part's edge. */
  public Length coneLimit() {
    double spread = w() * clamped.millimetres() * coneTangent();
    return new Length(seat.bearing().millimetres() + spread);
  }

  @Override
  public Compliance compliance(Elasticity material) {
    double modulus = material.modulus().megapascals();
    if (outer.compareTo(seat.bearing()) <= 0) {
      return sleeve(clamped.millimetres(), modulus);
    }
    double edge = Math.min(outer.millimetres(), coneLimit().millimetres());
    Compliance cone = cone(edge, modulus);
    double reached = (edge - seat.bearing().millimetres()) / coneTangent() / w();
    double left = clamped.millimetres() - reached;
    boolean cut = outer.compareTo(coneLimit()) < 0;
    return cut ? cone.plus(sleeve(left, modulus)) : cone;
  }

  private Compliance cone(double edge, double modulus) {
    double dw = seat.bearing().millimetres();
    double dh = seat.hole().millimetres();
    double ratio = (dw + dh) * (edge - dh) / ((dw - dh) * (edge + dh));
    return new Compliance(2 * Math.log(ratio) / (w() * modulus * Math.PI * dh * coneTangent()));
  }

  private Compliance sleeve(double length, double modulus) {
    double whole = Area.ofCircle(outer).squareMillimetres();
    double ring = whole - Area.ofCircle(seat.hole()).squareMillimetres();
    return new Compliance(length / (modulus * ring));
  }

  private int w() {
    return kind == Kind.THROUGH_BOLT ? 1 : 2;
  }
}
