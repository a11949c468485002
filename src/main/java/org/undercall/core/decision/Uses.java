package org.undercall.core.decision;

import java.util.Optional;

/**
 * How often a part was tightened whose uses are counted.
 *
 * @param said how often before this time, as read back; 0 of a new one; empty if it is not known
 * @param least how often at least, with what was closed here
 */
record Uses(Optional<Integer> said, int least) {
  static final Uses UNKNOWN = new Uses(Optional.empty(), 0);

  /** A new part, or a used one with what was said of it. */
  Uses with(int before) {
    return new Uses(Optional.of(before), least);
  }

  /** A stage was closed: this is a use more than before. */
  Uses tightened() {
    return said.map(before -> new Uses(said, before + 1)).orElse(this);
  }

  /** Loose again, or what was said of it taken back. */
  Uses unsaid() {
    return new Uses(Optional.empty(), least);
  }
}
