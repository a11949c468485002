package org.undercall.sound;

import java.math.BigInteger;

/**
 * Changes the sampling rate with a polyphase filter: a sinc of 16 zero crossings a side under a
 * Blackman window, cut off below half of the lower rate.
 */
public final class PcmResampler {
  private static final int CROSSINGS = 16;
  private static final double PASS = 0.92;

  private final int up;
  private final int down;
  private final int reach;
  private final double[][] phases;

  private PcmResampler(int from, int to) {
    int common = BigInteger.valueOf(from).gcd(BigInteger.valueOf(to)).intValueExact();
    up = to / common;
    down = from / common;
    double cut = PASS * Math.min(1.0, (double) up / down);
    reach = (int) Math.ceil(CROSSINGS / cut);
    phases = new double[up][];
    for (int phase = 0; phase < up; phase++) {
      phases[phase] = taps((double) phase / up, cut);
    }
  }

  /** The same sound at another rate. */
  public static Pcm to(Pcm sound, int rate) {
    if (sound.rate() == rate) {
      return sound;
    }
    return Pcm.of(rate, new PcmResampler(sound.rate(), rate).run(sound.samples()));
  }

  private double[] taps(double fraction, double cut) {
    double[] taps = new double[2 * reach];
    double sum = 0;
    for (int k = 0; k < taps.length; k++) {
      double x = k - reach + 1 - fraction;
      double place = Math.PI * x / reach;
      double window = 0.42 + 0.5 * Math.cos(place) + 0.08 * Math.cos(2 * place);
      double angle = Math.PI * x * cut;
      taps[k] = (angle == 0 ? 1 : Math.sin(angle) / angle) * (Math.abs(x) < reach ? window : 0);
      sum += taps[k];
    }
    for (int k = 0; k < taps.length; k++) {
      taps[k] /= sum;
    }
    return taps;
  }

  private short[] run(short[] in) {
    short[] out = new short[(int) ((long) in.length * up / down)];
    for (int i = 0; i < out.length; i++) {
      long place = (long) i * down;
      double[] taps = phases[(int) (place % up)];
      int first = (int) (place / up) - reach + 1;
      double sum = 0;
      for (int k = Math.max(0, -first); k < taps.length && first + k < in.length; k++) {
        sum += taps[k] * in[first + k];
      }
      out[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(sum)));
    }
    return out;
  }
}
