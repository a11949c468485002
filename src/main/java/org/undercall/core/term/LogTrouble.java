package org.undercall.core.term;

/** What can be wrong with a log as a whole when it is opened again. */
public enum LogTrouble {
  /** Whole lines are gone from its end. */
  LINES_GONE,
  /** It is not the log that its sum was kept for. */
  SUM_DIFFERS,
  /** There is no sum to hold it against, or it cannot be read. */
  SUM_MISSING
}
