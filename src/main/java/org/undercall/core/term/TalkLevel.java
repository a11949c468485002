package org.undercall.core.term;

/** How much the program says. What refuses, cancels, warns or is at stake is said in each. */
public enum TalkLevel {
  /** Everything whole, each time. */
  FULL,
  /** Whole when it is new, and in brief when it was heard before in this job. */
  NORMAL,
  /** In brief from the beginning. */
  SHORT;

  /** The level with more words; the last one is itself. */
  public TalkLevel more() {
    return this == SHORT ? NORMAL : FULL;
  }

  /** The level with fewer words; the last one is itself. */
  public TalkLevel less() {
    return this == FULL ? NORMAL : SHORT;
  }
}
