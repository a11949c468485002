package org.undercall.core.term;

/** What makes it hard to understand what is said. */
public enum HearingTrouble {
  /** The microphone is overdriven. */
  OVERDRIVEN,
  /** The voice is too quiet. */
  TOO_QUIET,
  /** The noise is too loud beside the voice. */
  TOO_LOUD
}
