package org.undercall.core.procedure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/**
 * The steps of a procedure in the order they are walked, left side before right side.
 *
 * @param procedure what is walked
 * @param places every step with its side; its position is its number less one
 */
public record Walk(Procedure procedure, List<Place> places) {

  /**
   * One step on one side.
   *
   * @param ref its name
   * @param phase the phase it belongs to
   * @param step what is to be done
   */
  public record Place(StepRef ref, String phase, Step step) {
    /** The wheels it is about: those of its side, of its corner, or all. */
    public Set<Side> wheels() {
      Side side = step.head().bearing().corner().orElse(ref.side());
      return side == Side.CAR ? EnumSet.of(Side.LEFT, Side.RIGHT) : EnumSet.of(side);
    }
  }

  public Walk {
    places = List.copyOf(places);
  }

  /** Lays out the walk of a procedure. */
  public static Walk of(Procedure procedure) {
    List<Place> places = new ArrayList<>();
    List<WorkPhase> run = new ArrayList<>();
    for (WorkPhase phase : procedure.phases()) {
      if (phase.perSide()) {
        run.add(phase);
      } else {
        addRun(places, run);
        addPhase(places, phase, Side.CAR);
      }
    }
    addRun(places, run);
    return new Walk(procedure, places);
  }

  private static void addRun(List<Place> places, List<WorkPhase> run) {
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      run.forEach(phase -> addPhase(places, phase, side));
    }
    run.clear();
  }

  private static void addPhase(List<Place> places, WorkPhase phase, Side side) {
    for (Step step : phase.steps()) {
      places.add(new Place(new StepRef(step.head().id(), side), phase.name(), step));
    }
  }

  /**
   * The positions of the steps with these ids that a step means by them: on its side or for all.
   */
  public List<Integer> named(Place by, List<String> ids) {
    Side side = by.step().head().bearing().corner().orElse(by.ref().side());
    return IntStream.range(0, places.size())
        .filter(i -> ids.contains(places.get(i).ref().id()))
        .filter(
            i ->
                side == Side.CAR
                    || places.get(i).ref().side() == side
                    || places.get(i).ref().side() == Side.CAR)
        .boxed()
        .toList();
  }

  /** The position of a step, from 0; -1 if the walk does not have it. */
  public int indexOf(StepRef ref) {
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i).ref().equals(ref)) {
        return i;
      }
    }
    return -1;
  }
}
