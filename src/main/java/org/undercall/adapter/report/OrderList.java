package org.undercall.adapter.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Finding;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Trouble;

/** What is to be ordered: parts that were named, were missing or wrong, or are waited for. */
final class OrderList {
  private OrderList() {}

  /** A line for each part, with where it is from. */
  static List<String> of(Review review) {
    List<String> lines = new ArrayList<>();
    for (var note : review.notes(Optional.of(Finding.PART_TO_ORDER))) {
      lines.add(EventWords.note(note.event()));
    }
    for (var timed : review.remarks().troubles()) {
      if (timed.event() instanceof SessionEvent.TroubleNoted e && isOfThePart(e.trouble())) {
        lines.add(EventWords.trouble(e));
      }
    }
    for (StepReview step : review.open()) {
      if (step.work().putOff().contains(PutOffReason.WAITING_FOR_PARTS)) {
        lines.add(
            ReviewWords.step(step.place().ref())
                + ": waiting for parts, "
                + step.place().step().head().title());
      }
    }
    return List.copyOf(lines);
  }

  private static boolean isOfThePart(Trouble trouble) {
    return switch (trouble) {
      case PART_MISSING, WRONG_HARDWARE, MARKINGS_DIFFER -> true;
      default -> false;
    };
  }
}
