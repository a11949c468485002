package org.undercall.core.fastening.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Area;
import org.undercall.core.fastening.Elasticity;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.ThreadSize;

/** What a worked example is given, by its symbols, in the units of {@link Scale}. */
final class Given {
  private final Map<String, Double> inputs = new HashMap<>();
  private final Map<String, Double> printed = new HashMap<>();

  private Given() {}

  static Given of(List<CSVRecord> rows) {
    Given given = new Given();
    for (CSVRecord row : rows) {
      if (Scale.known(row.get("unit"))) {
        boolean input = row.get("kind").equals("input");
        (input ? given.inputs : given.printed)
            .put(row.get("symbol"), Rows.number(row, "value") * Scale.of(row.get("unit")));
      }
    }
    return given;
  }

  boolean has(String symbol) {
    return inputs.containsKey(symbol);
  }

  double at(String symbol) {
    Double value = inputs.get(symbol);
    if (value == null) {
      throw new IllegalStateException("not given: " + symbol);
    }
    return value;
  }

  /** A result as it is printed, where the example goes on with it and we have none. */
  double printed(String symbol) {
    return printed.get(symbol);
  }

  Length length(String symbol) {
    return Length.mm(at(symbol));
  }

  Area area(String symbol) {
    return new Area(at(symbol));
  }

  Force force(String symbol) {
    return new Force(at(symbol));
  }

  Friction friction(String symbol) {
    return Friction.of(at(symbol));
  }

  Elasticity elasticity(String symbol) {
    return Elasticity.ofMegapascals(at(symbol));
  }

  /** A thread of a pitch whose pitch diameter is given. */
  ThreadSize thread(String pitchDiameter, String pitch) {
    double diameter = at(pitchDiameter) + 0.75 * Math.sqrt(0.75) * at(pitch);
    return new ThreadSize(Length.mm(diameter), length(pitch));
  }

  Seat seat(String bearing, String hole) {
    return Seat.of(at(bearing), at(hole));
  }
}
