package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.undercall.core.term.StepRef;

/**
 * How far the walk has come.
 *
 * @param at position of the step at hand, from 0
 * @param states one for each place of the walk
 * @param lastClosed the step whose closing, or whose stage's closing, can still be taken back
 * @param left the position that was left for a wait whose time is over; the walk goes on from there
 */
public record Progress(
    int at, List<StepState> states, Optional<StepRef> lastClosed, Optional<Integer> left) {
  public Progress {
    states = List.copyOf(states);
  }

  static Progress start(int places) {
    return new Progress(
        0, Collections.nCopies(places, StepState.FRESH), Optional.empty(), Optional.empty());
  }

  Progress movedTo(int index) {
    return new Progress(index, states, lastClosed, Optional.empty());
  }

  /** At a wait whose time is over; what was left for it is gone on with afterwards. */
  Progress calledBackTo(int index) {
    return new Progress(index, states, lastClosed, Optional.of(left.orElse(at)));
  }

  /** The first position that is looked at for the next step. */
  int from() {
    return left.orElse(at + 1);
  }

  Progress change(int index, UnaryOperator<StepState> change) {
    List<StepState> next = new ArrayList<>(states);
    next.set(index, change.apply(next.get(index)));
    return new Progress(at, next, lastClosed, left);
  }

  Progress lastClosed(Optional<StepRef> step) {
    return new Progress(at, states, step, left);
  }

  boolean allClosed() {
    return states.stream().allMatch(StepState::closed);
  }

  int open() {
    return (int) states.stream().filter(s -> !s.closed()).count();
  }
}
