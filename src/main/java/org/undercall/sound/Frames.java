package org.undercall.sound;

import java.util.Optional;
import org.undercall.port.Fault;

/** A source of sound in short frames: 16 kHz, 16 bit, little-endian, mono. One thread uses it. */
public interface Frames extends AutoCloseable {
  /** Samples a second. */
  int RATE = 16_000;

  /** Samples in a frame: 30 ms. Only the last frame of a source may be shorter. */
  int FRAME_SAMPLES = 480;

  /** Bytes in a frame. */
  int FRAME_BYTES = 2 * FRAME_SAMPLES;

  /**
   * Waits for the next frame.
   *
   * @return the frame; empty at the end of the sound
   * @throws Fault if the sound breaks off or is no sound
   */
  Optional<Frame> next() throws Fault;

  /** Forgets the sound that waits; a file has none. The next frame's place shows the gap. */
  default void discardWaiting() {}

  /**
   * How much sound was lost because nobody took it in time, in milliseconds. Sound that was
   * forgotten on purpose does not count.
   */
  default long droppedMillis() {
    return 0;
  }

  @Override
  void close();
}
