package org.undercall.core.difference;

/** How much a difference matters; the order is the one in which they are told. */
public enum Weight {
  /** A fastener is tightened no more. */
  GONE("removed"),
  /** Something is tightened otherwise, or something else is tightened. */
  TIGHTENS("tightens"),
  /** The work, its order, its tools or its cautions are others. */
  WORK("work"),
  /** The same torque, but the technician calls another number. */
  UNIT("unit"),
  /** Only words are others. */
  TEXT("text");

  private final String word;

  Weight(String word) {
    this.word = word;
  }

  /** As it is printed. */
  public String word() {
    return word;
  }
}
