package org.undercall.core.term;

/** A unit that a measured value may be called in. */
public enum MeasureUnit {
  MILLIMETRE("mm"),
  INCH("in"),
  DEGREE("°"),
  /**
   * A sixtieth of a degree: how an angle is called in degrees and minutes, never a unit of a file.
   */
  MINUTE("′"),
  BAR("bar"),
  KILOMETRE("km");

  private final String symbol;

  MeasureUnit(String symbol) {
    this.symbol = symbol;
  }

  /** The symbol as written, for example {@code mm}. */
  public String symbol() {
    return symbol;
  }
}
