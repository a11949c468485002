package org.undercall.adapter.activity;

/**
 * Tells speech from other sound. It learns from what it hears, so every frame is to be shown, in
 * order. One thread uses it.
 */
public interface Activity extends AutoCloseable {
  /** Samples in a frame: 30 ms at 16 kHz. */
  int FRAME_SAMPLES = 480;

  /**
   * Whether a frame holds speech.
   *
   * @param frame 16 kHz, 16 bit, little end first, mono; 30 ms, or less at the end of a source
   */
  boolean isSpeech(byte[] frame);

  /** Frees it. Closing twice does nothing. */
  @Override
  void close();

  /** Takes everything for speech. */
  static Activity always() {
    return new Activity() {
      @Override
      public boolean isSpeech(byte[] frame) {
        return true;
      }

      @Override
      public void close() {}
    };
  }
}
