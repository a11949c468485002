package org.undercall.core.fastening;

import org.undercall.core.term.Refused;

/** Checks the values that make up a record. */
final class Require {
  private Require() {}

  /** The value, if it is finite and more than zero; otherwise FAS-001. */
  static double positive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new Refused("FAS-001", what, value + " " + unit, "more than zero and finite");
    }
    return value;
  }

  /** The value, if it is finite and not negative; otherwise FAS-002. */
  static double notNegative(String what, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new Refused("FAS-002", what, value + " " + unit, "zero or more and finite");
    }
    return value;
  }

  /** The value, if it is finite; otherwise FAS-003. */
  static double finite(String what, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw new Refused("FAS-003", what, value + " " + unit, "a finite number");
    }
    return value;
  }

  /** Refuses with FAS-004 unless the second length is larger than the first. */
  static void larger(String what, Length smaller, Length larger) {
    if (larger.compareTo(smaller) <= 0) {
      throw new Refused("FAS-004", what, larger.toString(), "more than " + smaller);
    }
  }
}
