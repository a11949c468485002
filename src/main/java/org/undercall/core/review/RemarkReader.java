package org.undercall.core.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.Clip;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.StepRef;

/** Collects what was refused, noted and handed over. */
final class RemarkReader {
  private static final Set<Class<? extends SessionEvent>> TIMERS =
      Set.of(
          SessionEvent.TimerStarted.class,
          SessionEvent.TimerEnded.class,
          SessionEvent.TimerCancelled.class,
          SessionEvent.NamedTimerStarted.class,
          SessionEvent.NamedTimerEnded.class,
          SessionEvent.NamedTimerCancelled.class,
          SessionEvent.ClockJumped.class);

  private static final Set<Class<? extends SessionEvent>> CHANGES =
      Set.of(
          SessionEvent.StepReopened.class,
          SessionEvent.ReopenedTight.class,
          SessionEvent.ClosingLapsed.class,
          SessionEvent.ClosingsHold.class,
          SessionEvent.ClosingTakenBack.class,
          SessionEvent.StageTakenBack.class,
          SessionEvent.SayingTakenBack.class,
          SessionEvent.TighteningInterrupted.class,
          SessionEvent.TurnNoted.class,
          SessionEvent.Loosened.class,
          SessionEvent.OverdueNoted.class,
          SessionEvent.OutOfOrderNoted.class);

  private final List<Review.Refusal> refusals = new ArrayList<>();
  private final List<Review.Timed<SessionEvent.NoteKept>> notes = new ArrayList<>();
  private final Map<StepRef, Review.Timed<SessionEvent.HandedOver>> handOvers =
      new LinkedHashMap<>();
  private final List<Review.Timed<SessionEvent>> timers = new ArrayList<>();
  private final List<Review.Timed<SessionEvent>> changes = new ArrayList<>();
  private final List<Review.Timed<SessionEvent>> troubles = new ArrayList<>();
  private int notUnderstood;

  /** Reads an event; gives back the refusal if it is one. */
  Optional<Review.Refusal> read(SessionEvent event, Recorded decision, Optional<StepRef> atHand) {
    if (event instanceof SessionEvent.NoteKept e) {
      notes.add(new Review.Timed<>(decision.at().wall(), e, clip(decision)));
    } else if (event instanceof SessionEvent.HandedOver e) {
      handOvers.put(e.step(), new Review.Timed<>(decision.at().wall(), e));
    } else if (event instanceof SessionEvent.NotUnderstood) {
      notUnderstood++;
    } else if (TIMERS.contains(event.getClass())) {
      timers.add(new Review.Timed<>(decision.at().wall(), event));
    }
    if (CHANGES.contains(event.getClass())) {
      changes.add(new Review.Timed<>(decision.at().wall(), event, clip(decision)));
    }
    boolean back =
        event instanceof SessionEvent.SayingTakenBack said
            && said.what().equals(EventKind.TROUBLE_NOTED.name());
    if (back
        || event instanceof SessionEvent.TroubleNoted
        || event instanceof SessionEvent.TroubleSettled) {
      troubles.add(new Review.Timed<>(decision.at().wall(), event, clip(decision)));
    }
    if (event instanceof SessionEvent.SayingTakenBack e
        && e.what().equals(EventKind.NOTE_KEPT.name())
        && !notes.isEmpty()) {
      notes.remove(notes.size() - 1);
    }
    return refusedStep(event, atHand).map(step -> refusal(step.step(), event, decision));
  }

  /** The step of a refusal, which may be absent. */
  private record Refused(Optional<StepRef> step) {}

  private static Optional<Refused> refusedStep(SessionEvent event, Optional<StepRef> atHand) {
    if (event instanceof SessionEvent.ValueRefused e) {
      return Optional.of(new Refused(Optional.of(e.step())));
    }
    if (event instanceof SessionEvent.CloseRefused e) {
      return Optional.of(new Refused(Optional.of(e.step())));
    }
    if (event instanceof SessionEvent.ReuseRefused e) {
      return Optional.of(new Refused(Optional.of(e.step())));
    }
    if (event instanceof SessionEvent.MarkingRefused e) {
      return Optional.of(new Refused(Optional.of(e.step())));
    }
    boolean other =
        event instanceof SessionEvent.LoadRefused || event instanceof SessionEvent.NotNow;
    return other ? Optional.of(new Refused(atHand)) : Optional.empty();
  }

  private Review.Refusal refusal(Optional<StepRef> step, SessionEvent event, Recorded decision) {
    Review.Refusal refusal =
        new Review.Refusal(
            decision.at().wall(),
            step,
            event,
            decision.heard().map(Recorded.Heard::text),
            clip(decision));
    refusals.add(refusal);
    return refusal;
  }

  private static Optional<String> clip(Recorded decision) {
    return decision.heard().flatMap(Recorded.Heard::clip).map(Clip::file);
  }

  Review.Remarks remarks(List<Review.Timed<SessionEvent>> loads, List<Haste> haste) {
    return new Review.Remarks(
        refusals, notes, loads, handOvers(), timers, troubles, changes, haste);
  }

  /** What was handed over last of each step. */
  List<Review.Timed<SessionEvent.HandedOver>> handOvers() {
    return List.copyOf(handOvers.values());
  }

  int notUnderstood() {
    return notUnderstood;
  }
}
