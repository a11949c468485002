package org.undercall.sound;

/** Takes the program's own voice out of what a microphone hears. */
public interface OwnVoice extends Playback, AutoCloseable {
  /** Leaves all as it is, for an ear that does not hear the loudspeaker. */
  static OwnVoice unheard() {
    return new OwnVoice() {
      @Override
      public void begins(String sentence, int millis) {}

      @Override
      public void plays(byte[] samples, int offset, int length, int rate) {}

      @Override
      public void ends(boolean cutShort) {}

      @Override
      public Frame without(Frame heard) {
        return heard;
      }

      @Override
      public void close() {}
    };
  }

  /**
   * A frame without the voice. The thread that captures calls it at once for every frame, in order:
   * frame by frame the sound that was played moves on with it.
   */
  Frame without(Frame heard);

  /** Frees it; frames then stay as they are. */
  @Override
  void close();
}
