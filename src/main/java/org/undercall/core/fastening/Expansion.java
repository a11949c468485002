package org.undercall.core.fastening;

/**
 * How much a material grows when it warms.
 *
 * <p>The constants are from memory of common tables of materials; alloys differ by about 5 %.
 *
 * @param perKelvin coefficient of thermal expansion α, more than zero, in 1/K
 */
public record Expansion(double perKelvin) {
  public static final Expansion STEEL = new Expansion(11.5e-6);
  public static final Expansion AUSTENITIC_STEEL = new Expansion(16.5e-6);
  public static final Expansion GREY_IRON = new Expansion(10.5e-6);
  public static final Expansion ALUMINIUM = new Expansion(23.5e-6);
  public static final Expansion MAGNESIUM = new Expansion(26e-6);

  public Expansion {
    Require.positive("thermal expansion", perKelvin, "1/K");
  }

  /**
   * The change of preload when a joint warms evenly: ΔF = (αP - αS) ΔT lK/(δS + δP) (VDI 2230 Part
   * 1, section 5.4.2.3, without the change of the moduli with temperature). Positive when the parts
   * grow more than the bolt. Cannot see: bolt and parts at different temperatures, creep, yielding
   * of the bolt, which ends a gain.
   *
   * @param joint the springs
   * @param clamped the clamped length lK
   * @param parts the expansion of the parts, all of one material
   * @param kelvin the warming ΔT, negative for cooling
   */
  public ForceChange change(JointStiffness joint, Length clamped, Expansion parts, double kelvin) {
    Require.finite("change of temperature", kelvin, "K");
    double apart = (parts.perKelvin - perKelvin) * kelvin * clamped.millimetres();
    return new ForceChange(apart / joint.bolt().plus(joint.parts()).millimetresPerNewton());
  }
}
