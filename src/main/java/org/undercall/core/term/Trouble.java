package org.undercall.core.term;

/** What went wrong at a fastener or a part. Common terms of the trade, no source. */
public enum Trouble {
  THREAD_STRIPPED,
  CROSS_THREADED,
  BROKEN,
  SEIZED,
  /** It turns on without the torque rising, or was felt to yield. */
  KEEPS_TURNING,
  TURNED_TOO_FAR,
  TORQUE_NOT_REACHED,
  WRONG_HARDWARE,
  /** The heads of a set carry different markings. */
  MARKINGS_DIFFER,
  PART_MISSING,
  SEAT_DAMAGED
}
