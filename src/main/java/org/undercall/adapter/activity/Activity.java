package org.undercall.adapter.activity;

/**
 * Tells speech from other sound. It learns from what it hears, so every frame is to be shown, in
 * order. One thread uses it.
 */
public interface Activity extends AutoCloseable {
  /**
   * Whether a frame holds speech.
   *
   * @param frame the samples of a frame of {@code Frames}
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
