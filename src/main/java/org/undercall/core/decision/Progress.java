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
 */
public record Progress(int at, List<StepState> states, Optional<StepRef> lastClosed) {
  public Progress {
    states = List.copyOf(states);
  }

  static Progress start(int places) {
    return new Progress(0, Collections.nCopies(places, StepState.FRESH), Optional.empty());
  }

  Progress movedTo(int index) {
    return new Progress(index, states, lastClosed);
  }

  Progress change(int index, UnaryOperator<StepState> change) {
    List<StepState> next = new ArrayList<>(states);
    next.set(index, change.apply(next.get(index)));
    return new Progress(at, next, lastClosed);
  }

  Progress lastClosed(Optional<StepRef> step) {
    return new Progress(at, states, step);
  }

  boolean allClosed() {
    return states.stream().allMatch(StepState::closed);
  }

  int open() {
    return (int) states.stream().filter(s -> !s.closed()).count();
  }
}
