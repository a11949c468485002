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
  /** Another load condition was said to be so. */
  CONTRADICTED,
  /** A measured height is not that of ride height. */
  HEIGHT_OUTSIDE,
  /** The height that heights are compared with was noted anew or withdrawn. */
  REFERENCE_CHANGED,
  /** A wheel was taken off. */
  WHEEL_OFF,
  OTHER_SIDE_STARTED,
  STEP_CHANGES_LOAD,
  /** It was confirmed too long ago. */
  TOO_OLD,
  /** The confirmation was taken back. */
  TAKEN_BACK,
  /** The work was held for a while. */
  WORK_HELD,
  /** The program did not run for a while, and saw nothing. */
  PROGRAM_RESTARTED,
  /** The machine may have slept for a while, and heard nothing. */
  PROGRAM_ASLEEP
}
