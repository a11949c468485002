package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;

/**
 * What stood closed of a step before it was opened again, or a stage of it was taken back.
 *
 * @param at when it was opened
 * @param why the event that opened it
 * @param heard the words it was opened with; empty if none were heard
 * @param closed when the step had been closed; empty if only stages of it were
 * @param closedBy the technician who had closed it; empty if nobody was named
 * @param tightened what was recorded about a fastener then
 * @param answers answers to the check question then
 * @param measured values measured then
 */
public record Earlier(
    OffsetDateTime at,
    SessionEvent why,
    Optional<String> heard,
    Optional<OffsetDateTime> closed,
    Optional<String> closedBy,
    StepReview.Tightened tightened,
    List<Review.Timed<SessionEvent.CheckAnswered>> answers,
    List<Review.Timed<SessionEvent.Measured>> measured) {
  public Earlier {
    answers = List.copyOf(answers);
    measured = List.copyOf(measured);
  }

  /** Whether any stage or position was closed then. */
  public boolean tightening() {
    return tightened.stages().stream()
        .anyMatch(stage -> stage.closed().isPresent() || !stage.positions().isEmpty());
  }
}
