package org.undercall;

import org.undercall.adapter.microphone.Frame;
import org.undercall.adapter.recogniser.Recogniser;

/**
 * Decides that a phrase has ended before the recogniser does. What the recogniser itself takes for
 * the end always is one: it forgets the words with the next sound.
 */
public interface EndOfSpeech {

  /** A new phrase may begin now. */
  void begin();

  /**
   * Looks at one more frame, which the recogniser has taken already.
   *
   * @param recogniser to ask for the words so far
   * @return whether the phrase has ended
   */
  boolean ended(Frame frame, Recogniser recogniser);

  /** Leaves it to the recogniser: about 0.9 s after the last word with a word list. */
  static EndOfSpeech byRecogniser() {
    return new EndOfSpeech() {
      @Override
      public void begin() {}

      @Override
      public boolean ended(Frame frame, Recogniser recogniser) {
        return false;
      }
    };
  }
}
