package org.undercall.adapter.microphone;

/** An open recording line. */
interface SoundLine {
  /**
   * Waits for sound.
   *
   * @return how many bytes came: whole blocks; 0 if none came, which a device that is gone does
   *     again and again
   */
  int read(byte[] into);

  /** Closes it; may take long when the sound system hangs. */
  void close();
}
