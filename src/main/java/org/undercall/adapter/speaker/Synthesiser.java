package org.undercall.adapter.speaker;

import org.undercall.sound.Pcm;

/** Turns words into sound. Any thread may use it. */
public interface Synthesiser extends AutoCloseable {

  /** The voice with all its settings, in one line; two with the same line sound the same. */
  String voice();

  /**
   * Speaks words into memory.
   *
   * @param words words as {@link SpokenText#plain} gives them, not blank
   * @throws UncheckedFault if it cannot; the code says why
   */
  Pcm speak(String words);

  @Override
  default void close() {}
}
