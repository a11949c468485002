package org.undercall.core.decision;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.term.StepRef;

/**
 * The timers of the wait steps and those with a name.
 *
 * @param running the timers that run
 * @param ended the steps whose time is over
 */
public record Timers(Map<TimerKey, Running> running, Set<StepRef> ended) {

  /** How long before the end a timer warns. */
  static final Duration WARNING = Duration.ofMinutes(1);

  /** A shorter timer does not warn. */
  private static final long LEAST_TO_WARN = Duration.ofMinutes(5).toSeconds();

  static final Timers NONE = new Timers(Map.of(), Set.of());

  /**
   * A timer that runs.
   *
   * @param due when it runs out by the wall clock as it is set now
   * @param seconds how long it was started for
   * @param warned whether its end was announced before
   */
  public record Running(Instant due, long seconds, boolean warned) {

    /** When it next has something to say. */
    Instant next() {
      return warns() ? due.minus(WARNING) : due;
    }

    boolean isOver(Instant now) {
      return !due.isAfter(now);
    }

    /** Whether it is time to warn of its end. */
    boolean isSoonOver(Instant now) {
      return warns() && !isOver(now) && !next().isAfter(now);
    }

    private boolean warns() {
      return !warned && seconds >= LEAST_TO_WARN;
    }
  }

  Timers started(TimerKey key, Instant due, long seconds) {
    return new Timers(put(key, new Running(due, seconds, false)), without(key));
  }

  Timers warned(TimerKey key) {
    Running timer = running.get(key);
    return timer == null
        ? this
        : new Timers(put(key, new Running(timer.due(), timer.seconds(), true)), ended);
  }

  Timers ended(TimerKey key) {
    Set<StepRef> over = new HashSet<>(ended);
    if (key instanceof TimerKey.OfStep of) {
      over.add(of.step());
    }
    return new Timers(stopped(key), Set.copyOf(over));
  }

  Timers cancelled(TimerKey key) {
    return new Timers(stopped(key), without(key));
  }

  /** The timers after the wall clock was set forward by so much: due as much later by it. */
  Timers shifted(long millis) {
    return new Timers(
        running.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(
                    Map.Entry::getKey,
                    e ->
                        new Running(
                            e.getValue().due().plusMillis(millis),
                            e.getValue().seconds(),
                            e.getValue().warned()))),
        ended);
  }

  /** When the next timer runs out or warns. */
  Optional<Instant> next() {
    return running.values().stream().map(Running::next).min(Comparator.naturalOrder());
  }

  boolean runs(StepRef step) {
    return running.containsKey(new TimerKey.OfStep(step));
  }

  private Map<TimerKey, Running> put(TimerKey key, Running timer) {
    Map<TimerKey, Running> next = new HashMap<>(running);
    next.put(key, timer);
    return Map.copyOf(next);
  }

  private Map<TimerKey, Running> stopped(TimerKey key) {
    Map<TimerKey, Running> next = new HashMap<>(running);
    next.remove(key);
    return Map.copyOf(next);
  }

  private Set<StepRef> without(TimerKey key) {
    Set<StepRef> over = new HashSet<>(ended);
    if (key instanceof TimerKey.OfStep of) {
      over.remove(of.step());
    }
    return Set.copyOf(over);
  }
}
