package org.undercall.core.decision;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * What is known of the torque wrenches.
 *
 * @param named the name of the one that is used, as it was said; empty if none was
 * @param excused the names of those that are used although their calibration is over
 */
public record Bench(Optional<String> named, Set<String> excused) {
  static final Bench NOTHING_SAID = new Bench(Optional.empty(), Set.of());

  public Bench {
    excused = Set.copyOf(excused);
  }

  Bench using(String wrench) {
    return new Bench(Optional.of(wrench), excused);
  }

  Bench excusing(String wrench) {
    Set<String> more = new HashSet<>(excused);
    more.add(wrench);
    return new Bench(named, more);
  }
}
