package org.undercall.core.procedure;

/** The state of thread and seat that the specification assumes. */
public enum Lubrication {
  DRY,
  OILED,
  GREASED,
  /** A paste or coating with solid lubricants: MoS2, graphite, PTFE, copper; or a wax. */
  PASTE,
  THREADLOCKER,
  /** As delivered with the new part, not to be changed. */
  AS_DELIVERED,
  UNSTATED
}
