package org.undercall.core.procedure;

/** The state of thread and seat that the specification assumes. */
public enum Lubrication {
  DRY,
  OILED,
  GREASED,
  THREADLOCKER,
  /** As delivered with the new part, not to be changed. */
  AS_DELIVERED,
  UNSTATED
}
