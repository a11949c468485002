package org.undercall.core.fastening.reference;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Our results of a worked example, by its symbols, in the units of {@link Scale}. */
final class Results {
  private final Map<String, Double> values = new HashMap<>();

  Results with(String symbol, double value) {
    values.put(symbol, value);
    return this;
  }

  Optional<Double> of(String symbol) {
    return Optional.ofNullable(values.get(symbol));
  }
}
