package org.undercall.core.fastening;

/**
 * The modulus of elasticity E of a material.
 *
 * @param modulus more than zero
 */
public record Elasticity(Stress modulus) {
  /** Steel, 205 000 MPa (VDI 2230 Part 1). */
  public static final Elasticity STEEL = ofMegapascals(205_000);

  /** Aluminium alloys, 70 000 MPa (VDI 2230 Part 1, from memory; 69 000 to 75 000 by alloy). */
  public static final Elasticity ALUMINIUM = ofMegapascals(70_000);

  /** Grey cast iron EN-GJL 250, 110 000 MPa (VDI 2230 Part 1, from memory). */
  public static final Elasticity GREY_IRON = ofMegapascals(110_000);

  public Elasticity {
    Require.positive("modulus of elasticity", modulus.megapascals(), "MPa");
  }

  /** A modulus in megapascals. */
  public static Elasticity ofMegapascals(double modulus) {
    return new Elasticity(new Stress(modulus));
  }

  /** The compliance of a bar: l/(E A). */
  public Compliance bar(Length length, Area area) {
    double stiffness = modulus.megapascals() * area.squareMillimetres();
    return new Compliance(length.millimetres() / stiffness);
  }
}
