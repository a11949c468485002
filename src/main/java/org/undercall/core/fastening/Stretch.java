package org.undercall.core.fastening;

import java.util.Locale;
import java.util.Optional;
import org.undercall.core.term.Torque;

/**
 * What an angle stage does to a bolt, also beyond yield, with one friction.
 *
 * <p>The nut's advance P θ/360 from the torque stage on is shared out: up to yield bolt and parts
 * take it as springs; from the yield preload on, all of it is plastic stretch of the bolt. That is
 * the most it can be: hardening leaves part of it to the springs. The plastic stretch is taken to
 * lie in the free thread alone, the least section; the shank, with a quarter to a third more area,
 * stays elastic up to about the tensile strength. So the strain is the stretch over the free
 * thread.
 *
 * <p>It is held against the least elongation after fracture A of ISO 898-1, a machined test piece
 * with a gauge of five diameters. About half of A comes before the bolt necks (uniform strain);
 * common practice, no source. Cannot see: the true strength, how a nut shares the last turns (a
 * free thread shorter than one diameter makes the strain unreliable, and too high), earlier
 * stretching, strain in the engaged thread.
 *
 * @param elasticBolt elastic stretch of the bolt, from no load on, in mm
 * @param elasticParts elastic shortening of the parts, from no load on, in mm
 * @param plastic plastic stretch, in mm; zero below yield
 * @param strain plastic strain of the free thread, as a share of one
 * @param meanStrain plastic stretch over shank and free thread, as a share of one
 * @param leastElongation the A it is held against, as a share of one
 * @param verdict how far it goes
 */
public record Stretch(
    double elasticBolt,
    double elasticParts,
    double plastic,
    double strain,
    double meanStrain,
    double leastElongation,
    Verdict verdict) {
  /** The share of the least elongation that comes before necking. */
  static final double UNIFORM = 0.5;

  /** The share of the uniform strain up to which stretching is taken as usual. */
  private static final double USUAL = 0.5;

  /** Plastic strain up to which a bolt counts as at yield: that of Rp0.2. */
  private static final double AT_YIELD = 0.002;

  /** How far a bolt is stretched. The bounds above yield are a choice of this program. */
  public enum Verdict {
    ELASTIC("below yield"),
    /** Plastic strain up to 0.2 %. */
    AT_YIELD("at yield"),
    /** Up to half of the uniform strain, a quarter of A. */
    BEYOND_YIELD("beyond yield, as far as is usual for such a method"),
    /** Up to the uniform strain, half of A. */
    NEAR_THE_LIMIT("beyond yield, near the limit"),
    /** More: the bolt may neck and lose preload, or break. */
    TOO_FAR("turned too far: the bolt may neck or break");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** The verdict in words. */
    public String words() {
      return words;
    }
  }

  /**
   * What a turn after a torque stage does, with one friction in thread and seat. A torque stage
   * that goes beyond yield by itself is taken to end at yield; see {@link TorqueAlone} for it.
   */
  public static Stretch of(Joint joint, Torque snug, Rotation turn, Friction friction) {
    Require.positive("angle stage", turn.degrees(), "°");
    return at(joint, snug, turn, friction);
  }

  /**
   * The elastic stretch after the torque stage alone, at most that at yield; nothing plastic is
   * told, since what a torque beyond yield stretches depends on hardening.
   */
  public static Stretch afterTorque(Joint joint, Torque snug, Friction friction) {
    return at(joint, snug, Rotation.degrees(0), friction);
  }

  /** What it does at the end of a range of friction where the bolt is stretched most. */
  public static Stretch most(Joint joint, Torque snug, Rotation turn, Range<Friction> friction) {
    Stretch low = of(joint, snug, turn, friction.low());
    Stretch high = of(joint, snug, turn, friction.high());
    return low.strain >= high.strain && low.verdict.compareTo(high.verdict) >= 0 ? low : high;
  }

  private static Stretch at(Joint joint, Torque snug, Rotation turn, Friction friction) {
    JointStiffness springs = joint.stiffness();
    ThreadSize thread = joint.bolt().thread();
    double yield = Assembly.atYield(joint.bolt()).preload(friction).newtons();
    double torqued = LongForm.of(joint.bolt()).preload(snug, friction, friction).newtons();
    double elastic = torqued + springs.gain(thread, turn).newtons();
    double preload = Math.min(yield, elastic);
    double toYield = AngleWindow.angleTo(joint, snug, friction, Optional.empty()).degrees();
    double beyond = Math.max(0, turn.degrees() - toYield);
    double plastic = thread.pitch().millimetres() * beyond / 360;
    double least = joint.bolt().strength().leastElongation();
    double strain = plastic / joint.body().freeThread().millimetres();
    return new Stretch(
        springs.bolt().millimetresPerNewton() * preload,
        springs.parts().millimetresPerNewton() * preload,
        plastic,
        strain,
        plastic / joint.body().clamped().millimetres(),
        least,
        verdict(strain, elastic >= yield, least));
  }

  /** Whether the strain is beyond the least elongation after fracture, so that it may be broken. */
  public boolean mayBreak() {
    return strain >= leastElongation;
  }

  /** The strain that a verdict ends at. */
  static double limit(Verdict verdict, double leastElongation) {
    return switch (verdict) {
      case ELASTIC -> 0;
      case AT_YIELD -> AT_YIELD;
      case BEYOND_YIELD -> USUAL * UNIFORM * leastElongation;
      case NEAR_THE_LIMIT -> UNIFORM * leastElongation;
      case TOO_FAR -> leastElongation;
    };
  }

  private static Verdict verdict(double strain, boolean atYield, double least) {
    if (!atYield) {
      return Verdict.ELASTIC;
    }
    for (Verdict each : Verdict.values()) {
      if (each != Verdict.ELASTIC && strain <= limit(each, least)) {
        return each;
      }
    }
    return Verdict.TOO_FAR;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%.2f mm, %.1f %% of the free thread, %s",
        plastic,
        strain * 100,
        verdict.words());
  }
}
