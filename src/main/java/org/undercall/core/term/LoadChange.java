package org.undercall.core.term;

/** Something that can change how the suspension is loaded, and so cancels a confirmed condition. */
public enum LoadChange {
  CAR_RAISED,
  CAR_LOWERED,
  JACK_MOVED,
  /** Something slipped, moved or fell, or a stop was called for. */
  DANGER_CALLED,
  /** What was confirmed was said not to be so. */
  DENIED,
  OTHER_SIDE_STARTED,
  STEP_CHANGES_LOAD,
  /** The program did not run for a while, and saw nothing. */
  PROGRAM_RESTARTED,
  /** The machine may have slept for a while, and heard nothing. */
  PROGRAM_ASLEEP
}
