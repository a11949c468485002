package org.undercall.core.procedure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/**
 * The steps of a procedure in the order they are walked, side by side, left before right.
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
   * @param wheels the wheels it is about: those of its side, of its corner, or all
   */
  public record Place(StepRef ref, String phase, Step step, Set<Side> wheels) {
    public Place {
      wheels = Collections.unmodifiableSet(EnumSet.copyOf(wheels));
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
      if (phase.each() == Each.CAR) {
        addRun(places, run, procedure.wheels());
        run.clear();
        addPhase(places, phase, Side.CAR, procedure.wheels());
      } else {
        run.add(phase);
      }
    }
    addRun(places, run, procedure.wheels());
    return new Walk(procedure, places);
  }

  private static void addRun(List<Place> places, List<WorkPhase> run, List<Side> wheels) {
    for (Side side : wheels) {
      run.stream()
          .filter(phase -> phase.each().sides().contains(side))
          .forEach(phase -> addPhase(places, phase, side, List.of(side)));
    }
  }

  private static void addPhase(List<Place> places, WorkPhase phase, Side side, List<Side> ofSide) {
    for (Step step : phase.steps()) {
      List<Side> wheels = step.head().bearing().corner().map(List::of).orElse(ofSide);
      StepRef ref = new StepRef(step.head().id(), side);
      places.add(new Place(ref, phase.name(), step, Set.copyOf(wheels)));
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
