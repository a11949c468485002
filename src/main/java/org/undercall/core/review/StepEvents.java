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
    if (event instanceof SessionEvent.ReopenedTight e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ClosingLapsed e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.SayingTakenBack e) {
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
    if (event instanceof SessionEvent.WitnessAsked e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.Witnessed e) {
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
    if (event instanceof SessionEvent.PositionsClosed e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.PositionsTakenBack e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.RunInByHand e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.RunDownNoted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.FinalTorqueNoted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.FinalTorqueJudged e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ReuseNoted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TroubleNoted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TroubleSettled e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StagesVoided e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.StageTakenBack e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TighteningInterrupted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TurnNoted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.Loosened e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.MarkingNoted e) {
      return Optional.of(e.step());
    }
    return event instanceof SessionEvent.NewHardwareFitted e
        ? Optional.of(e.step())
        : Optional.empty();
  }
}
