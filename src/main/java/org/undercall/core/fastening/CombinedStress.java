package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * The stress in a bolt from tension and torsion together (VDI 2230 Part 1, section 5.5).
 *
 * @param axial from the preload on the stress area
 * @param shear from the thread torque on the section modulus
 * @param reduced the equal tensile stress: √(σ² + 3τ²)
 */
public record CombinedStress(Stress axial, Stress shear, Stress reduced) {
  private static final double SHARE_LEFT = 0.5;

  /** The stress while tightening. */
  public static CombinedStress tightening(
      ThreadSize thread, Force preload, Torque threadTorque, Torsion torsion) {
    return of(thread.stressArea().under(preload), shear(thread, threadTorque, torsion));
  }

  /**
   * The stress in service: half of the torsion is left after tightening (VDI 2230 Part 1, kτ =
   * 0.5).
   */
  public static CombinedStress inService(
      ThreadSize thread, Stress axial, Torque threadTorque, Torsion torsion) {
    double left = shear(thread, threadTorque, torsion).megapascals() * SHARE_LEFT;
    return of(axial, new Stress(left));
  }

  private static CombinedStress of(Stress axial, Stress shear) {
    double sigma = axial.megapascals();
    double tau = shear.megapascals();
    return new CombinedStress(axial, shear, new Stress(Math.sqrt(sigma * sigma + 3 * tau * tau)));
  }

  private static Stress shear(ThreadSize thread, Torque threadTorque, Torsion torsion) {
    return new Stress(threadTorque.inNewtonMetres() * 1000 / torsion.modulus(thread));
  }
}
