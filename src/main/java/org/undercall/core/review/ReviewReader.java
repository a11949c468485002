package org.undercall.core.review;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;

/** Reads a log once, from the first decision to the last. */
final class ReviewReader {
  private final Walk walk;
  private final Recorded first;
  private final Map<StepRef, StepTrace> steps = new LinkedHashMap<>();
  private final List<StepRef> unknown = new ArrayList<>();
  private final RemarkReader remarks = new RemarkReader();
  private final LoadTrace loads = new LoadTrace();
  private final ClipTrace clips = new ClipTrace();
  private final List<Review.Timed<SessionEvent.LogDoubted>> losses = new ArrayList<>();
  private Recorded before;
  private StepTrace.Reading now;
  private Optional<StepRef> atHand = Optional.empty();
  private String version = "";
  private boolean briefed;
  private boolean holding;
  private Optional<Boolean> ended = Optional.empty();
  private long held;
  private long working;
  private long away;

  ReviewReader(Walk walk, Recorded first) {
    this.walk = walk;
    this.first = first;
    this.before = first;
    this.now = new StepTrace.Reading(first.at().wall(), 0, 0, Optional.empty());
    walk.places().forEach(place -> steps.put(place.ref(), new StepTrace(place)));
  }

  void read(Recorded decision) {
    pass(decision);
    clips.read(decision);
    for (SessionEvent event : decision.events()) {
      now = now.with(clips.of(event));
      readTalk(event);
      loads.read(event, now.at());
      StepEvents.stepOf(event).ifPresent(ref -> readStep(ref, event));
      remarks.read(event, decision, atHand).ifPresent(this::noteRefusal);
    }
    before = decision;
  }

  private void noteRefusal(Review.Refusal refusal) {
    refusal.step().map(steps::get).ifPresent(trace -> trace.refusals.add(refusal));
  }

  private void pass(Recorded decision) {
    long steady = decision.at().monotonicMillis() - before.at().monotonicMillis();
    boolean gap = steady < 0 || decision.events().stream().anyMatch(ReviewReader::isRestart);
    long wall = Duration.between(before.at().wall(), decision.at().wall()).toMillis();
    long millis = gap ? Math.max(0, wall) : steady;
    now =
        new StepTrace.Reading(
            decision.at().wall(),
            now.millis() + millis,
            now.gaps() + (gap ? 1 : 0),
            Optional.empty());
    boolean stopped = gap || holding || !briefed || ended.isPresent();
    away += gap ? millis : 0;
    held += holding && !gap ? millis : 0;
    Optional<StepTrace> worked =
        atHand.map(steps::get).filter(trace -> !stopped && trace.isWorkedOn());
    working += worked.isPresent() ? millis : 0;
    for (StepTrace trace : steps.values()) {
      trace.passed(millis, worked.isPresent() && worked.get() == trace);
    }
  }

  private static boolean isRestart(SessionEvent event) {
    return event instanceof SessionEvent.SessionResumed;
  }

  private void readTalk(SessionEvent event) {
    if (event instanceof SessionEvent.SessionStarted e) {
      version = e.version();
    } else if (event instanceof SessionEvent.CautionsUnderstood) {
      briefed = true;
      if (atHand.isEmpty() && !walk.places().isEmpty()) {
        enter(walk.places().get(0).ref());
      }
    } else if (event instanceof SessionEvent.WorkHeld) {
      holding = true;
    } else if (event instanceof SessionEvent.WorkResumed) {
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
    steps.get(ref).touched(now);
  }

  private void readStep(StepRef ref, SessionEvent event) {
    StepTrace trace = steps.get(ref);
    if (trace == null) {
      unknown.add(ref);
    } else if (event instanceof SessionEvent.StepEntered) {
      enter(ref);
    } else if (event instanceof SessionEvent.StepClosed) {
      trace.closed(now, loads.confirmation(ref.side(), Doubts.needs(trace.place.step())));
    } else {
      StepEvents.apply(trace, event, now);
    }
  }

  Review review(List<ToolState> tools) {
    Review.Totals totals =
        new Review.Totals(
            new Span(Duration.ofMillis(now.millis()), now.gaps() > 0),
            Duration.ofMillis(working),
            Duration.ofMillis(held),
            Duration.ofMillis(away),
            remarks.notUnderstood());
    return new Review(
        new Review.Head(walk.procedure().about(), version, first.at().wall(), now.at(), tools),
        steps.values().stream().map(trace -> trace.review(now)).toList(),
        remarks.remarks(loads.notes()),
        totals,
        new Review.Ending(ended.isPresent(), ended.orElse(false), unknown, losses));
  }
}
