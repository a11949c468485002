package org.undercall.core.fastening;

/**
 * How the torsional stress of a bolt is taken: which section modulus, Wp = c π/16 d0³.
 *
 * <p>VDI 2230 Part 1 of 2003 and later reckons with full plastic torsion; the elastic modulus is
 * that of earlier editions and finds the first yield at the surface.
 */
public enum Torsion {
  /** Wp = π/12 d0³. */
  PLASTIC(12),
  /** Wp = π/16 d0³. */
  ELASTIC(16);

  private final double divisor;

  Torsion(double divisor) {
    this.divisor = divisor;
  }

  /** The section modulus Wp in mm³. */
  double modulus(ThreadSize thread) {
    return Math.PI / divisor * Math.pow(thread.stressDiameter().millimetres(), 3);
  }

  /** The factor on d2/d0 in the assembly preload: 3/2 for plastic, 2 for elastic torsion. */
  double factor() {
    return divisor / 8;
  }
}
