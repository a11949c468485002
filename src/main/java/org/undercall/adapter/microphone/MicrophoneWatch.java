package org.undercall.adapter.microphone;

/** Is told how a microphone fares, by whichever thread takes its sound; must return at once. */
public interface MicrophoneWatch {

  /**
   * The microphone is gone; it is looked for until it is back.
   *
   * @param why one line that starts with a code
   */
  void lost(String why);

  /** Its sound comes again. */
  void back();

  /**
   * Sound was not taken in time and is lost; told once, at the first loss.
   *
   * @param millis how much is lost so far, in milliseconds
   */
  void dropped(long millis);
}
