package org.undercall.adapter.recogniser;

import org.undercall.core.intent.RecognisedPhrase;

/** Hears pieces of sound as a whole with all words of the language, for the thread that made it. */
@FunctionalInterface
public interface FreeHearing extends AutoCloseable {

  /**
   * Hears a piece.
   *
   * @param sound as {@link org.undercall.sound.Frames} gives it; of even length
   * @param startSeconds where in the source the sound starts; added to the times of the words
   * @return without words if none was heard
   */
  RecognisedPhrase of(byte[] sound, double startSeconds);

  /** Frees it, once. */
  @Override
  default void close() {}
}
