package org.undercall.port;

import java.util.Optional;
import org.undercall.core.event.Clip;

/** Where the sound of phrases is kept. A failure is its own to tell; it never stops a decision. */
public interface Clips {
  /** Keeps nothing. */
  Clips NONE = (seq, sound) -> Optional.empty();

  /**
   * Puts the sound of a phrase on the disk; when this returns, it is there.
   *
   * @param seq number of the decision about the phrase
   * @param sound samples as {@code sound/Frames} describes them
   * @return the clip as the log is to name it; empty if it was not kept
   */
  Optional<Clip> keep(long seq, byte[] sound);

  /** Deletes a clip whose decision could not be recorded. */
  default void discard(Clip clip) {}

  /** Whether phrases that were refused, asked again or left alone are kept too. */
  default boolean ofAll() {
    return false;
  }
}
