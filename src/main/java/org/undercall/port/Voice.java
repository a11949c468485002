package org.undercall.port;

/**
 * Where replies go: a speaker, a WAV file, the screen. One thread uses it, but for stop and hold.
 */
public interface Voice extends AutoCloseable {

  /** Says the words and returns when they have been said or were stopped. */
  void say(String words);

  /** Falls silent at once: the rest of what is being said is not said. Any thread may call it. */
  default void stop() {}

  /**
   * Falls silent at once, as one does who is talked over, until {@link #goOn}; then the sentence is
   * said once more from its beginning. Any thread may call it; while nothing is said it does
   * nothing.
   */
  default void hold() {}

  /** Goes on after {@link #hold}. Any thread may call it. */
  default void goOn() {}

  /**
   * Sounds a short tone, if it has any. Only {@link Signal#NOT_HEARD} may be asked for by any
   * thread, also while words are said: then it sounds in them.
   */
  default void signal(Signal signal) {}

  /**
   * Tries once more to say what failed to be said last, if there is anything and it is time.
   *
   * @return whether it was said
   */
  default boolean retry() {
    return false;
  }

  @Override
  void close();
}
