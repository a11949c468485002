package org.undercall.core.writing;

import org.undercall.core.intent.SpokenUnit;

/** Units as a table has them, and as they are read back. */
final class Units {
  private Units() {}

  /** What follows a number in a table. */
  static String after(SpokenUnit unit) {
    return switch (unit) {
      case NEWTON_METRES -> " Nm";
      case FOOT_POUNDS -> " lbf·ft";
      case INCH_POUNDS -> " lbf·in";
      case DEGREES -> "°";
      case MINUTES -> "′";
      case MILLIMETRES -> " mm";
      case INCHES -> " in";
      case BAR -> " bar";
      case KILOMETRES -> " km";
    };
  }

  /** As it is read back. */
  static String said(SpokenUnit unit) {
    return switch (unit) {
      case NEWTON_METRES -> "newton metres";
      case FOOT_POUNDS -> "foot pounds";
      case INCH_POUNDS -> "inch pounds";
      case DEGREES -> "degrees";
      case MINUTES -> "minutes";
      case MILLIMETRES -> "millimetres";
      case INCHES -> "inches";
      case BAR -> "bar";
      case KILOMETRES -> "kilometres";
    };
  }
}
