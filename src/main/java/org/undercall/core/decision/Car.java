package org.undercall.core.decision;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Side;

/**
 * What is known of the car, from events alone. What nobody said is not known, and never assumed.
 *
 * @param stance how it stands
 * @param wheels what is known of the left and of the right wheel; absent if nothing was said of it
 * @param lifted whether it was off its wheels at any time in this session
 */
public record Car(Stance stance, Map<Side, Wheel> wheels, boolean lifted) {

  /** How the car stands. */
  public enum Stance {
    UNKNOWN,
    ON_WHEELS,
    /** On stands or on a lift. */
    RAISED,
    /** The same, with a jack under one knuckle. */
    JACKED
  }

  /** Whether a wheel is on its hub. */
  public enum Wheel {
    ON,
    OFF,
    /** The step that took it off or put it on is open again. */
    DOUBTED
  }

  static final Car NOT_KNOWN = new Car(Stance.UNKNOWN, Map.of(), false);

  /** Whether nothing speaks against all of these wheels being on. */
  boolean hasOn(Set<Side> sides) {
    return sides.stream().noneMatch(side -> wheels.getOrDefault(side, Wheel.ON) != Wheel.ON);
  }

  /** Whether it is known to be off its wheels. */
  boolean isUp() {
    return stance == Stance.RAISED || stance == Stance.JACKED;
  }

  /** After a step was done. */
  Car done(Walk.Place place) {
    Bearing.Lift lift = place.step().head().bearing().car();
    Car after =
        switch (lift) {
          case LEFT_AS_IT_IS -> this;
          case RAISED -> raised();
          case LOWERED -> new Car(Stance.ON_WHEELS, wheels, lifted);
        };
    return switch (wheels(place)) {
      case LEFT_AS_THEY_ARE -> after;
      case FITTED -> after.with(place.wheels(), Wheel.ON);
      case REMOVED -> after.raised().with(place.wheels(), Wheel.OFF);
    };
  }

  /** After a step was opened again: what it did to the car is not known any more. */
  Car undone(Walk.Place place) {
    boolean lift = place.step().head().bearing().car() != Bearing.Lift.LEFT_AS_IT_IS;
    Car after = lift ? new Car(Stance.UNKNOWN, wheels, lifted) : this;
    Wheel brought = wheels(place) == Wheels.FITTED ? Wheel.ON : Wheel.OFF;
    Set<Side> doubted =
        wheels(place) == Wheels.LEFT_AS_THEY_ARE
            ? Set.of()
            : place.wheels().stream()
                .filter(side -> wheels.get(side) == brought)
                .collect(Collectors.toSet());
    return after.with(doubted, Wheel.DOUBTED);
  }

  /** After something was said that moves the car. */
  Car moved(LoadChange change) {
    return switch (change) {
      case CAR_RAISED -> raised();
      case CAR_LOWERED, JACK_MOVED, DANGER_CALLED, PROGRAM_RESTARTED, PROGRAM_ASLEEP ->
          new Car(Stance.UNKNOWN, wheels, lifted);
      default -> this;
    };
  }

  /** After a load condition was confirmed by a proof. */
  Car shown(LoadProof proof) {
    return switch (proof) {
      case WHEELS_CARRY_THE_CAR -> new Car(Stance.ON_WHEELS, wheels, lifted);
      case KNUCKLE_JACKED_BODY_LIFTING -> new Car(Stance.JACKED, wheels, true);
      case SUSPENSION_HANGS_FREE -> raised();
      case ARCH_HEIGHT_WITHIN_TOLERANCE -> this;
    };
  }

  private Car raised() {
    return new Car(Stance.RAISED, wheels, true);
  }

  private Car with(Set<Side> sides, Wheel wheel) {
    Map<Side, Wheel> next = new EnumMap<>(Side.class);
    next.putAll(wheels);
    sides.forEach(side -> next.put(side, wheel));
    return new Car(stance, Map.copyOf(next), lifted);
  }

  /** Whether doing a step raises or lowers the car, or takes wheels off or puts them on. */
  static boolean isMovedBy(Walk.Place place) {
    return place.step().head().bearing().car() != Bearing.Lift.LEFT_AS_IT_IS
        || wheels(place) != Wheels.LEFT_AS_THEY_ARE;
  }

  static Wheels wheels(Walk.Place place) {
    return place.step() instanceof Step.Do work ? work.wheels() : Wheels.LEFT_AS_THEY_ARE;
  }
}
