package org.undercall.core.decision;

import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/**
 * What {@link Promises} keeps of the car as a whole and of the order of the steps, in its own way:
 * from the events and the procedure, not from what the program thinks of the car.
 *
 * @param off the wheels that were taken off and not put on since
 * @param lifted whether the car was off its wheels
 * @param raised whether it is, as far as that was said
 * @param outOfOrder the steps that may be closed before others
 * @param undone the steps that no longer hold, each to be open by the end of the decision
 */
record CarPromises(
    Set<Side> off, boolean lifted, boolean raised, Set<StepRef> outOfOrder, Set<StepRef> undone) {
  static final CarPromises START = new CarPromises(Set.of(), false, false, Set.of(), Set.of());

  void check(Promises promises, SessionEvent event) {
    if (event instanceof SessionEvent.LoadConfirmed e
        && e.proof() == LoadProof.WHEELS_CARRY_THE_CAR) {
      Promises.require(on(Set.of(e.side())), "a wheel that is off carries nothing", event);
    } else if (event instanceof SessionEvent.RideHeightNoted) {
      Promises.require(!lifted, "a reference height from before the car was lifted", event);
    } else if (event instanceof SessionEvent.StageClosed e && isWheel(promises.place(e.step()))) {
      Promises.require(
          on(promises.place(e.step()).wheels()), "a wheel tightened while it is on", event);
      Promises.require(
          !raised || outOfOrder.contains(e.step()), "a wheel tightened on the ground", event);
    } else if (event instanceof SessionEvent.PositionsClosed e
        && isWheel(promises.place(e.step()))) {
      Promises.require(
          on(promises.place(e.step()).wheels()), "a wheel tightened while it is on", event);
    } else if (event instanceof SessionEvent.StepClosed e) {
      checkOrder(promises, promises.place(e.step()));
    } else if (event instanceof SessionEvent.SessionEnded e && e.complete()) {
      Set<Side> fitted = EnumSet.noneOf(Side.class);
      promises.walk().places().stream()
          .filter(p -> wheels(p) == Wheels.FITTED)
          .forEach(p -> fitted.addAll(p.wheels()));
      fitted.retainAll(off);
      Promises.require(fitted.isEmpty(), "complete with the wheels on", event);
    }
  }

  private void checkOrder(Promises promises, Walk.Place place) {
    Bearing bearing = place.step().head().bearing();
    boolean excused = outOfOrder.contains(place.ref());
    for (int i : promises.walk().named(place, bearing.after())) {
      StepRef first = promises.walk().places().get(i).ref();
      boolean closed = first.equals(place.ref()) || promises.book(first).closed();
      Promises.require(excused || closed, "what comes first is closed first", place.ref());
    }
    if (bearing.roadTest()) {
      for (Walk.Place before : promises.walk().places()) {
        if (before.ref().equals(place.ref())) {
          break;
        }
        boolean bearsLoad = before.step() instanceof Step.Fasten || wheels(before) == Wheels.FITTED;
        Promises.require(
            excused || !bearsLoad || promises.book(before.ref()).closed(),
            "a road test with every fastener closed",
            before.ref());
      }
      Promises.require(on(place.wheels()), "a road test on wheels", place.ref());
    }
  }

  /** What was undone is open. */
  void checkAll(Promises promises) {
    undone.forEach(
        ref -> Promises.require(!promises.book(ref).closed(), "what is undone is open", ref));
  }

  CarPromises after(Walk walk, SessionEvent event) {
    if (event instanceof SessionEvent.StepClosed e) {
      return done(walk, walk.places().get(walk.indexOf(e.step())));
    }
    if (event instanceof SessionEvent.LoadConfirmed e) {
      boolean up =
          e.proof() == LoadProof.KNUCKLE_JACKED_BODY_LIFTING
              || e.proof() == LoadProof.SUSPENSION_HANGS_FREE;
      boolean down = e.proof() == LoadProof.WHEELS_CARRY_THE_CAR;
      return new CarPromises(off, lifted || up, up || (raised && !down), outOfOrder, undone);
    }
    if (event instanceof SessionEvent.LoadChanged e) {
      boolean up = e.change() == LoadChange.CAR_RAISED;
      boolean unknown =
          Set.of(
                  LoadChange.CAR_LOWERED,
                  LoadChange.JACK_MOVED,
                  LoadChange.DANGER_CALLED,
                  LoadChange.PROGRAM_RESTARTED,
                  LoadChange.PROGRAM_ASLEEP)
              .contains(e.change());
      return new CarPromises(off, lifted || up, up || (raised && !unknown), outOfOrder, undone);
    }
    if (event instanceof SessionEvent.StepReopened e) {
      return opened(walk, e.step());
    }
    if (event instanceof SessionEvent.ReopenedTight e) {
      return opened(walk, e.step());
    }
    if (event instanceof SessionEvent.ClosingLapsed e) {
      return opened(walk, e.step());
    }
    if (event instanceof SessionEvent.ClosingTakenBack e) {
      return raisedOrNot(walk, e.step());
    }
    if (event instanceof SessionEvent.OutOfOrderNoted e) {
      Set<StepRef> more = new HashSet<>(outOfOrder);
      more.add(e.step());
      return new CarPromises(off, lifted, raised, Set.copyOf(more), undone);
    }
    boolean taken =
        event instanceof SessionEvent.SayingTakenBack e && e.what().equals("OUT_OF_ORDER_NOTED");
    return taken ? without(((SessionEvent.SayingTakenBack) event).step()) : this;
  }

  private CarPromises opened(Walk walk, StepRef step) {
    return without(step).raisedOrNot(walk, step);
  }

  /** How the car stands is not known once a step that raised or lowered it is open again. */
  private CarPromises raisedOrNot(Walk walk, StepRef step) {
    boolean lift =
        walk.places().get(walk.indexOf(step)).step().head().bearing().car()
            != Bearing.Lift.LEFT_AS_IT_IS;
    return new CarPromises(off, lifted, raised && !lift, outOfOrder, undone);
  }

  private CarPromises without(StepRef step) {
    Set<StepRef> less = new HashSet<>(outOfOrder);
    less.remove(step);
    return new CarPromises(off, lifted, raised, Set.copyOf(less), undone);
  }

  private CarPromises done(Walk walk, Walk.Place place) {
    Set<Side> next = EnumSet.noneOf(Side.class);
    next.addAll(off);
    Set<StepRef> open = new HashSet<>();
    Wheels wheels = wheels(place);
    if (wheels == Wheels.REMOVED) {
      next.addAll(place.wheels());
      walk.places().stream()
          .filter(p -> isWheel(p) || wheels(p) == Wheels.FITTED)
          .filter(p -> !Collections.disjoint(p.wheels(), place.wheels()))
          .forEach(p -> open.add(p.ref()));
    } else if (wheels == Wheels.FITTED) {
      next.removeAll(place.wheels());
    }
    Bearing bearing = place.step().head().bearing();
    walk.named(place, bearing.undoes()).forEach(i -> open.add(walk.places().get(i).ref()));
    open.remove(place.ref());
    boolean up = bearing.car() == Bearing.Lift.RAISED || wheels == Wheels.REMOVED;
    if (up) {
      walk.places().stream()
          .filter(p -> p.step().head().bearing().car() == Bearing.Lift.LOWERED)
          .forEach(p -> open.add(p.ref()));
      open.remove(place.ref());
    }
    boolean down = bearing.car() == Bearing.Lift.LOWERED && wheels != Wheels.REMOVED;
    return new CarPromises(
        Set.copyOf(next), lifted || up, up || (raised && !down), outOfOrder, Set.copyOf(open));
  }

  private boolean on(Set<Side> sides) {
    return sides.contains(Side.CAR) ? off.isEmpty() : Collections.disjoint(off, sides);
  }

  private static boolean isWheel(Walk.Place place) {
    return place.step() instanceof Step.Fasten fasten && fasten.fastener().holdsWheel();
  }

  private static Wheels wheels(Walk.Place place) {
    return place.step() instanceof Step.Do work ? work.wheels() : Wheels.LEFT_AS_THEY_ARE;
  }

  /** Without a check that was made, for the next decision. */
  CarPromises settled() {
    return new CarPromises(off, lifted, raised, outOfOrder, Set.of());
  }
}
