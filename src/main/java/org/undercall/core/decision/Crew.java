package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;

/**
 * Who may be there beside the technician.
 *
 * @param known the names that a witness can have; empty if any name will do
 * @param apprentice whose work is an apprentice's; empty if nobody's is
 */
public record Crew(List<String> known, Optional<String> apprentice) {
  static final Crew NOT_GIVEN = new Crew(List.of(), Optional.empty());

  public Crew {
    known = List.copyOf(known);
  }

  Crew knowing(List<String> names) {
    return new Crew(names, apprentice);
  }

  Crew teaching(String name) {
    return new Crew(known, Optional.of(name));
  }
}
