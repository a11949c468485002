package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.PutOffReason;

/** What has been read so far about one step. Lengths of time are in milliseconds. */
final class StepTrace {
  final Walk.Place place;
  final TighteningTrace tightening;
  final List<Review.Timed<SessionEvent.CheckAnswered>> answers = new ArrayList<>();
  final List<Review.Timed<SessionEvent.Measured>> measured = new ArrayList<>();
  final List<Review.Refusal> refusals = new ArrayList<>();
  private final List<OffsetDateTime> reopened = new ArrayList<>();
  private final List<PutOffReason> putOff = new ArrayList<>();
  private StepReview.State state = StepReview.State.OPEN;
  private Optional<Reading> start = Optional.empty();
  private Optional<Reading> end = Optional.empty();
  private boolean aside;
  private boolean timer;
  private long working;
  private long asideFor;
  private long timedFor;

  /**
   * A point on both clocks of the review.
   *
   * @param at wall clock
   * @param millis time since the first decision
   * @param gaps how often the program was started again until then
   * @param clip the sound of what is read there
   */
  record Reading(OffsetDateTime at, long millis, int gaps, Optional<String> clip) {
    Reading with(Optional<String> sound) {
      return new Reading(at, millis, gaps, sound);
    }

    Span to(Reading later) {
      return new Span(Duration.ofMillis(later.millis - millis), later.gaps > gaps);
    }
  }

  StepTrace(Walk.Place place) {
    this.place = place;
    this.tightening = new TighteningTrace(place.step());
  }

  /** Something was done on the step. */
  void touched(Reading now) {
    start = start.or(() -> Optional.of(now));
    aside = false;
  }

  void passed(long millis, boolean atHand) {
    if (state != StepReview.State.CLOSED) {
      asideFor += aside ? millis : 0;
      working += atHand && !aside ? millis : 0;
    }
    timedFor += timer ? millis : 0;
  }

  boolean isWorkedOn() {
    return state != StepReview.State.CLOSED && !aside;
  }

  void closed(Reading now, Optional<Review.Timed<SessionEvent.LoadConfirmed>> load) {
    state = StepReview.State.CLOSED;
    end = Optional.of(now);
    tightening.closed(load);
  }

  void reopened(Reading now, boolean loosened) {
    state = StepReview.State.OPEN;
    end = Optional.empty();
    reopened.add(now.at());
    if (loosened) {
      tightening.loosened();
      answers.clear();
      measured.clear();
    } else {
      tightening.voided();
    }
  }

  void putOff(PutOffReason reason) {
    boolean snug = state == StepReview.State.STARTED_NOT_TIGHTENED;
    state = snug ? state : StepReview.State.PUT_OFF;
    putOff.add(reason);
    aside = true;
  }

  void snug() {
    state = StepReview.State.STARTED_NOT_TIGHTENED;
    aside = true;
  }

  void timer(boolean running) {
    timer = running;
  }

  boolean isClosed() {
    return state == StepReview.State.CLOSED;
  }

  StepReview review(Reading last) {
    Span whole = start.map(s -> s.to(end.orElse(last))).orElse(Span.NONE);
    StepReview.Times times =
        new StepReview.Times(
            start.map(Reading::at),
            end.map(Reading::at),
            whole,
            Duration.ofMillis(working),
            Duration.ofMillis(asideFor),
            Duration.ofMillis(timedFor));
    return new StepReview(
        place,
        state,
        times,
        new StepReview.Work(answers, measured, refusals, reopened, putOff),
        tightening.tightened(),
        isClosed() ? Doubts.of(this) : java.util.Set.of());
  }
}
