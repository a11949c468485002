package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * Whether a torque fits a bolt: how much of the yield preload it uses over a range of friction.
 *
 * <p>The bounds are a choice of this program, not from a standard: a torque that reaches yield even
 * with the highest friction is too high; one that stays under a tenth of the yield preload even
 * with the lowest is too low. A torque stage before an angle stage is low on purpose.
 *
 * @param verdict what it means
 * @param lowest share of the yield preload with the highest friction
 * @param highest share of the yield preload with the lowest friction; more than one means yield
 */
public record Plausibility(Verdict verdict, double lowest, double highest) {
  private static final double TOO_LOW = 0.1;

  /** What a torque means for a bolt. */
  public enum Verdict {
    /** Hardly any preload, whatever the friction. */
    TOO_LOW,
    /** Below yield, whatever the friction. */
    PLAUSIBLE,
    /** Fits, but reaches yield where the friction is at its lowest; worth a remark. */
    PLAUSIBLE_NEAR_YIELD,
    /** Reaches yield, whatever the friction. */
    TOO_HIGH;

    /** Whether the torque fits the bolt. */
    public boolean plausible() {
      return this == PLAUSIBLE || this == PLAUSIBLE_NEAR_YIELD;
    }
  }

  /** Judges a torque alone. */
  public static Plausibility of(Bolt bolt, Torque torque, Range<Friction> friction) {
    double lowest = share(bolt, torque, friction.high());
    double highest = share(bolt, torque, friction.low());
    return new Plausibility(verdict(lowest, highest), lowest, highest);
  }

  private static Verdict verdict(double lowest, double highest) {
    if (lowest >= 1) {
      return Verdict.TOO_HIGH;
    }
    if (highest >= 1) {
      return Verdict.PLAUSIBLE_NEAR_YIELD;
    }
    return highest < TOO_LOW ? Verdict.TOO_LOW : Verdict.PLAUSIBLE;
  }

  private static double share(Bolt bolt, Torque torque, Friction friction) {
    Force preload = LongForm.of(bolt).preload(torque, friction, friction);
    return preload.newtons() / Assembly.atYield(bolt).preload(friction).newtons();
  }
}
