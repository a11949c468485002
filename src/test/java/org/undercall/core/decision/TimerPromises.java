package org.undercall.core.decision;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;

/**
 * Watches what must never happen with timers. It keeps its own books by the steady clock alone, and
 * knows nothing of the wall clock, the session's state or the rules.
 */
final class TimerPromises {
  private static final long WARNING_MILLIS = 60_000;

  private final Walk walk;
  private final Map<Object, Long> due = new HashMap<>();
  private final Set<Object> warned = new HashSet<>();
  private final Set<StepRef> over = new HashSet<>();
  private final Set<StepRef> excused = new HashSet<>();

  TimerPromises(Walk walk) {
    this.walk = walk;
  }

  /** Checks one decision, made at a time of the steady clock, or throws. */
  void watch(long steadyMillis, Decision decision) {
    for (SessionEvent event : decision.events()) {
      if (event instanceof SessionEvent.TimerStarted e) {
        started(e.step(), steadyMillis + 1000 * e.seconds());
      } else if (event instanceof SessionEvent.NamedTimerStarted e) {
        started(e.name(), steadyMillis + 1000 * e.seconds());
      } else if (event instanceof SessionEvent.TimerEnded e) {
        ended(e.step(), steadyMillis);
      } else if (event instanceof SessionEvent.NamedTimerEnded e) {
        ended(e.name(), steadyMillis);
      } else if (event instanceof SessionEvent.TimerWarned e) {
        warned(e.step(), steadyMillis);
      } else if (event instanceof SessionEvent.NamedTimerWarned e) {
        warned(e.name(), steadyMillis);
      } else if (event instanceof SessionEvent.TimerCancelled e) {
        cancelled(e.step());
      } else if (event instanceof SessionEvent.NamedTimerCancelled e) {
        cancelled(e.name());
      } else if (event instanceof SessionEvent.StepReopened e) {
        over.remove(e.step());
        due.remove(e.step());
      } else if (event instanceof SessionEvent.OutOfOrderNoted e) {
        excused.add(e.step());
      } else if (event instanceof SessionEvent.StepClosed e) {
        closed(e.step());
      }
    }
  }

  private void started(Object timer, long millis) {
    due.put(timer, millis);
    warned.remove(timer);
    over.remove(timer);
  }

  private void ended(Object timer, long now) {
    require(due.containsKey(timer), "only a running timer ends, and once", timer);
    require(now >= due.remove(timer), "no timer ends before its time", timer);
    if (timer instanceof StepRef step) {
      over.add(step);
    }
  }

  private void warned(Object timer, long now) {
    require(due.containsKey(timer), "only a running timer warns", timer);
    require(warned.add(timer), "a timer warns once", timer);
    long left = due.get(timer) - now;
    require(left > 0 && left <= WARNING_MILLIS, "a warning in the last minute", timer);
  }

  private void cancelled(Object timer) {
    require(due.containsKey(timer), "only a running timer is cancelled", timer);
    due.remove(timer);
    over.remove(timer);
  }

  private void closed(StepRef step) {
    Walk.Place place = walk.places().get(walk.indexOf(step));
    boolean waits = place.step() instanceof Step.Wait;
    require(!waits || over.contains(step), "a wait closes only after its whole time", step);
    for (int i : walk.named(place, place.step().head().bearing().after())) {
      Walk.Place first = walk.places().get(i);
      boolean cured =
          !(first.step() instanceof Step.Fasten fasten)
              || fasten.fastener().manner().cure().isEmpty()
              || over.contains(first.ref());
      require(cured || excused.contains(step), "what cures is left alone until then", step);
    }
    if (place.step() instanceof Step.Fasten) {
      over.remove(step);
    }
  }

  private static void require(boolean holds, String promise, Object timer) {
    if (!holds) {
      throw new AssertionError("broken: " + promise + ", timer of " + timer);
    }
  }
}
