package org.undercall.core.decision;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
import org.undercall.core.term.Side;

/**
 * How the suspension is loaded, as far as it was confirmed.
 *
 * @param confirmed the condition read back for a side since the last thing that could change it
 * @param rideHeights the wheel-centre-to-arch height noted before the work
 * @param worked the side, left or right, that was worked on last
 */
public record Loads(
    Map<Side, LoadCondition> confirmed, Map<Side, Measure> rideHeights, Optional<Side> worked) {

  static final Loads NONE = new Loads(Map.of(), Map.of(), Optional.empty());

  boolean holds(Side side, LoadCondition needed) {
    return needed == LoadCondition.ANY || confirmed.get(side) == needed;
  }

  Loads withConfirmed(Side side, LoadCondition condition) {
    return new Loads(put(confirmed, side, condition), rideHeights, worked);
  }

  Loads withNothingConfirmed() {
    return new Loads(Map.of(), rideHeights, worked);
  }

  Loads withRideHeight(Side side, Optional<Measure> height) {
    Map<Side, Measure> heights = new EnumMap<>(Side.class);
    heights.putAll(rideHeights);
    height.ifPresentOrElse(h -> heights.put(side, h), () -> heights.remove(side));
    return new Loads(confirmed, Map.copyOf(heights), worked);
  }

  Loads workedOn(Side side) {
    return side == Side.CAR ? this : new Loads(confirmed, rideHeights, Optional.of(side));
  }

  /** Whether working on this side means that the other side is started. */
  boolean isOtherSide(Side side) {
    return side != Side.CAR && worked.isPresent() && worked.get() != side;
  }

  private static <V> Map<Side, V> put(Map<Side, V> map, Side side, V value) {
    Map<Side, V> copy = new EnumMap<>(Side.class);
    copy.putAll(map);
    copy.put(side, value);
    return Map.copyOf(copy);
  }
}
