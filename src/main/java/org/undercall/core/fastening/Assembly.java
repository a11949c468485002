package org.undercall.core.fastening;

import java.util.Objects;
import org.undercall.core.term.Torque;

/**
 * The preload at which tension and torsion together use a share of the yield strength, and the
 * torque that reaches it.
 *
 * <p>VDI 2230 Part 1: FM = A0 ν Rp / √(1 + 3 (k d2/d0 (P/(π d2) + 1.155 µG))²), with k = 3/2 for
 * plastic torsion (2003 and later) and 2 for elastic torsion; MA from the long form.
 *
 * @param bolt the bolt
 * @param utilisation the share ν of the yield strength
 * @param torsion how torsion is taken
 */
public record Assembly(Bolt bolt, Utilisation utilisation, Torsion torsion) {
  private static final double FLANK = 1.155;

  public Assembly {
    Objects.requireNonNull(bolt, "bolt");
    Objects.requireNonNull(utilisation, "utilisation");
    Objects.requireNonNull(torsion, "torsion");
  }

  /** Assembly at 90 % of yield, as in table A1 of VDI 2230 Part 1. */
  public static Assembly of(Bolt bolt) {
    return new Assembly(bolt, Utilisation.ASSEMBLY, Torsion.PLASTIC);
  }

  /** Tightening to the onset of yield. */
  public static Assembly atYield(Bolt bolt) {
    return new Assembly(bolt, Utilisation.YIELD, Torsion.PLASTIC);
  }

  /**
   * The preload at which a bolt of least tensile strength breaks while it is turned: the same
   * formula with Rm in place of the yield strength, torsion plastic. An estimate on the low side
   * for most bolts, since they are stronger than the least of their class.
   */
  public static Force breaking(Bolt bolt, Friction thread) {
    Stress tensile = bolt.strength().tensileStrength(bolt.thread());
    return combined(bolt.thread(), tensile.megapascals(), Torsion.PLASTIC, thread);
  }

  /** The preload with one friction in the thread. */
  public Force preload(Friction thread) {
    double yield = bolt.strength().yieldStrength(bolt.thread()).megapascals();
    return combined(bolt.thread(), yield * utilisation.share(), torsion, thread);
  }

  private static Force combined(ThreadSize size, double stress, Torsion torsion, Friction thread) {
    double d2 = size.pitchDiameter().millimetres();
    double lead = size.pitch().millimetres() / (Math.PI * d2);
    double ratio = torsion.factor() * d2 / size.stressDiameter().millimetres();
    double twist = ratio * (lead + FLANK * thread.coefficient());
    return new Stress(stress / Math.sqrt(1 + 3 * twist * twist)).on(size.stressArea());
  }

  /** The torque that reaches that preload, with thread and seat friction. */
  public Torque torque(Friction thread, Friction seat) {
    return LongForm.of(bolt).torque(preload(thread), thread, seat);
  }

  /** The range of preloads over a range of friction. */
  public Range<Force> preload(Range<Friction> friction) {
    return friction.map(this::preload);
  }

  /** The range of torques over a range of friction, the same in thread and seat. */
  public Range<Torque> torque(Range<Friction> friction) {
    return friction.map(f -> torque(f, f));
  }
}
