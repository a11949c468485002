package org.undercall.port;

import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;

/** Where phrases come from: a microphone, a WAV file, the keyboard. One thread uses it. */
public interface Ear extends AutoCloseable {

  /**
   * Waits for the next phrase.
   *
   * @param allowed what may be said now; the word list is made from it. With {@link
   *     IntentKind#NOTE_TEXT} in it, any word may be said.
   * @param patienceMillis how long to wait, in milliseconds of the source's own time
   * @return the phrase; empty if none came in that time
   * @throws EndOfInput if the source has come to its end
   */
  Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput;

  /**
   * Looks at the two phrases heard last as one, in the sound of both.
   *
   * @return the phrase as it is heard then; empty if the ear has no sound of them
   */
  default Optional<RecognisedPhrase> together(Heard first, Heard rest, Set<IntentKind> allowed) {
    return Optional.empty();
  }

  /** Whether a phrase has begun: words of it were heard, and its end was not. */
  default boolean isHearing() {
    return false;
  }

  /** Forgets what came in since the last phrase, for example the program's own voice. */
  default void forget() {}

  @Override
  void close();

  /** The source has come to its end. */
  final class EndOfInput extends Exception {
    private static final long serialVersionUID = 1L;

    /** The end, with nothing more to say. */
    public EndOfInput() {
      super("the source has come to its end");
    }
  }
}
