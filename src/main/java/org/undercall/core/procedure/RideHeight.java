package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * What a called wheel-centre-to-arch height is compared with.
 *
 * @param plusMinus how far, in millimetres, it may lie from the one noted before the work
 * @param arm the arm whose bush the height twists, if it is stated
 * @param sides how far, in millimetres, left and right may lie apart before the work, if stated
 */
public record RideHeight(BigDecimal plusMinus, Optional<Arm> arm, Optional<BigDecimal> sides) {

  /** Of which nothing is stated about left and right. */
  public RideHeight(BigDecimal plusMinus, Optional<Arm> arm) {
    this(plusMinus, arm, Optional.empty());
  }

  /**
   * A control arm, by the heights of its outer joint above its inner pivot, in millimetres,
   * negative below it.
   *
   * @param length from the inner pivot to the outer joint
   * @param ride at ride height
   * @param droop at full droop, not above {@code ride}
   * @param bump at full bump, not below {@code ride}
   * @param presetLimit the twist in degrees that a bush may keep at ride height: a setting of the
   *     workshop, since no limit is published
   * @param ratio how far the outer joint moves for a millimetre at the arch: 1 if it moves as the
   *     wheel does, less than 1 if it lies nearer to the pivot than the wheel
   */
  public record Arm(
      BigDecimal length,
      BigDecimal ride,
      BigDecimal droop,
      BigDecimal bump,
      BigDecimal presetLimit,
      BigDecimal ratio) {
    /** An arm whose outer joint moves as the wheel does. */
    public Arm(
        BigDecimal length,
        BigDecimal ride,
        BigDecimal droop,
        BigDecimal bump,
        BigDecimal presetLimit) {
      this(length, ride, droop, bump, presetLimit, BigDecimal.ONE);
    }

    public Arm {
      boolean rising = droop.compareTo(ride) <= 0 && ride.compareTo(bump) <= 0;
      boolean reached = droop.abs().max(bump.abs()).compareTo(length) < 0;
      if (!rising || !reached || presetLimit.signum() <= 0 || ratio.signum() <= 0) {
        throw new IllegalArgumentException(
            "droop, ride and bump rise within the arm's length: "
                + droop
                + " "
                + ride
                + " "
                + bump);
      }
    }
  }

  public RideHeight {
    Objects.requireNonNull(arm, "arm");
    if (plusMinus.signum() <= 0) {
      throw new IllegalArgumentException("a tolerance is more than zero: " + plusMinus);
    }
  }
}
