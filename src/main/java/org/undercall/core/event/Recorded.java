package org.undercall.core.event;

import java.util.List;
import java.util.Optional;

/**
 * One decision as it stands in the log.
 *
 * @param seq number of the decision, from 1
 * @param at when it was made
 * @param heard what was heard, empty for the program's own acts
 * @param events what happened, in order
 * @param said the reply, as spoken
 */
public record Recorded(
    long seq, Moment at, Optional<Heard> heard, List<SessionEvent> events, String said) {

  /**
   * What was heard or typed.
   *
   * @param text the words
   * @param intent the intent they were taken for
   * @param confidence smallest confidence of a word, from 0 to 1
   * @param how {@code spoken}, {@code typed} or {@code pressed}
   * @param clip its sound; empty if none was kept
   */
  public record Heard(
      String text, String intent, double confidence, String how, Optional<Clip> clip) {
    /** Without its sound. */
    public Heard(String text, String intent, double confidence, String how) {
      this(text, intent, confidence, how, Optional.empty());
    }

    /** The same with this sound, or with none. */
    public Heard with(Optional<Clip> sound) {
      return new Heard(text, intent, confidence, how, sound);
    }
  }

  public Recorded {
    events = List.copyOf(events);
  }
}
