package org.undercall.core.fastening;

import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.Refused;

/**
 * A bolt thread in a nut or a tapped hole: whether bolt or thread gives way first.
 *
 * <p>E. M. Alexander's method as in VDI 2230 Part 1, section 5.5.5, from memory. Shear areas on the
 * basic sizes: of the inner thread ASM = π d m/P (P/2 + (d - D2) tan 30°), of the bolt ASS = π D1
 * m/P (P/2 + (d2 - D1) tan 30°), with m the length less 0.8 P for chamfers. Each strips at τB AS C1
 * C, C1 for the widening of a nut (s/d from 1.4 to 1.9; 1 in a block), C2 for the bolt's and C3 for
 * the inner thread's bending by the ratio of strengths RS. Threads at the loose end of their
 * tolerance have up to about a tenth less area; least strengths on one side and basic sizes on the
 * other make up in part. Cannot see: damaged, worn or repaired threads, inserts.
 *
 * @param thread the thread
 * @param length the length of engagement, more than 0.8 P
 * @param bolt the tensile strength and shear ratio of the bolt
 * @param inner those of the nut or hole
 * @param acrossFlats width s of a nut over its flats; empty for a tapped hole
 */
public record Engagement(
    ThreadSize thread, Length length, Strength bolt, Strength inner, Optional<Length> acrossFlats) {
  private static final double TAN_30 = Math.tan(Math.toRadians(30));
  private static final double CHAMFER = 0.8;
  private static final double LEAST_WIDTH = 1.4;
  private static final double FULL_WIDTH = 1.9;

  /**
   * The strength of a threaded material.
   *
   * @param tensile the tensile strength Rm
   * @param shearRatio shear over tensile strength τB/Rm: about 0.6 to 0.65 for steel, 0.7 for
   *     aluminium alloys (VDI 2230 Part 1, table 6, from memory)
   */
  public record Strength(Stress tensile, double shearRatio) {
    public Strength {
      Require.positive("tensile strength", tensile.megapascals(), "MPa");
      Require.positive("shear ratio", shearRatio, "(no unit)");
    }

    /** The least strength of a bolt class; the ratio is 0.65 for 8.8, less above, 0.7 below. */
    public static Strength of(PropertyClass bolt, ThreadSize thread) {
      double ratio =
          switch (bolt) {
            case C8_8, C9_8 -> 0.65;
            case C10_9 -> 0.62;
            case C12_9 -> 0.60;
            default -> 0.70;
          };
      return new Strength(bolt.tensileStrength(thread), ratio);
    }

    /** Steel of a tensile strength in megapascals. */
    public static Strength steel(double tensile) {
      return new Strength(new Stress(tensile), 0.6);
    }

    /** An aluminium alloy of a tensile strength in megapascals. */
    public static Strength aluminium(double tensile) {
      return new Strength(new Stress(tensile), 0.7);
    }

    double shear() {
      return tensile.megapascals() * shearRatio;
    }
  }

  /** What gives way first. */
  public enum First {
    /** As it should be: it is noticed. */
    BOLT_BREAKS,
    BOLT_THREAD_STRIPS,
    INNER_THREAD_STRIPS
  }

  public Engagement {
    Objects.requireNonNull(bolt, "bolt");
    Objects.requireNonNull(inner, "inner");
    Require.larger("length of engagement", thread.pitch().times(CHAMFER), length);
    acrossFlats.ifPresent(
        s -> {
          if (s.millimetres() < LEAST_WIDTH * thread.diameter().millimetres()) {
            throw new Refused("FAS-038", "width across flats", s + "", "1.4 diameters or more");
          }
        });
  }

  /** A bolt in a tapped hole. */
  public static Engagement tapped(Bolt bolt, Length length, Strength hole) {
    Strength strength = Strength.of(bolt.strength(), bolt.thread());
    return new Engagement(bolt.thread(), length, strength, hole, Optional.empty());
  }

  /** The shear area of the nut or hole. */
  public Area innerArea() {
    double d = thread.diameter().millimetres();
    return area(d, d - thread.pitchDiameter().millimetres());
  }

  /** The shear area of the bolt. */
  public Area boltArea() {
    double d1 = thread.minorDiameter().millimetres();
    return area(d1, thread.pitchDiameter().millimetres() - d1);
  }

  private Area area(double diameter, double overlap) {
    double pitch = thread.pitch().millimetres();
    double turns = length.millimetres() / pitch - CHAMFER;
    return new Area(Math.PI * diameter * turns * (pitch / 2 + overlap * TAN_30));
  }

  /** The force at which the inner thread strips. */
  public Force innerStrips() {
    double area = innerArea().squareMillimetres();
    return new Force(inner.shear() * area * widening() * innerBending());
  }

  /** The force at which the bolt thread strips. */
  public Force boltStrips() {
    double area = boltArea().squareMillimetres();
    return new Force(bolt.shear() * area * widening() * boltBending());
  }

  /** The force at which the bolt breaks, without torsion. */
  public Force boltBreaks() {
    return bolt.tensile().on(thread.stressArea());
  }

  /** The force at which the first of the three gives way. */
  public Force holds() {
    return Force.least(boltBreaks(), Force.least(boltStrips(), innerStrips()));
  }

  /** What gives way first. */
  public First first() {
    if (holds().equals(boltBreaks())) {
      return First.BOLT_BREAKS;
    }
    return boltStrips().compareTo(innerStrips()) < 0
        ? First.BOLT_THREAD_STRIPS
        : First.INNER_THREAD_STRIPS;
  }

  /** The length from which on the bolt breaks before a thread strips. */
  public Length needed() {
    double turns = length.millimetres() / thread.pitch().millimetres() - CHAMFER;
    double strips = Math.min(innerStrips().newtons(), boltStrips().newtons());
    double wanted = turns * boltBreaks().newtons() / strips;
    return thread.pitch().times(wanted + CHAMFER);
  }

  /** RS: the shear strength of the inner thread over that of the bolt's. */
  public double strengthRatio() {
    return inner.shear()
        * innerArea().squareMillimetres()
        / (bolt.shear() * boltArea().squareMillimetres());
  }

  /** C1. */
  double widening() {
    return acrossFlats
        .map(s -> s.millimetres() / thread.diameter().millimetres())
        .map(w -> w >= FULL_WIDTH ? 1 : 3.8 * w - w * w - 2.61)
        .orElse(1.0);
  }

  /** C2. */
  double boltBending() {
    double r = Math.max(1, Math.min(2.2, strengthRatio()));
    return 5.594 - 13.682 * r + 14.107 * r * r - 6.057 * r * r * r + 0.9353 * r * r * r * r;
  }

  /** C3. */
  double innerBending() {
    double r = Math.max(0.4, Math.min(1, strengthRatio()));
    return 0.728 + 1.769 * r - 2.896 * r * r + 1.296 * r * r * r;
  }
}
