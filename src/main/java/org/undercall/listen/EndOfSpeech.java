package org.undercall.listen;

import java.util.Set;
import java.util.function.Supplier;
import org.undercall.core.intent.IntentKind;

/**
 * Decides that a phrase has ended before the recogniser does. What the recogniser itself takes for
 * the end always is one: it forgets the words with the next sound.
 */
public interface EndOfSpeech {

  /** A new phrase may begin now, of what is allowed. */
  void begin(Set<IntentKind> allowed);

  /**
   * Looks at one more piece of sound, which the recogniser has taken already.
   *
   * @param millis how long it is
   * @param speech whether it holds speech
   * @param words asks for the words so far
   * @return whether the phrase seems to have ended; then the final words are to be shown to {@link
   *     #holds}
   */
  boolean ended(int millis, boolean speech, Supplier<String> words);

  /** Whether the phrase has ended, now that its final words are known. */
  boolean holds(String finalWords);

  /** Leaves it to the recogniser: about 0.8 s after the last word with a word list. */
  static EndOfSpeech byRecogniser() {
    return new EndOfSpeech() {
      @Override
      public void begin(Set<IntentKind> allowed) {}

      @Override
      public boolean ended(int millis, boolean speech, Supplier<String> words) {
        return false;
      }

      @Override
      public boolean holds(String finalWords) {
        return true;
      }
    };
  }
}
