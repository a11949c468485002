package org.undercall.adapter.echo;

import java.util.Arrays;
import org.undercall.sound.Frames;
import org.undercall.sound.Pcm;
import org.undercall.sound.Resampler;

/**
 * What the loudspeaker was given and has not sounded yet, as 16 kHz: filled as fast as the
 * loudspeaker takes it, emptied as fast as the microphone gives frames. So it empties just as the
 * buffer of the loudspeaker does, and is silent where that is.
 */
final class PlayedSound {
  /** More than the buffer of any loudspeaker: two seconds. */
  private static final int MOST = 2 * Frames.RATE;

  private final short[] ring = new short[MOST];
  private int first;
  private int waiting;
  private int fromRate;
  private Resampler resampler;

  /** Adds sound that goes on where the last ended; what does not fit is dropped from the front. */
  synchronized void add(byte[] samples, int offset, int length, int rate) {
    if (rate != fromRate || resampler == null) {
      fromRate = rate;
      resampler = new Resampler(rate, Frames.RATE);
    }
    Pcm sound = Pcm.ofBytes(rate, samples, offset, length);
    for (int i = 0; i < sound.length(); i++) {
      resampler.add(sound.at(i), this::put);
    }
  }

  private void put(double sample) {
    ring[(first + waiting) % MOST] =
        (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(sample)));
    if (waiting < MOST) {
      waiting++;
    } else {
      first = (first + 1) % MOST;
    }
  }

  /** Forgets what waits. */
  synchronized void clear() {
    waiting = 0;
    resampler = null;
  }

  /**
   * Takes so much as fits; silence follows what is there.
   *
   * @return whether any of it is sound
   */
  synchronized boolean take(byte[] into) {
    Arrays.fill(into, (byte) 0);
    boolean sound = false;
    for (int i = 0; i < into.length / 2 && waiting > 0; i++, waiting--) {
      short sample = ring[first];
      into[2 * i] = (byte) sample;
      into[2 * i + 1] = (byte) (sample >> 8);
      first = (first + 1) % MOST;
      sound |= sample != 0;
    }
    return sound;
  }
}
