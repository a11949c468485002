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

  /** The wrench that was read back with its excuse is the one that is used. */
  Bench excusing(String wrench) {
    Set<String> more = new HashSet<>(excused);
    more.add(wrench);
    return new Bench(Optional.of(wrench), more);
  }

  /** None is named any more; an excuse stands. */
  Bench unnamed() {
    return new Bench(Optional.empty(), excused);
  }
}
