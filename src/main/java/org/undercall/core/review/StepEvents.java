package org.undercall.core.review;

import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.StepRef;

/** What each event says about its step. */
final class StepEvents {
  private StepEvents() {}

  /** The step whose progress the event changes; empty if it changes none. */
  static Optional<StepRef> stepOf(SessionEvent event) {
    if (event instanceof SessionEvent.StepEntered e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StepClosed e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StepReopened e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ClosingTakenBack e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StepPutOff e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.FastenerSnug e) {
      return Optional.of(e.step());
    }
    return stepOfWork(event).or(() -> stepOfStage(event));
  }

  private static Optional<StepRef> stepOfWork(SessionEvent event) {
    if (event instanceof SessionEvent.WorkDone e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.CheckAnswered e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.Measured e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TimerStarted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TimerEnded e) {
      return Optional.of(e.step());
    }
    return event instanceof SessionEvent.TimerCancelled e
        ? Optional.of(e.step())
        : Optional.empty();
  }

  private static Optional<StepRef> stepOfStage(SessionEvent event) {
    if (event instanceof SessionEvent.ValueCalled e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ValueDropped e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StageClosed e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StagesVoided e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.MarkingNoted e) {
      return Optional.of(e.step());
    }
    return event instanceof SessionEvent.NewHardwareFitted e
        ? Optional.of(e.step())
        : Optional.empty();
  }

  static void apply(StepTrace trace, SessionEvent event, StepTrace.Reading now) {
    if (event instanceof SessionEvent.StepPutOff e) {
      trace.putOff(e.reason());
    } else if (event instanceof SessionEvent.FastenerSnug) {
      trace.snug();
    } else if (event instanceof SessionEvent.StepReopened) {
      trace.reopened(now, true);
    } else if (event instanceof SessionEvent.ClosingTakenBack) {
      trace.reopened(now, false);
    } else if (event instanceof SessionEvent.TimerEnded
        || event instanceof SessionEvent.TimerCancelled) {
      trace.timer(false);
    } else if (event instanceof SessionEvent.StagesVoided) {
      trace.tightening.voided();
    } else {
      trace.touched(now);
      work(trace, event, now);
    }
  }

  private static void work(StepTrace trace, SessionEvent event, StepTrace.Reading now) {
    if (event instanceof SessionEvent.CheckAnswered e) {
      trace.answers.add(new Review.Timed<>(now.at(), e));
    } else if (event instanceof SessionEvent.Measured e) {
      trace.measured.add(new Review.Timed<>(now.at(), e, now.clip()));
    } else if (event instanceof SessionEvent.TimerStarted) {
      trace.timer(true);
    } else if (event instanceof SessionEvent.ValueCalled e) {
      trace.tightening.called(e.stage(), new StepReview.Called(e.value(), now.clip()));
    } else if (event instanceof SessionEvent.ValueDropped) {
      trace.tightening.dropped();
    } else if (event instanceof SessionEvent.StageClosed e) {
      trace.tightening.stageClosed(e.stage(), now.at());
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      trace.tightening.marking(e.marking());
    } else if (event instanceof SessionEvent.NewHardwareFitted) {
      trace.tightening.newHardware(now.at());
    }
  }
}
