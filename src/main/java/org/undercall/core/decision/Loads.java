package org.undercall.core.decision;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.Side;

/**
 * How the suspension is loaded, as far as it was confirmed.
 *
 * @param confirmed the condition read back for a side since the last thing that could change it,
 *     with what it rests on
 * @param rideHeights the wheel-centre-to-arch height noted before the work
 * @param worked the side, left or right, that was worked on last
 */
public record Loads(
    Map<Side, Confirmed> confirmed, Map<Side, Measure> rideHeights, Optional<Side> worked) {

  /** A confirmed condition and what shows it. */
  public record Confirmed(LoadCondition condition, LoadProof proof) {}

  static final Loads NONE = new Loads(Map.of(), Map.of(), Optional.empty());

  /** Whether a side is confirmed to be loaded as needed. */
  public boolean holds(Side side, LoadCondition needed) {
    Confirmed known = confirmed.get(side);
    return needed == LoadCondition.ANY || (known != null && known.condition() == needed);
  }

  Loads withConfirmed(Side side, LoadCondition condition, LoadProof proof) {
    return new Loads(put(confirmed, side, new Confirmed(condition, proof)), rideHeights, worked);
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
