package org.undercall.core.term;

/** What a note is about, if it is more than a note. */
public enum Finding {
  FOUND_FAULT,
  EXTRA_WORK,
  PART_TO_ORDER
}
