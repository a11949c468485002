package org.undercall.adapter.speaker;

/** A way out for samples: the sound card, or a fake. One thread writes, any may stop it. */
interface SoundLine {

  /**
   * Opens the line for sound of one channel and 16 bits, and starts it.
   *
   * @throws UncheckedFault SPK-001 if there is no device for it
   */
  void open(int rate);

  /** Writes samples as little-endian bytes and gives how many were taken, waiting for room. */
  int write(byte[] bytes, int offset, int length);

  /** Waits until all that was written has sounded. */
  void drain();

  /** Stops at once and forgets what was written and has not sounded. */
  void silence();

  /** Makes the line ready for sound after {@link #silence}. */
  void resume();

  /** Gives the device back; never waits long. */
  void close();
}
