package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.PutOffReason;

/** How one step stands, and how long it took so far. Lengths of time are in milliseconds. */
final class StepCourse {
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

  /** Reads an event that is about the step. */
  void read(SessionEvent event, Reading now) {
    if (event instanceof SessionEvent.StepClosed) {
      state = StepReview.State.CLOSED;
      end = Optional.of(now);
    } else if (event instanceof SessionEvent.StepPutOff e) {
      putOff(e.reason());
    } else if (event instanceof SessionEvent.FastenerSnug) {
      state = StepReview.State.STARTED_NOT_TIGHTENED;
      aside = true;
    } else if (event instanceof SessionEvent.StepReopened
        || event instanceof SessionEvent.ReopenedTight
        || event instanceof SessionEvent.ClosingLapsed
        || event instanceof SessionEvent.ClosingTakenBack
        || (event instanceof SessionEvent.StageTakenBack && isClosed())
        || (event instanceof SessionEvent.WitnessAsked && isClosed())) {
      state = StepReview.State.OPEN;
      end = Optional.empty();
      reopened.add(now.at());
    } else if (event instanceof SessionEvent.TimerEnded
        || event instanceof SessionEvent.TimerCancelled) {
      timer = false;
    } else if (event instanceof SessionEvent.SayingTakenBack e) {
      boolean aside =
          e.what().equals(EventKind.FASTENER_SNUG.name())
              || e.what().equals(EventKind.STEP_PUT_OFF.name());
      state = aside ? StepReview.State.OPEN : state;
    } else if (!(event instanceof SessionEvent.StagesVoided
        || event instanceof SessionEvent.TighteningInterrupted)) {
      timer |= event instanceof SessionEvent.TimerStarted;
      touched(now);
    }
  }

  private void putOff(PutOffReason reason) {
    boolean snug = state == StepReview.State.STARTED_NOT_TIGHTENED;
    state = snug ? state : StepReview.State.PUT_OFF;
    putOff.add(reason);
    aside = true;
  }

  /** Something was done on the step. */
  void touched(Reading now) {
    start = start.or(() -> Optional.of(now));
    aside = false;
  }

  void passed(long millis, boolean atHand) {
    if (!isClosed()) {
      asideFor += aside ? millis : 0;
      working += atHand && !aside ? millis : 0;
    }
    timedFor += timer ? millis : 0;
  }

  boolean isWorkedOn() {
    return !isClosed() && !aside;
  }

  boolean isClosed() {
    return state == StepReview.State.CLOSED;
  }

  StepReview.State state() {
    return state;
  }

  List<OffsetDateTime> reopened() {
    return reopened;
  }

  List<PutOffReason> putOff() {
    return putOff;
  }

  /** Where in the log it was first done something on; 0 if nothing was. */
  long begun() {
    return start.map(Reading::place).orElse(0L);
  }

  StepReview.Times times(Reading last) {
    return new StepReview.Times(
        start.map(Reading::at),
        end.map(Reading::at),
        start.map(s -> s.to(end.orElse(last))).orElse(Span.NONE),
        Duration.ofMillis(working),
        Duration.ofMillis(asideFor),
        Duration.ofMillis(timedFor));
  }
}
