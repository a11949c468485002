package org.undercall.command.clips;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;

/**
 * A clip that the log names.
 *
 * @param decision the decision about it
 * @param clip its name and hash
 */
record ListedClip(Recorded decision, Clip clip) {

  static List<ListedClip> in(List<Recorded> log) {
    return log.stream().flatMap(decision -> of(decision).stream()).toList();
  }

  private static Optional<ListedClip> of(Recorded decision) {
    return decision
        .heard()
        .flatMap(Recorded.Heard::clip)
        .map(clip -> new ListedClip(decision, clip));
  }

  Recorded.Heard heard() {
    return decision.heard().orElseThrow();
  }

  /** Whether it is the sound of a note that was kept. */
  boolean isNote() {
    return decision.events().stream().anyMatch(e -> e instanceof SessionEvent.NoteKept);
  }
}
