package org.undercall.core.fastening;

import java.util.function.Function;
import org.undercall.core.term.Refused;

/**
 * A range of a quantity from its lowest to its highest value.
 *
 * @param low the lowest value
 * @param high the highest value, not less than the lowest
 * @param <T> the quantity
 */
public record Range<T extends Comparable<T>>(T low, T high) {
  public Range {
    if (low.compareTo(high) > 0) {
      throw new Refused("FAS-005", "range", low + " to " + high, "a range that goes up");
    }
  }

  /** The range between two values, given in either order. */
  public static <T extends Comparable<T>> Range<T> between(T one, T other) {
    return one.compareTo(other) <= 0 ? new Range<>(one, other) : new Range<>(other, one);
  }

  /** Whether the value lies in the range, ends included. */
  public boolean contains(T value) {
    return low.compareTo(value) <= 0 && value.compareTo(high) <= 0;
  }

  /** The range of a quantity that follows from this one by a rising or falling function. */
  public <R extends Comparable<R>> Range<R> map(Function<T, R> monotone) {
    return between(monotone.apply(low), monotone.apply(high));
  }

  @Override
  public String toString() {
    return low + " to " + high;
  }
}
