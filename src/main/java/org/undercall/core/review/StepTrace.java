package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Remedy;

/** What has been read so far about the work of one step. */
final class StepTrace {
  private static final Set<Class<? extends SessionEvent>> OPENING =
      Set.of(
          SessionEvent.StepReopened.class,
          SessionEvent.ReopenedTight.class,
          SessionEvent.ClosingLapsed.class,
          SessionEvent.ClosingTakenBack.class,
          SessionEvent.StageTakenBack.class,
          SessionEvent.StagesVoided.class,
          SessionEvent.TroubleSettled.class,
          SessionEvent.Loosened.class);

  final Walk.Place place;
  final TighteningTrace tightening;
  final List<Review.Timed<SessionEvent.CheckAnswered>> answers = new ArrayList<>();
  final List<Review.Timed<SessionEvent.Measured>> measured = new ArrayList<>();
  final List<Review.Refusal> refusals = new ArrayList<>();

  private Optional<Integer> wrong = Optional.empty();
  private boolean troubled;

  /** Who saw it since it was opened last. */
  Optional<Review.Timed<SessionEvent.Witnessed>> witness = Optional.empty();

  private boolean witnessAsked;

  /** Who closed it last; empty for one who is not named. */
  Optional<String> closedBy = Optional.empty();

  /** When it was closed; empty while it is open. */
  Optional<OffsetDateTime> closedAt = Optional.empty();

  private final List<Earlier> earlier = new ArrayList<>();

  StepTrace(Walk.Place place) {
    this.place = place;
    this.tightening = new TighteningTrace(place.step());
  }

  /** Keeps what stood closed, if an event that is read next opens it. */
  void keepEarlier(SessionEvent event, Reading now, Recorded decision) {
    if (!OPENING.contains(event.getClass())) {
      return;
    }
    Earlier before =
        new Earlier(
            now.at(),
            event,
            decision.heard().map(Recorded.Heard::text),
            closedAt,
            closedAt.isPresent() ? closedBy : Optional.empty(),
            tightening.tightened(),
            answers,
            measured);
    if (closedAt.isPresent() || before.tightening()) {
      earlier.add(before);
    }
    closedAt = Optional.empty();
  }

  /** Whether a second person should have seen it and did not. */
  boolean lacksWitness() {
    return witness.isEmpty() && (witnessAsked || place.step().head().witness());
  }

  private void readWitness(SessionEvent event, Reading now) {
    if (event instanceof SessionEvent.Witnessed e) {
      witness = Optional.of(new Review.Timed<>(now.at(), e));
    } else if (event instanceof SessionEvent.WitnessAsked) {
      witness = Optional.empty();
      witnessAsked = true;
    } else if (opens(event)) {
      witness = Optional.empty();
      witnessAsked = false;
    }
  }

  /** Whether the work of the step is to be done again, in whole or in part. */
  private static boolean opens(SessionEvent event) {
    return event instanceof SessionEvent.StepReopened
        || event instanceof SessionEvent.ReopenedTight
        || event instanceof SessionEvent.ClosingLapsed
        || event instanceof SessionEvent.ClosingTakenBack
        || event instanceof SessionEvent.StageTakenBack
        || event instanceof SessionEvent.PositionsTakenBack
        || event instanceof SessionEvent.Loosened
        || event instanceof SessionEvent.TroubleSettled
        || (event instanceof SessionEvent.SayingTakenBack e
            && e.what().equals(EventKind.WITNESS_ASKED.name()));
  }

  /** Reads an event that is about the step, and the sound of what it says. */
  void read(SessionEvent event, Reading now, Optional<String> clip, WrenchTrace wrench) {
    readWitness(event, now);
    if (event instanceof SessionEvent.StepReopened
        || event instanceof SessionEvent.ReopenedTight
        || event instanceof SessionEvent.ClosingLapsed) {
      tightening.reopened(event instanceof SessionEvent.StepReopened);
      answers.clear();
      measured.clear();
    } else if (event instanceof SessionEvent.StageTakenBack e) {
      tightening.takenBack(e.stage());
    } else if (event instanceof SessionEvent.TighteningInterrupted) {
      tightening.interrupted();
    } else if (event instanceof SessionEvent.TurnNoted e) {
      tightening.turned(e.degrees(), clip);
    } else if (event instanceof SessionEvent.Loosened) {
      tightening.loosened();
    } else if (event instanceof SessionEvent.SayingTakenBack e) {
      tightening.takenBack(e.what());
      troubled = troubled && !e.what().equals(EventKind.TROUBLE_NOTED.name());
    } else if (event instanceof SessionEvent.ClosingTakenBack
        || event instanceof SessionEvent.StagesVoided) {
      tightening.voided();
    } else if (event instanceof SessionEvent.CheckAnswered e) {
      answers.add(new Review.Timed<>(now.at(), e));
    } else if (event instanceof SessionEvent.Measured e) {
      measured.add(new Review.Timed<>(now.at(), e, clip));
    } else if (event instanceof SessionEvent.ValueCalled e) {
      tightening.called(e.stage(), new StepReview.Called(e.value(), clip));
    } else if (event instanceof SessionEvent.ValueDropped) {
      tightening.dropped();
    } else if (event instanceof SessionEvent.StageClosed e) {
      tightening.stageClosed(e.stage(), now.at(), wrench);
    } else if (event instanceof SessionEvent.PositionsClosed e) {
      tightening.positions(e.stage(), e.positions(), now.at(), wrench);
    } else if (event instanceof SessionEvent.PositionsTakenBack e) {
      tightening.opened(e.stage(), e.positions());
    } else if (event instanceof SessionEvent.RunInByHand) {
      tightening.byHand(now.at());
    } else if (event instanceof SessionEvent.RunDownNoted e) {
      tightening.runDown(e.value());
    } else if (event instanceof SessionEvent.FinalTorqueNoted e) {
      tightening.finalTorque(new Review.Timed<>(now.at(), e, clip));
    } else if (event instanceof SessionEvent.FinalTorqueJudged e) {
      tightening.judged(e);
    } else if (event instanceof SessionEvent.ReuseNoted e) {
      tightening.reused(new Review.Timed<>(now.at(), e, clip));
    } else if (event instanceof SessionEvent.TroubleNoted e) {
      wrong = e.position();
      troubled = true;
    } else if (event instanceof SessionEvent.TroubleSettled e) {
      if (troubled) {
        tightening.renewed(
            wrong, e.remedy() == Remedy.NEW_HARDWARE ? Optional.of(now.at()) : Optional.empty());
      }
      troubled = false;
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      tightening.marking(e.marking());
    } else if (event instanceof SessionEvent.NewHardwareFitted) {
      tightening.newHardware(now.at());
    }
  }

  StepReview review(StepCourse course, Reading last) {
    return new StepReview(
        place,
        course.state(),
        course.times(last),
        new StepReview.Work(
            answers,
            measured,
            refusals,
            course.reopened(),
            course.putOff(),
            course.isClosed() ? closedBy : Optional.empty(),
            earlier,
            witness,
            witnessAsked && witness.isEmpty() && !course.isClosed()),
        tightening.tightened(),
        course.isClosed() ? Doubts.of(this) : Set.of());
  }
}
