package org.undercall.core.check;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.Side;

/**
 * Walks the procedure and knows on which side the wheels are off.
 *
 * <p>Wheels are taken to be on until a step takes them off. Wheel fasteners need the wheels on, and
 * so does a load condition that wheels bring about.
 */
final class WheelsOnRule {
  private WheelsOnRule() {}

  static List<Finding> check(Procedure procedure, List<Spot> spots) {
    Map<Spot, Set<Side>> missing = new LinkedHashMap<>();
    Set<Side> off = EnumSet.noneOf(Side.class);
    for (Walk.Place place : Walk.of(procedure).places()) {
      Set<Side> sides = EnumSet.copyOf(place.wheels());
      if (place.step() instanceof Step.Do work && work.wheels() == Wheels.REMOVED) {
        off.addAll(sides);
      } else if (place.step() instanceof Step.Do work && work.wheels() == Wheels.FITTED) {
        off.removeAll(sides);
      }
      sides.retainAll(off);
      spots.stream()
          .filter(spot -> spot.step().equals(place.step()) && needsWheels(spot))
          .forEach(spot -> missing.computeIfAbsent(spot, s -> new TreeSet<>()).addAll(sides));
    }
    missing.values().removeIf(Set::isEmpty);
    return missing.entrySet().stream().map(e -> finding(e.getKey(), e.getValue())).toList();
  }

  private static Finding finding(Spot spot, Set<Side> missing) {
    String sides = missing.stream().map(Side::words).collect(Collectors.joining(" and "));
    String field = spot.step() instanceof Step.Load ? "byWheels" : "fastener";
    String expected = "a step before it with \"wheelsOn\": true";
    String found = "wheels off: " + sides;
    String told = spot.fastener().map(f -> spot.wheel().told(found, f)).orElse(found);
    return spot.at(field, CheckRule.WHEELS_OFF, told, expected);
  }

  private static boolean needsWheels(Spot spot) {
    return spot.wheel().wheel() || (spot.step() instanceof Step.Load load && load.byWheels());
  }
}
