package org.undercall.core.review;

import java.util.Optional;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;

/** Which clip holds the sound of what an event says. */
final class ClipTrace {
  private Optional<String> current = Optional.empty();
  private Optional<String> measure = Optional.empty();

  void read(Recorded decision) {
    current = decision.heard().flatMap(Recorded.Heard::clip).map(Clip::file);
  }

  /** The clip's name; for a measured value that of the call, not of the answer to its read-back. */
  Optional<String> of(SessionEvent event) {
    if (event instanceof SessionEvent.MeasureCalled) {
      measure = current;
    }
    return event instanceof SessionEvent.Measured ? measure : current;
  }
}
