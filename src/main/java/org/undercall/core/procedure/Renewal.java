package org.undercall.core.procedure;

/** Why new hardware is needed each time. Any reason asks for it. */
public enum Renewal {
  /** Its lock wears out: a nut with a nylon ring or a crimped end. */
  SELF_LOCKING,
  /** Its thread carries a glue in capsules, which break as it is tightened. */
  MICRO_ENCAPSULATED,
  /** It was tightened to its yield and keeps the stretch. */
  YIELDED,
  /** The maker says so. */
  MAKER
}
