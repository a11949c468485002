package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.util.Objects;
import org.undercall.core.term.ReuseBy;

/**
 * Until when a part may be used again in place of a new one.
 *
 * @param by what is measured or counted
 * @param most the greatest length in millimetres, or how often it may be tightened in all, more
 *     than zero
 */
public record Reuse(ReuseBy by, BigDecimal most) {
  /**
   * The least length that is believed, as a share of the limit. A bolt is at its limit after being
   * stretched by a few per cent (common practice, no source), so that less is another bolt or was
   * heard wrong.
   */
  private static final BigDecimal SHORTEST = new BigDecimal("0.9");

  public Reuse {
    Objects.requireNonNull(by, "by");
    if (most.signum() <= 0) {
      throw new IllegalArgumentException("a limit is more than zero: " + most);
    }
  }

  /** The greatest value that still lets it be used: of uses, those before this one. */
  public BigDecimal mostBefore() {
    return by == ReuseBy.LENGTH ? most : most.subtract(BigDecimal.ONE);
  }

  /** Whether it may be used again with a length, or after so many uses. */
  public boolean permits(BigDecimal value) {
    return value.compareTo(mostBefore()) <= 0 && isCredible(value);
  }

  /** Whether it can be the length of the part, or a number of uses of a part that is not new. */
  public boolean isCredible(BigDecimal value) {
    return by == ReuseBy.LENGTH
        ? value.compareTo(most.multiply(SHORTEST)) >= 0
        : value.signum() > 0 && value.stripTrailingZeros().scale() <= 0;
  }

  /** Whether it makes up for a reason to renew the part; an absolute reason nothing does. */
  public boolean settles(Renewal reason) {
    return switch (reason) {
      case YIELDED -> by == ReuseBy.LENGTH;
      case SELF_LOCKING -> by == ReuseBy.USES;
      case MICRO_ENCAPSULATED, MAKER -> false;
    };
  }
}
