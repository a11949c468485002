package org.undercall.core.fastening;

import java.util.Locale;
import org.undercall.core.term.Refused;

/**
 * How much surfaces flatten after tightening, and the preload this costs: FZ = fZ/(δS + δP).
 *
 * <p>VDI 2230 Part 1, table 5, from memory: micrometres for the thread, for each bearing surface of
 * head or nut, and for each inner interface, by roughness Rz and by load. For solid metal parts
 * within their pressure limits; soft coatings, paint and gaskets flatten by much more. A short
 * joint is stiff, so it loses most.
 *
 * @param micrometres fZ, the whole of it
 */
public record Embedding(double micrometres) {
  public Embedding {
    Require.notNegative("embedding", micrometres, "µm");
  }

  private static final double THREAD = 3;

  /** The roughness of the surfaces. */
  public enum Roughness {
    /** Rz below 10 µm. */
    FINE(2.5, 1.5, 3, 2),
    /** Rz from 10 to below 40 µm. */
    MEDIUM(3, 2, 4.5, 2.5),
    /** Rz from 40 to below 160 µm. */
    ROUGH(4, 3, 6.5, 3.5);

    private final double axialBearing;
    private final double axialInner;
    private final double shearBearing;
    private final double shearInner;

    Roughness(double axialBearing, double axialInner, double shearBearing, double shearInner) {
      this.axialBearing = axialBearing;
      this.axialInner = axialInner;
      this.shearBearing = shearBearing;
      this.shearInner = shearInner;
    }
  }

  /** How the joint is loaded. */
  public enum Load {
    AXIAL,
    SHEAR
  }

  /**
   * The embedding of a joint.
   *
   * @param bearings bearing surfaces: two for a bolt with a nut, one in a tapped hole
   * @param interfaces inner interfaces between the clamped parts, zero or more
   */
  public static Embedding of(Roughness roughness, Load load, int bearings, int interfaces) {
    if (bearings < 1 || bearings > 2) {
      throw new Refused("FAS-036", "bearing surfaces", bearings + "", "1 or 2");
    }
    if (interfaces < 0) {
      throw new Refused("FAS-037", "inner interfaces", interfaces + "", "0 or more");
    }
    boolean axial = load == Load.AXIAL;
    double bearing = axial ? roughness.axialBearing : roughness.shearBearing;
    double inner = axial ? roughness.axialInner : roughness.shearInner;
    return new Embedding(THREAD + bearings * bearing + interfaces * inner);
  }

  /** The preload it costs. */
  public Force loss(JointStiffness joint) {
    double compliance = joint.bolt().plus(joint.parts()).millimetresPerNewton();
    return new Force(micrometres / 1000 / compliance);
  }

  /** The preload that is left of one; zero if none. */
  public Force left(Force preload, JointStiffness joint) {
    return new Force(Math.max(0, preload.newtons() - loss(joint).newtons()));
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f µm", micrometres);
  }
}
