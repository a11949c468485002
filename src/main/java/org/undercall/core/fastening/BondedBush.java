package org.undercall.core.fastening;

import java.util.Objects;

/**
 * A rubber bush bonded to an inner and an outer sleeve, twisted about its axis.
 *
 * <p>Linear elasticity of a thick rubber tube: k = 4 π G L/(1/ri² - 1/ro²), shear strain γ(r) = 2
 * θ/(r² (1/ri² - 1/ro²)). A textbook result; real rubber is softer at large strain and creeps.
 *
 * @param inner radius ri of the inner sleeve
 * @param outer radius ro of the outer sleeve, more than the inner
 * @param length length L of the rubber
 * @param shear shear modulus G of the rubber, more than zero
 */
public record BondedBush(Length inner, Length outer, Length length, Stress shear) {
  public BondedBush {
    Objects.requireNonNull(length, "length");
    Require.larger("outer radius of a bush", inner, outer);
    Require.positive("shear modulus", shear.megapascals(), "MPa");
  }

  /** The torsional stiffness as the moment for one radian. */
  public Moment perRadian() {
    double rate = 4 * Math.PI * shear.megapascals() * length.millimetres() / curvature();
    return new Moment(rate / 1000);
  }

  /** The torsional stiffness as the moment for one degree. */
  public Moment perDegree() {
    return moment(Rotation.degrees(1));
  }

  /** The moment that holds a twist. */
  public Moment moment(Rotation twist) {
    return new Moment(perRadian().newtonMetres() * twist.inRadians());
  }

  /** The shear strain at the inner sleeve, where it is largest, as a number of one. */
  public double strainInside(Rotation twist) {
    return strainAt(inner, twist);
  }

  /** The shear strain at the outer sleeve, as a number of one. */
  public double strainOutside(Rotation twist) {
    return strainAt(outer, twist);
  }

  private double strainAt(Length radius, Rotation twist) {
    double r = radius.millimetres();
    return 2 * twist.size().inRadians() / (r * r * curvature());
  }

  private double curvature() {
    double ri = inner.millimetres();
    double ro = outer.millimetres();
    return 1 / (ri * ri) - 1 / (ro * ro);
  }
}
