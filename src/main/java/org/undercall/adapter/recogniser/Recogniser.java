package org.undercall.adapter.recogniser;

import org.undercall.core.intent.RecognisedPhrase;

/**
 * Turns sound into phrases. The thread that made it owns it; no other may use it.
 *
 * <p>Sound is as {@link org.undercall.sound.Frames} gives it.
 */
public interface Recogniser extends AutoCloseable {

  /**
   * Takes more sound.
   *
   * @param length how many bytes of the array count; even, and not more than there are
   * @return whether a phrase has ended; then ask {@link #result}
   */
  boolean accept(byte[] sound, int length);

  /** The phrase that has just ended; no words if there was only noise. */
  RecognisedPhrase result();

  /** Ends the phrase now and gives what was heard of it; more sound may follow. */
  RecognisedPhrase finalResult();

  /** The words heard so far in this phrase; may change as more sound comes. */
  String partial();

  /** Frees it. Closing twice does nothing. */
  @Override
  void close();
}
