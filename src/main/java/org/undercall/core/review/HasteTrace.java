package org.undercall.core.review;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.StepRef;

/** Looks for what was answered sooner than it can be done. */
final class HasteTrace {
  /** After these something else is asked. */
  private static final Set<Class<? extends SessionEvent>> ASKS =
      Set.of(
          SessionEvent.CautionsUnderstood.class,
          SessionEvent.StepEntered.class,
          SessionEvent.StepClosed.class,
          SessionEvent.StageClosed.class,
          SessionEvent.PositionsClosed.class,
          SessionEvent.MarkingNoted.class,
          SessionEvent.NewHardwareFitted.class,
          SessionEvent.ReuseNoted.class,
          SessionEvent.LoadConfirmed.class,
          SessionEvent.RunInByHand.class,
          SessionEvent.RunDownNoted.class,
          SessionEvent.TroubleSettled.class,
          SessionEvent.Loosened.class,
          SessionEvent.StepReopened.class,
          SessionEvent.ReopenedTight.class,
          SessionEvent.WorkResumed.class,
          SessionEvent.SessionResumed.class);

  private static final Set<LoadChange> MOVES =
      Set.of(LoadChange.CAR_LOWERED, LoadChange.CAR_RAISED, LoadChange.JACK_MOVED);

  private final Walk walk;
  private final List<Haste> found = new ArrayList<>();
  private final Map<StepRef, Reading> waits = new HashMap<>();
  private Optional<Long> moved = Optional.empty();
  private long asked;
  private long decision = -1;
  private int fasteners;

  HasteTrace(Walk walk) {
    this.walk = walk;
  }

  /** Reads the next event of the log, with the step at hand. */
  void read(SessionEvent event, Reading now, Optional<StepRef> atHand) {
    if (event instanceof SessionEvent.PositionsClosed e) {
      fasteners += e.positions().numbers().size();
      stage(e.step(), e.stage(), fasteners, now);
    } else if (event instanceof SessionEvent.StageClosed e) {
      stage(e.step(), e.stage(), Math.max(1, fasteners), now);
    } else if (event instanceof SessionEvent.TimerStarted e) {
      waits.put(e.step(), now);
    } else if (event instanceof SessionEvent.StepClosed e) {
      waited(e.step(), now);
    } else if (event instanceof SessionEvent.LoadChanged e && MOVES.contains(e.change())) {
      moved = Optional.of(now.millis());
    } else if (event instanceof SessionEvent.LoadConfirmed && moved.isPresent()) {
      Duration took = since(moved.get(), now);
      atHand.ifPresent(
          step -> add(new Haste(now.at(), step, Haste.Kind.LOAD, 0, took, Haste.A_LOAD)));
      moved = Optional.empty();
    }
    if (ASKS.contains(event.getClass())) {
      decision = now.millis();
    }
  }

  /** A decision is over: what it asked is asked from then on. */
  void over() {
    asked = decision >= 0 ? decision : asked;
    decision = -1;
    fasteners = 0;
  }

  /** What closes several at once takes as often as long; a decision has one mark for a stage. */
  private void stage(StepRef step, int stage, int count, Reading now) {
    found.removeIf(h -> h.at().equals(now.at()) && h.step().equals(step) && h.stage() == stage);
    Duration least = Haste.A_FASTENER.multipliedBy(count);
    add(new Haste(now.at(), step, Haste.Kind.STAGE, stage, since(asked, now), least));
  }

  private void waited(StepRef step, Reading now) {
    int index = walk.indexOf(step);
    if (index >= 0
        && walk.places().get(index).step() instanceof Step.Wait wait
        && waits.containsKey(step)) {
      Reading from = waits.get(step);
      Duration wall = Duration.between(from.at(), now.at());
      Duration steady = since(from.millis(), now);
      Duration took =
          wall.compareTo(steady) > 0 ? wall : steady; // Asleep, only one of them goes on.
      add(new Haste(now.at(), step, Haste.Kind.WAIT, 0, took, wait.time()));
    }
  }

  private static Duration since(long from, Reading now) {
    return Duration.ofMillis(now.millis() - from);
  }

  private void add(Haste haste) {
    if (haste.took().compareTo(haste.least()) < 0) {
      found.add(haste);
    }
  }

  /** What was found, in order. */
  List<Haste> found() {
    return found;
  }
}
