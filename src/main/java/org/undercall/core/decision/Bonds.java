package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;

/** How the steps of a walk hang together: what one needs first, and what falls with one. */
final class Bonds {
  private final Session session;
  private final List<Walk.Place> places;

  Bonds(Session session) {
    this.session = session;
    this.places = session.walk().places();
  }

  /** Whether a step tightens the fasteners of a wheel. */
  static boolean isWheel(Step step) {
    return step instanceof Step.Fasten fasten && fasten.fastener().holdsWheel();
  }

  /** The steps that must be closed before a step and are open, in the order of the walk. */
  List<Walk.Place> openBefore(int index) {
    return before(index).stream().filter(i -> !closed(i)).map(places::get).toList();
  }

  /** The steps before a step that were put off because parts are missing, and are open still. */
  List<Walk.Place> partsMissing(int index) {
    return before(index).stream()
        .filter(i -> !closed(i))
        .filter(
            i ->
                session
                    .progress()
                    .states()
                    .get(i)
                    .reason()
                    .equals(Optional.of(PutOffReason.WAITING_FOR_PARTS)))
        .map(places::get)
        .toList();
  }

  /** The fasteners that a step waits for because they are closed and still cure. */
  List<Walk.Place> curingBefore(int index) {
    return before(index).stream()
        .map(places::get)
        .filter(place -> TimerRules.cures(session, place.ref()))
        .toList();
  }

  /** Whether nothing that must come before a step is open or still cures. */
  boolean isReady(int index) {
    return openBefore(index).isEmpty() && curingBefore(index).isEmpty();
  }

  /** The steps that come before a step, as the procedure says or as follows from what it does. */
  private Set<Integer> before(int index) {
    Walk.Place place = places.get(index);
    Bearing bearing = place.step().head().bearing();
    Set<Integer> before = new TreeSet<>(session.walk().named(place, bearing.after()));
    if (isWheel(place.step())) {
      before.addAll(all(i -> i < index && fits(i) && shares(i, place.wheels())));
      before.addAll(all(i -> i < index && lift(i) == Bearing.Lift.LOWERED));
    }
    if (bearing.roadTest()) {
      before.addAll(
          all(i -> i < index && (fits(i) || places.get(i).step() instanceof Step.Fasten)));
    }
    before.remove(index);
    return before;
  }

  /** The closed steps that a step undoes when it is done, and those that fall with them. */
  List<Walk.Place> undoneBy(int index) {
    Walk.Place place = places.get(index);
    Set<Integer> undone =
        new HashSet<>(session.walk().named(place, place.step().head().bearing().undoes()));
    if (Car.wheels(place) == Wheels.REMOVED) {
      undone.addAll(
          all(
              i ->
                  (fits(i) || isWheel(places.get(i).step()) || isByWheels(i))
                      && shares(i, place.wheels())));
    }
    if (raises(place)) {
      undone.addAll(all(i -> lift(i) == Bearing.Lift.LOWERED));
    }
    undone.remove(index);
    return closed(falling(undone, index));
  }

  /** The closed steps that fall with a step when it is opened again. */
  List<Walk.Place> fallingWith(int index) {
    Set<Integer> falling = falling(Set.of(index), index);
    falling.remove(index);
    return closed(falling);
  }

  /**
   * The closed steps further on in the walk, of which the procedure does not say whether they still
   * hold when that is opened again: fasteners and work on the same wheels. None if the procedure
   * says what falls with the step, or if it is a measurement, a time or a hand-over.
   */
  List<Walk.Place> doubtfulAfter(int index) {
    Walk.Place place = places.get(index);
    boolean disturbs = place.step() instanceof Step.Do || place.step() instanceof Step.Fasten;
    if (!disturbs || isSaid(index)) {
      return List.of();
    }
    return places(
        i ->
            i > index
                && closed(i)
                && (places.get(i).step() instanceof Step.Do
                    || places.get(i).step() instanceof Step.Fasten)
                && shares(i, place.wheels()));
  }

  private boolean isSaid(int index) {
    String id = places.get(index).ref().id();
    return Car.wheels(places.get(index)) != Wheels.LEFT_AS_THEY_ARE
        || places.stream()
            .map(place -> place.step().head().bearing())
            .anyMatch(b -> b.after().contains(id) || b.undoes().contains(id));
  }

  private Set<Integer> falling(Set<Integer> first, int by) {
    Set<Integer> falling = new HashSet<>(first);
    List<Integer> fresh = new ArrayList<>(first);
    while (!fresh.isEmpty()) {
      int fallen = fresh.remove(fresh.size() - 1);
      for (int i = 0; i < places.size(); i++) {
        if (i != by && !falling.contains(i) && before(i).contains(fallen)) {
          falling.add(i);
          fresh.add(i);
        }
      }
    }
    return falling;
  }

  private List<Walk.Place> closed(Set<Integer> which) {
    return places(i -> which.contains(i) && closed(i));
  }

  private List<Walk.Place> places(IntPredicate wanted) {
    return all(wanted).stream().map(places::get).toList();
  }

  private List<Integer> all(IntPredicate wanted) {
    return IntStream.range(0, places.size()).filter(wanted).boxed().toList();
  }

  private boolean closed(int index) {
    return session.progress().states().get(index).closed();
  }

  private Bearing.Lift lift(int index) {
    return places.get(index).step().head().bearing().car();
  }

  private static boolean raises(Walk.Place place) {
    return place.step().head().bearing().car() == Bearing.Lift.RAISED
        || Car.wheels(place) == Wheels.REMOVED;
  }

  private boolean fits(int index) {
    return Car.wheels(places.get(index)) == Wheels.FITTED;
  }

  private boolean isByWheels(int index) {
    return places.get(index).step() instanceof Step.Load load && load.byWheels();
  }

  private boolean shares(int index, Set<Side> wheels) {
    Set<Side> shared = EnumSet.copyOf(places.get(index).wheels());
    shared.retainAll(wheels);
    return !shared.isEmpty();
  }
}
