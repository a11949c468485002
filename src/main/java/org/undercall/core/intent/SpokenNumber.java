package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A number as it was said.
 *
 * @param value what it is worth, trailing zeros removed
 * @param style how it was said
 */
public record SpokenNumber(BigDecimal value, Style style) {

  /** How a number was said. */
  public enum Style {
    /** Every digit on its own, as in "one seven five". */
    DIGIT_BY_DIGIT,
    /** Digit by digit or otherwise, with a long pause in it: it may not be one number. */
    WITH_PAUSE,
    /** Any other way, as in "one seventy five" or "a hundred and ten". */
    WORDS
  }

  public SpokenNumber {
    Objects.requireNonNull(style, "style");
    BigDecimal stripped = value.stripTrailingZeros();
    value = stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
