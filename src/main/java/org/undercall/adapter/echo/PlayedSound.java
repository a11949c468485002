package org.undercall.adapter.echo;

import java.util.Arrays;
import java.util.function.LongSupplier;
import org.undercall.sound.Frames;
import org.undercall.sound.Pcm;
import org.undercall.sound.Resampler;

/**
 * What the loudspeaker was given, as 16 kHz, laid beside the sound of the microphone by the clock:
 * what is given after a silence sounds a time later that is the same each time, so that an echo
 * keeps its distance from sentence to sentence. What follows without a gap follows here without one
 * too; a loudspeaker that ran empty begins anew.
 */
final class PlayedSound {
  /** More than the buffer of any loudspeaker: two seconds. */
  private static final int MOST = 2 * Frames.RATE;

  /** The clocks of sound and machine may drift apart so far, of what has passed. */
  private static final double DRIFT = 0.001;

  /** Sound that is later than this began anew, as after a microphone that was lost. */
  private static final double LATEST = Frames.RATE;

  private final LongSupplier nanos;
  private final short[] ring = new short[MOST];
  private double began = Double.NaN;
  private long taken;
  private long next;
  private int fromRate;
  private Resampler resampler;

  /** Laid beside the microphone by this clock, in nanoseconds. */
  PlayedSound(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /** Adds sound that is given to the loudspeaker now; what is too far ahead is dropped. */
  synchronized void add(byte[] samples, int offset, int length, int rate) {
    long now = now();
    if (next < now || rate != fromRate || resampler == null) {
      next = Math.max(next, now);
      fromRate = rate;
      resampler = new Resampler(rate, Frames.RATE);
    }
    Pcm sound = Pcm.ofBytes(rate, samples, offset, length);
    for (int i = 0; i < sound.length(); i++) {
      resampler.add(sound.at(i), this::put);
    }
  }

  private void put(double sample) {
    if (next - taken < MOST) {
      ring[(int) (next++ % MOST)] =
          (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(sample)));
    }
  }

  /** Forgets what has not sounded yet. */
  synchronized void clear() {
    for (long at = now(); at < next; at++) {
      ring[(int) (at % MOST)] = 0;
    }
    next = Math.min(next, now());
    resampler = null;
  }

  /**
   * The microphone has given so much sound; what was played beside it goes into the array.
   *
   * @return whether any of it is sound
   */
  synchronized boolean take(byte[] into) {
    Arrays.fill(into, (byte) 0);
    boolean sound = false;
    for (int i = 0; i < into.length / 2; i++, taken++) {
      int at = (int) (taken % MOST);
      into[2 * i] = (byte) ring[at];
      into[2 * i + 1] = (byte) (ring[at] >> 8);
      sound |= ring[at] != 0;
      ring[at] = 0;
    }
    return sound;
  }

  /**
   * The microphone has given a frame, of which nothing was taken yet. Frames come late or at once,
   * never early: the earliest tells when the sound began.
   */
  synchronized void comes(int samples) {
    double began = samplesNow() - taken - samples;
    boolean anew = Double.isNaN(this.began) || began - this.began > LATEST;
    this.began = anew ? began : Math.min(this.began + DRIFT * samples, began);
  }

  /** Where in the sound of the microphone it is now; never what was taken before. */
  private long now() {
    return Double.isNaN(began) ? taken : Math.max(taken, Math.round(samplesNow() - began));
  }

  private double samplesNow() {
    return nanos.getAsLong() * 1e-9 * Frames.RATE;
  }
}
