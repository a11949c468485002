package org.undercall.core.review;

import java.util.List;
import org.undercall.core.term.DueTime;

/** What may be said of the work of a session as a whole, the worst first. */
public enum Verdict {
  /** Something is open, not settled, not borne out or lost. */
  NOT_COMPLETE,
  /** Every step is closed; something handed over comes before the car is driven. */
  NOT_TO_BE_DRIVEN,
  /** Every step is closed; for something handed over the program cannot tell when it is due. */
  ASK_BEFORE_DRIVING,
  /** Every step is closed; something handed over is due later. */
  COMPLETE_WITH_LATER,
  /** Every step is closed, and nothing was handed over. */
  COMPLETE;

  /** Of a session whose every step is closed. */
  static Verdict ofClosed(List<Due> due) {
    if (due.isEmpty()) {
      return COMPLETE;
    }
    if (due.stream().anyMatch(d -> d.time().when() == DueTime.When.BEFORE_DRIVING)) {
      return NOT_TO_BE_DRIVEN;
    }
    return due.stream().anyMatch(d -> d.time().when() == DueTime.When.OTHER)
        ? ASK_BEFORE_DRIVING
        : COMPLETE_WITH_LATER;
  }
}
