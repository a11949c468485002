package org.undercall.hearing;

import java.util.Optional;
import java.util.Random;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Noise without end in pieces of 20 s: white, pink, the hum of a transformer, the blows of an
 * impact wrench, or two of them at once, each piece at a level of its own from -60 to -10 dBFS. The
 * same seed gives the same noise.
 *
 * <p>Pink is the sum of random numbers of which each is renewed half as often as the one before
 * (Voss, as told by Gardner, Scientific American, April 1978). The blows are common practice, no
 * source: 14 to 26 a second, each a burst of noise and a ringing tone that die away in some
 * milliseconds.
 */
final class MadeNoise implements Frames {
  private static final int PIECE = 20 * RATE;
  private static final int OCTAVES = 12;
  private static final int HARMONICS = 12;
  private static final double FULL = 32_768;

  /** What noise can be. */
  enum Kind {
    WHITE,
    PINK,
    HUM,
    BLOWS
  }

  private final Random random;
  private short[] piece = new short[0];
  private int at;
  private long place;

  MadeNoise(long seed) {
    this.random = new Random(seed);
  }

  @Override
  public Optional<Frame> next() {
    if (at + FRAME_SAMPLES > piece.length) {
      piece = piece();
      at = 0;
    }
    Frame frame = Frame.of(place, new Sound(piece).frame(at).sound());
    at += FRAME_SAMPLES;
    place += FRAME_SAMPLES;
    return Optional.of(frame);
  }

  @Override
  public void close() {}

  private short[] piece() {
    double[] noise = of(any(), PIECE, random);
    if (random.nextInt(3) == 0) {
      double[] other = of(any(), PIECE, random);
      for (int i = 0; i < PIECE; i++) {
        noise[i] += other[i];
      }
    }
    return at(noise, -60 + 50 * random.nextDouble());
  }

  private Kind any() {
    return Kind.values()[random.nextInt(Kind.values().length)];
  }

  /** Noise of a kind with a root mean square of 1. */
  static double[] of(Kind kind, int length, Random random) {
    double[] noise =
        switch (kind) {
          case WHITE -> random.doubles(length, -1, 1).toArray();
          case PINK -> pink(length, random);
          case HUM -> hum(length, random);
          case BLOWS -> blows(length, random);
        };
    double scale = 1 / Math.max(1e-9, rms(noise));
    for (int i = 0; i < length; i++) {
      noise[i] *= scale;
    }
    return noise;
  }

  /** Samples of a noise at a level in dBFS; what is over full scale is clipped. */
  static short[] at(double[] noise, double decibels) {
    double scale = FULL * Math.pow(10, decibels / 20) / Math.max(1e-9, rms(noise));
    short[] samples = new short[noise.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, scale * noise[i]));
    }
    return samples;
  }

  private static double[] pink(int length, Random random) {
    double[] rows = new double[OCTAVES];
    double[] noise = new double[length];
    double sum = 0;
    for (int i = 0; i < length; i++) {
      int row = Math.min(OCTAVES - 1, Integer.numberOfTrailingZeros(i + 1));
      sum -= rows[row];
      rows[row] = 2 * random.nextDouble() - 1;
      sum += rows[row];
      noise[i] = sum + 2 * random.nextDouble() - 1;
    }
    return noise;
  }

  private static double[] hum(int length, Random random) {
    double hertz = random.nextBoolean() ? 50 : 60;
    double swell = 0.2 + 2 * random.nextDouble();
    double[] sizes = random.doubles(HARMONICS).toArray();
    double[] noise = new double[length];
    for (int i = 0; i < length; i++) {
      double time = (double) i / RATE;
      for (int k = 1; k <= HARMONICS; k++) {
        noise[i] += sizes[k - 1] / k * Math.sin(2 * Math.PI * hertz * k * time);
      }
      noise[i] *= 1 + 0.3 * Math.sin(2 * Math.PI * swell * time);
    }
    return noise;
  }

  private static double[] blows(int length, Random random) {
    double[] noise = new double[length];
    int start = 0;
    while (start < length) {
      double hertz = 14 + 12 * random.nextDouble();
      double ring = 700 + 3_000 * random.nextDouble();
      int blows = 1 + random.nextInt(50);
      for (int blow = 0; blow < blows; blow++) {
        blow(noise, start + (int) (blow * RATE / hertz), ring, random);
      }
      start += (int) (blows * RATE / hertz) + random.nextInt(3 * RATE);
    }
    return noise;
  }

  private static void blow(double[] noise, int start, double ring, Random random) {
    double size = 0.5 + random.nextDouble();
    for (int i = 0; i < RATE / 8 && start + i < noise.length; i++) {
      double time = (double) i / RATE;
      double burst = Math.exp(-time / 0.004) * random.nextGaussian();
      double tone = 0.5 * Math.exp(-time / 0.03) * Math.sin(2 * Math.PI * ring * time);
      noise[start + i] += size * (burst + tone);
    }
  }

  private static double rms(double[] noise) {
    double sum = 0;
    for (double value : noise) {
      sum += value * value;
    }
    return Math.sqrt(sum / Math.max(1, noise.length));
  }
}
