package org.undercall.core.intent;

/** A unit that may be said after a number. */
public enum SpokenUnit {
  NEWTON_METRES,
  FOOT_POUNDS,
  INCH_POUNDS,
  DEGREES,
  /** Degrees and minutes, as a number of minutes. */
  MINUTES,
  MILLIMETRES,
  INCHES,
  BAR,
  KILOMETRES
}
