package org.undercall.sound;

import java.math.BigInteger;
import java.nio.ShortBuffer;
import java.util.function.DoubleConsumer;

/**
 * Changes the sampling rate with a polyphase filter, one sample at a time or a whole sound.
 *
 * <p>Sounds that the new rate cannot carry are filtered out first, so that none comes back as
 * another sound. The sampling theorem (Shannon, 1949) gives the sinc, of 16 zero crossings on each
 * side; the window is Blackman's.
 */
public final class Resampler {
  private static final int CROSSINGS = 16;

  /** Where the filter cuts off, as a share of half of the lower rate. */
  private static final double PASS = 0.92;

  private final int up;
  private final int down;
  private final double cut;
  private final int reach;
  private final double[][] phases;
  private final double[] recent;
  private long in;
  private long out;

  /**
   * A resampler for one sound.
   *
   * @param from samples a second of what it takes
   * @param to samples a second of what it gives
   */
  public Resampler(int from, int to) {
    int common = BigInteger.valueOf(from).gcd(BigInteger.valueOf(to)).intValueExact();
    up = to / common;
    down = from / common;
    cut = PASS * Math.min(1.0, (double) up / down);
    reach = (int) Math.ceil(CROSSINGS / cut);
    phases = new double[up][];
    recent = new double[Integer.highestOneBit(4 * reach) * 2];
  }

  /** The same sound at another rate; a part of a sample at its end is left out. */
  public static Pcm to(Pcm sound, int rate) {
    if (sound.rate() == rate) {
      return sound;
    }
    Resampler resampler = new Resampler(sound.rate(), rate);
    short[] made = new short[(int) ((long) sound.length() * rate / sound.rate())];
    ShortBuffer left = ShortBuffer.wrap(made);
    DoubleConsumer put = sample -> left.put(Pcm.clipped(sample));
    for (int i = 0; i < sound.length(); i++) {
      resampler.add(sound.at(i), put);
    }
    resampler.give(made.length, put);
    return Pcm.of(rate, made);
  }

  /** Takes one sample and gives those that can be made now. */
  public void add(double sample, DoubleConsumer made) {
    if (up == down) {
      made.accept(sample);
      return;
    }
    take(sample);
    while (ready()) {
      made.accept(make());
    }
  }

  /** Gives what is left, so that the sound is at least as long as it was. */
  void end(DoubleConsumer made) {
    give(-Math.floorDiv(-in * up, (long) down), made);
  }

  /** Gives samples, as if silence followed, until there are so many in all. */
  private void give(long whole, DoubleConsumer made) {
    while (out < whole) {
      if (ready()) {
        made.accept(make());
      } else {
        take(0);
      }
    }
  }

  private void take(double sample) {
    recent[slot(in)] = sample;
    in++;
  }

  private boolean ready() {
    return out * down / up + reach < in;
  }

  private int slot(long index) {
    return (int) (index & (recent.length - 1));
  }

  private double make() {
    long first = out * down / up - reach + 1;
    double[] taps = taps((int) (out * down % up));
    double sum = 0;
    for (int k = 0; k < taps.length; k++) {
      sum += taps[k] * recent[slot(first + k)];
    }
    out++;
    return sum;
  }

  private double[] taps(int phase) {
    if (phases[phase] == null) {
      phases[phase] = designed((double) phase / up);
    }
    return phases[phase];
  }

  /** The filter for a sample that lies this part of a sample after one of the source. */
  private double[] designed(double after) {
    double[] taps = new double[2 * reach];
    double sum = 0;
    for (int k = 0; k < taps.length; k++) {
      double x = k - reach + 1 - after;
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
}
