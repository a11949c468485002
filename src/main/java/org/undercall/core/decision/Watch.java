package org.undercall.core.decision;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who worked on a step that may need a second person, and whether one saw it.
 *
 * @param hands who closed stages of it, or said that it is done; none of them can be its witness
 * @param asked whether the work is done, so that a witness is waited for
 * @param by who saw it; empty while nobody did
 */
public record Watch(Set<String> hands, boolean asked, Optional<String> by) {
  static final Watch NOBODY = new Watch(Set.of(), false, Optional.empty());

  public Watch {
    hands = Set.copyOf(hands);
  }

  /** Whether the work is done and nobody has seen it yet. */
  public boolean waits() {
    return asked && by.isEmpty();
  }

  /** One more who worked on it. */
  Watch worked(String technician) {
    Set<String> more = new TreeSet<>(hands);
    more.add(technician);
    return new Watch(more, asked, by);
  }

  /** The work is done, by this technician among others; whoever saw it before does not count. */
  Watch asks(String technician) {
    return new Watch(worked(technician).hands(), true, Optional.empty());
  }

  Watch seen(String witness) {
    return new Watch(hands, asked, Optional.of(witness));
  }

  /** Open again: nobody saw what is still to be done. */
  Watch open() {
    return new Watch(hands, false, Optional.empty());
  }
}
