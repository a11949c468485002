package org.undercall.sound;

import java.math.BigInteger;
import java.util.function.DoubleConsumer;

/**
 * Brings samples of another rate to 16 kHz, one at a time, with a windowed sinc filter.
 *
 * <p>Sounds that the new rate cannot carry are filtered out first, so that none comes back as
 * another sound. The sampling theorem (Shannon, 1949) gives the sinc; the window is Blackman's. 16
 * zero crossings on each side.
 */
final class Resampler {
  private static final int CROSSINGS = 16;
  private static final double PASS = 0.94;

  private final int rate;
  private final double cut;
  private final int half;
  private final int step;
  private final double[][] filters;
  private final double[] recent;
  private long in;
  private long out;

  Resampler(int rate) {
    this.rate = rate;
    this.cut = PASS * Math.min(1.0, (double) Frames.RATE / rate);
    this.half = (int) Math.ceil(CROSSINGS / cut);
    this.step = BigInteger.valueOf(rate).gcd(BigInteger.valueOf(Frames.RATE)).intValue();
    this.filters = new double[Frames.RATE / step][];
    this.recent = new double[Integer.highestOneBit(4 * half) * 2];
  }

  /** Takes one sample and gives those that can be made now. */
  void add(double sample, DoubleConsumer made) {
    if (rate == Frames.RATE) {
      made.accept(sample);
      return;
    }
    recent[slot(in)] = sample;
    in++;
    while (centre() + half < in) {
      made.accept(make());
    }
  }

  /** Gives what is left, so that the sound is as long as it was. */
  void end(DoubleConsumer made) {
    long whole = -Math.floorDiv(-in * Frames.RATE, (long) rate);
    while (out < whole) {
      recent[slot(in)] = 0;
      in++;
      while (centre() + half < in && out < whole) {
        made.accept(make());
      }
    }
  }

  private long centre() {
    return out * rate / Frames.RATE;
  }

  private int slot(long index) {
    return (int) (index & (recent.length - 1));
  }

  private double make() {
    long first = centre() - half + 1;
    double[] filter = filter((int) (out * rate % Frames.RATE) / step);
    double sum = 0;
    for (int i = 0; i < filter.length; i++) {
      sum += filter[i] * recent[slot(first + i)];
    }
    out++;
    return sum;
  }

  private double[] filter(int phase) {
    if (filters[phase] == null) {
      filters[phase] = designed((double) phase * step / Frames.RATE);
    }
    return filters[phase];
  }

  /** The filter for a sample that lies this part of a sample after one of the source. */
  private double[] designed(double after) {
    double[] filter = new double[2 * half];
    double sum = 0;
    for (int i = 0; i < filter.length; i++) {
      double distance = i - (half - 1) - after;
      filter[i] = sinc(cut * distance) * blackman(distance / half);
      sum += filter[i];
    }
    for (int i = 0; i < filter.length; i++) {
      filter[i] /= sum;
    }
    return filter;
  }

  private static double sinc(double x) {
    return x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
  }

  private static double blackman(double x) {
    if (Math.abs(x) >= 1) {
      return 0;
    }
    return 0.42 + 0.5 * Math.cos(Math.PI * x) + 0.08 * Math.cos(2 * Math.PI * x);
  }
}
