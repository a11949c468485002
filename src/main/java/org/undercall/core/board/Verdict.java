package org.undercall.core.board;

import java.util.List;
import java.util.Set;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;

/** What became of the last thing that was heard. */
public enum Verdict {
  /** It was recorded as said. */
  COUNTED,
  /** It was read back and counts only after an answer. */
  WAITS,
  /** It was a question and was answered. */
  ANSWERED,
  /** It was refused, and the log says why. */
  REFUSED,
  /** It was no phrase of this phase, and nothing came of it. */
  NO_PHRASE;

  private static final Set<EventKind> REFUSALS =
      Set.of(
          EventKind.VALUE_REFUSED,
          EventKind.CLOSE_REFUSED,
          EventKind.MARKING_REFUSED,
          EventKind.LOAD_REFUSED,
          EventKind.NOT_NOW);
  private static final Set<EventKind> WAITING =
      Set.of(
          EventKind.MEASURE_CALLED,
          EventKind.MARKING_CALLED,
          EventKind.LOAD_CALLED,
          EventKind.TURN_CALLED,
          EventKind.POSITIONS_CALLED,
          EventKind.READING_CALLED,
          EventKind.TROUBLE_CALLED,
          EventKind.OUT_OF_ORDER_CALLED,
          EventKind.END_CALLED);

  /** What became of a phrase, by the events that were recorded for it. */
  public static Verdict of(List<SessionEvent> events) {
    List<EventKind> kinds = events.stream().map(EventKind::of).toList();
    if (kinds.contains(EventKind.NOT_UNDERSTOOD)) {
      return NO_PHRASE;
    }
    if (kinds.stream().anyMatch(REFUSALS::contains)) {
      return REFUSED;
    }
    if (kinds.stream().anyMatch(WAITING::contains)) {
      return WAITS;
    }
    return kinds.contains(EventKind.ASKED) ? ANSWERED : COUNTED;
  }
}
