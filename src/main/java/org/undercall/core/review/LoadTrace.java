package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;

/** Which load conditions were confirmed, and are not cancelled. */
final class LoadTrace {
  private final Map<Side, Review.Timed<SessionEvent.LoadConfirmed>> inForce =
      new EnumMap<>(Side.class);
  private final List<Review.Timed<SessionEvent>> notes = new ArrayList<>();

  void read(SessionEvent event, OffsetDateTime at) {
    if (event instanceof SessionEvent.LoadConfirmed e) {
      inForce.put(e.side(), new Review.Timed<>(at, e));
      notes.add(new Review.Timed<>(at, event));
    } else if (event instanceof SessionEvent.LoadChanged) {
      inForce.clear();
      notes.add(new Review.Timed<>(at, event));
    } else if (event instanceof SessionEvent.RideHeightNoted
        || event instanceof SessionEvent.HeightsApart) {
      notes.add(new Review.Timed<>(at, event));
    }
  }

  /** The confirmation in force for a side; empty if there is none or none is needed. */
  Optional<Review.Timed<SessionEvent.LoadConfirmed>> confirmation(
      Side side, LoadCondition condition) {
    return Optional.ofNullable(inForce.get(side)).filter(c -> c.event().condition() == condition);
  }

  List<Review.Timed<SessionEvent>> notes() {
    return notes;
  }
}
