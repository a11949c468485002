package org.undercall.core.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;

/** Walks the procedure and knows how the car stands, which wheels are off and what is undone. */
final class CarRules {
  private static final List<String> FASTENERS = List.of("bolt", "nut", "screw");

  private final List<Walk.Place> places;
  private final List<Spot> spots;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Side, Walk.Place> off = new EnumMap<>(Side.class);
  private Bearing.Lift car = Bearing.Lift.LEFT_AS_IT_IS;

  private CarRules(Procedure procedure, List<Spot> spots) {
    this.places = Walk.of(procedure).places();
    this.spots = spots;
  }

  static List<Finding> check(Procedure procedure, List<Spot> spots) {
    return new CarRules(procedure, spots).walked();
  }

  private List<Finding> walked() {
    for (int i = 0; i < places.size(); i++) {
      Walk.Place place = places.get(i);
      load(place);
      inTheAir(place);
      undone(place, places.subList(i + 1, places.size()));
      done(place);
    }
    Map<Step, Set<String>> stays = new LinkedHashMap<>();
    off.forEach(
        (side, place) ->
            stays.computeIfAbsent(place.step(), step -> new TreeSet<>()).add(side.words()));
    stays.forEach(
        (step, sides) -> {
          String found = "stays off: " + String.join(" and ", sides);
          add(step, "wheelsOn", CheckRule.WHEEL_STAYS_OFF, found, "a later step that fits it");
        });
    return findings;
  }

  private void done(Walk.Place place) {
    Bearing.Lift lift = place.step().head().bearing().car();
    car = lift == Bearing.Lift.LEFT_AS_IT_IS ? car : lift;
    if (place.step() instanceof Step.Do work && work.wheels() == Wheels.REMOVED) {
      place.wheels().forEach(side -> off.putIfAbsent(side, place));
    } else if (place.step() instanceof Step.Do work && work.wheels() == Wheels.FITTED) {
      off.keySet().removeAll(place.wheels());
    }
  }

  /** One side can be jacked with its wheel off, the whole car cannot; nothing hangs on wheels. */
  private void load(Walk.Place place) {
    LoadCondition needed = needs(place.step());
    String field = place.step() instanceof Step.Load ? "condition" : "fastener/needs";
    if (needed == LoadCondition.RIDE_HEIGHT && place.ref().side() == Side.CAR && !off.isEmpty()) {
      String found = "ride height of the whole car with a wheel off";
      add(
          place.step(),
          field,
          CheckRule.LOAD_CANNOT_HOLD,
          found,
          "the wheels on, or a phase per side");
    } else if (needed == LoadCondition.FULL_DROOP && car == Bearing.Lift.LOWERED) {
      String found = "full droop with the car on its wheels";
      add(
          place.step(),
          field,
          CheckRule.LOAD_CANNOT_HOLD,
          found,
          "a step before it that raises the car");
    }
  }

  /** On the ground a wheel stands still and its bolts pull it against the hub evenly. */
  private void inTheAir(Walk.Place place) {
    if (car == Bearing.Lift.RAISED && place.step() instanceof Step.Fasten fasten) {
      WheelGuess wheel = WheelGuess.of(fasten.fastener());
      if (wheel.wheel()) {
        String found = wheel.told("the car is raised", fasten.fastener());
        String expected = "a step before it with \"car\": \"lowered\"";
        add(place.step(), "fastener", CheckRule.WHEEL_IN_THE_AIR, found, expected);
      }
    }
  }

  /** Steps that raise or lower the car and do not say that the load changes. */
  static List<Finding> lifts(List<Spot> spots) {
    return spots.stream()
        .filter(spot -> spot.step().head().bearing().car() != Bearing.Lift.LEFT_AS_IT_IS)
        .filter(spot -> !spot.step().head().changesLoad())
        .map(
            spot ->
                spot.at(
                    "car",
                    CheckRule.LIFT_KEEPS_LOAD,
                    Kebab.of(spot.step().head().bearing().car()) + " without \"changesLoad\"",
                    "\"changesLoad\": true"))
        .toList();
  }

  private static LoadCondition needs(Step step) {
    if (step instanceof Step.Fasten fasten) {
      return fasten.fastener().needs();
    }
    return step instanceof Step.Load load ? load.condition() : LoadCondition.ANY;
  }

  private void undone(Walk.Place place, List<Walk.Place> later) {
    String title = place.step().head().title();
    boolean undoes = Instruction.undoes(title);
    List<String> kinds = FASTENERS.stream().filter(kind -> Spot.word(title, kind)).toList();
    if (!(place.step() instanceof Step.Do) || !undoes || kinds.isEmpty()) {
      return;
    }
    boolean tightened =
        later.stream()
            .filter(p -> shares(p, place))
            .flatMap(p -> p.step() instanceof Step.Fasten f ? Stream.of(f) : Stream.empty())
            .map(f -> f.fastener().name() + " " + f.head().title())
            .anyMatch(name -> kinds.stream().anyMatch(kind -> Spot.word(name, kind)));
    if (!tightened) {
      String expected = "a later step that tightens it";
      String found = '"' + title + "\", guessed from its words";
      add(place.step(), "title", CheckRule.UNDONE_NOT_TIGHTENED, found, expected);
    }
  }

  private static boolean shares(Walk.Place one, Walk.Place other) {
    return one.ref().side() == other.ref().side()
        || one.ref().side() == Side.CAR
        || other.ref().side() == Side.CAR;
  }

  private void add(Step step, String field, CheckRule rule, String found, String expected) {
    spots.stream()
        .filter(spot -> spot.step().equals(step))
        .forEach(spot -> findings.add(spot.at(field, rule, found, expected)));
  }
}
