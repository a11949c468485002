package org.undercall.core.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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
    List<Finding> findings = new ArrayList<>();
    Set<Side> off = EnumSet.noneOf(Side.class);
    for (Walk.Place place : Walk.of(procedure).places()) {
      Set<Side> sides = sides(place.ref().side());
      if (place.step() instanceof Step.Do work && work.wheels() == Wheels.REMOVED) {
        off.addAll(sides);
      } else if (place.step() instanceof Step.Do work && work.wheels() == Wheels.FITTED) {
        off.removeAll(sides);
      }
      Set<Side> missing = EnumSet.copyOf(sides);
      missing.retainAll(off);
      if (!missing.isEmpty()) {
        spots.stream()
            .filter(spot -> spot.step().equals(place.step()) && needsWheels(spot))
            .findFirst()
            .ifPresent(spot -> findings.add(finding(spot, missing)));
      }
    }
    return findings;
  }

  private static Finding finding(Spot spot, Set<Side> missing) {
    String sides = missing.toString().toLowerCase(Locale.ROOT);
    String field = spot.step() instanceof Step.Load ? "byWheels" : "fastener";
    String expected = "a step before it with \"wheelsOn\": true";
    return spot.at(field, CheckRule.WHEELS_OFF, "wheels off: " + sides, expected);
  }

  private static boolean needsWheels(Spot spot) {
    return spot.ofWheel() || (spot.step() instanceof Step.Load load && load.byWheels());
  }

  private static Set<Side> sides(Side side) {
    return side == Side.CAR ? EnumSet.of(Side.LEFT, Side.RIGHT) : EnumSet.of(side);
  }
}
