package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.term.Finding;

/**
 * What was noted.
 *
 * @param notes what each note reports, in order; empty for a plain note
 */
public record Found(List<Optional<Finding>> notes) {
  static final Found NOTHING = new Found(List.of());

  public Found {
    notes = List.copyOf(notes);
  }

  /** With one note more. */
  Found and(Optional<Finding> about) {
    List<Optional<Finding>> more = new ArrayList<>(notes);
    more.add(about);
    return new Found(more);
  }

  Found withoutLast() {
    return notes.isEmpty() ? this : new Found(notes.subList(0, notes.size() - 1));
  }

  /** How many notes report this. */
  int count(Finding finding) {
    return (int) notes.stream().filter(Optional.of(finding)::equals).count();
  }
}
