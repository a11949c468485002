package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;

/** The course of a session: which step was at hand when, and where its time went. */
final class Course {
  private static final long PLACES = 1000;

  private final Optional<Walk> walk;
  private final Map<StepRef, StepCourse> steps = new LinkedHashMap<>();
  private final List<StepRef> unknown = new ArrayList<>();
  private final List<Review.Timed<SessionEvent.LogDoubted>> losses = new ArrayList<>();
  private Recorded before;
  private Reading now;
  private Optional<StepRef> atHand = Optional.empty();
  private boolean briefed;
  private boolean holding;
  private Optional<Boolean> ended = Optional.empty();
  private long held;
  private long working;
  private long away;

  /**
   * A course that has not begun.
   *
   * @param walk the procedure; empty if it is not known, so that every step is taken for one of it
   * @param first the first decision
   */
  Course(Optional<Walk> walk, Recorded first) {
    this.walk = walk;
    this.before = first;
    this.now = new Reading(first.at().wall(), 0, 0, 0);
  }

  /** Lets the time pass until a decision; its events are to be read next. */
  void pass(Recorded decision) {
    long steady = decision.at().monotonicMillis() - before.at().monotonicMillis();
    boolean gap = steady < 0 || decision.events().stream().anyMatch(Course::isRestart);
    OffsetDateTime wall = decision.at().wall();
    long millis = gap ? Math.max(0, Duration.between(before.at().wall(), wall).toMillis()) : steady;
    long place = decision.seq() * PLACES;
    now = new Reading(wall, now.millis() + millis, now.gaps() + (gap ? 1 : 0), place);
    boolean stopped = gap || holding || !briefed || ended.isPresent();
    away += gap ? millis : 0;
    held += holding && !gap ? millis : 0;
    Optional<StepCourse> worked =
        atHand.map(steps::get).filter(step -> !stopped && step.isWorkedOn());
    working += worked.isPresent() ? millis : 0;
    for (StepCourse step : steps.values()) {
      step.passed(millis, worked.isPresent() && worked.get() == step);
    }
    before = decision;
  }

  private static boolean isRestart(SessionEvent event) {
    return event instanceof SessionEvent.SessionResumed;
  }

  /** Reads the next event of the decision. */
  void read(SessionEvent event) {
    now = now.next();
    talk(event);
    Optional<StepRef> ref = StepEvents.stepOf(event);
    if (ref.isPresent() && !knows(ref.get())) {
      unknown.add(ref.get());
    } else if (ref.isPresent() && event instanceof SessionEvent.StepEntered) {
      enter(ref.get());
    } else {
      ref.ifPresent(step -> of(step).read(event, now));
    }
  }

  private boolean knows(StepRef ref) {
    return walk.isEmpty() || walk.get().indexOf(ref) >= 0;
  }

  private void talk(SessionEvent event) {
    if (event instanceof SessionEvent.CautionsUnderstood) {
      briefed = true;
      if (atHand.isEmpty()) {
        walk.flatMap(w -> w.places().stream().findFirst()).ifPresent(p -> enter(p.ref()));
      }
    } else if (event instanceof SessionEvent.WorkHeld
        || event instanceof SessionEvent.WorkHandedOver) {
      holding = true;
    } else if (event instanceof SessionEvent.WorkResumed
        || event instanceof SessionEvent.WorkTakenOver) {
      holding = false;
    } else if (event instanceof SessionEvent.SessionEnded e) {
      ended = Optional.of(e.complete());
      holding = false;
    } else if (isRestart(event)) {
      ended = Optional.empty();
    } else if (event instanceof SessionEvent.LogDoubted e) {
      losses.add(new Review.Timed<>(now.at(), e));
    }
  }

  private void enter(StepRef ref) {
    atHand = Optional.of(ref);
    of(ref).touched(now);
  }

  /** The course of a step, which may be that nothing was done on it. */
  StepCourse of(StepRef ref) {
    return steps.computeIfAbsent(ref, any -> new StepCourse());
  }

  /** The steps that something was done on, in the order in which that began. */
  Map<StepRef, StepCourse> steps() {
    return steps;
  }

  /** The last decision that was read. */
  Reading now() {
    return now;
  }

  /** The step at hand. */
  Optional<StepRef> atHand() {
    return atHand;
  }

  /** Whether it ended as complete, was not taken up again and lost no line. */
  boolean complete() {
    return ended.orElse(false) && losses.isEmpty();
  }

  Review.Totals totals(int notUnderstood) {
    return new Review.Totals(
        new Span(Duration.ofMillis(now.millis()), now.gaps() > 0),
        Duration.ofMillis(working),
        Duration.ofMillis(held),
        Duration.ofMillis(away),
        notUnderstood);
  }

  Review.Ending ending() {
    return new Review.Ending(ended.isPresent(), ended.orElse(false), unknown, losses);
  }
}
