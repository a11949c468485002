package org.undercall.sound;

import java.util.Arrays;

/** Sound: mono, 16 bit, signed, at one sampling rate. Never changed once made. */
public final class Pcm {
  private static final int QUIET = 150;

  private final int rate;
  private final short[] samples;

  private Pcm(int rate, short[] samples) {
    if (rate < 1) {
      throw new IllegalArgumentException("a sampling rate is above zero: " + rate);
    }
    this.rate = rate;
    this.samples = samples;
  }

  /**
   * Sound from samples, which are copied.
   *
   * @param rate samples a second
   */
  public static Pcm of(int rate, short[] samples) {
    return new Pcm(rate, samples.clone());
  }

  /** Sound from 16-bit little-endian bytes. */
  public static Pcm ofBytes(int rate, byte[] bytes, int offset, int length) {
    short[] samples = new short[length / 2];
    for (int i = 0; i < samples.length; i++) {
      int at = offset + 2 * i;
      samples[i] = (short) ((bytes[at] & 0xff) | bytes[at + 1] << 8);
    }
    return new Pcm(rate, samples);
  }

  /** Silence of a length in milliseconds. */
  public static Pcm silence(int rate, int millis) {
    return new Pcm(rate, new short[(int) ((long) rate * millis / 1000)]);
  }

  /** The same sound with silence at its end cut down to a length in milliseconds. */
  public Pcm withTail(int millis) {
    int end = samples.length;
    while (end > 0 && Math.abs((int) samples[end - 1]) < QUIET) {
      end--;
    }
    int keep = (int) Math.min(samples.length, end + (long) rate * millis / 1000);
    return new Pcm(rate, Arrays.copyOf(samples, keep));
  }

  /** The same samples at another rate: higher is faster and higher in pitch. */
  public Pcm sped(double factor) {
    return new Pcm((int) Math.round(rate * factor), samples);
  }

  /** The same sound at another loudness. */
  public Pcm scaled(double factor) {
    if (factor == 1) {
      return this;
    }
    short[] scaled = new short[samples.length];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = clipped(samples[i] * factor);
    }
    return new Pcm(rate, scaled);
  }

  /** The nearest sample; what is too loud is cut to the loudest. */
  static short clipped(double value) {
    return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
  }

  /** This sound and after it another of the same rate. */
  public Pcm then(Pcm next) {
    if (next.rate != rate) {
      throw new IllegalArgumentException("found " + next.rate + " Hz, expected " + rate);
    }
    short[] both = Arrays.copyOf(samples, samples.length + next.samples.length);
    System.arraycopy(next.samples, 0, both, samples.length, next.samples.length);
    return new Pcm(rate, both);
  }

  /** Samples a second. */
  public int rate() {
    return rate;
  }

  /** A copy of the samples. */
  public short[] samples() {
    return samples.clone();
  }

  /** How many samples there are. */
  public int length() {
    return samples.length;
  }

  /** One sample. */
  public short at(int index) {
    return samples[index];
  }

  /** How long it sounds, in milliseconds, rounded up. */
  public long millis() {
    return (samples.length * 1000L + rate - 1) / rate;
  }

  /** The samples as 16-bit little-endian bytes. */
  public byte[] bytes() {
    byte[] bytes = new byte[samples.length * 2];
    for (int i = 0; i < samples.length; i++) {
      bytes[2 * i] = (byte) samples[i];
      bytes[2 * i + 1] = (byte) (samples[i] >> 8);
    }
    return bytes;
  }

  /** The greatest amplitude, 0 to 32768. */
  public int peak() {
    int peak = 0;
    for (short sample : samples) {
      peak = Math.max(peak, Math.abs((int) sample));
    }
    return peak;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pcm pcm && rate == pcm.rate && Arrays.equals(samples, pcm.samples);
  }

  @Override
  public int hashCode() {
    return 31 * rate + Arrays.hashCode(samples);
  }

  @Override
  public String toString() {
    return "Pcm[" + rate + " Hz, " + millis() + " ms]";
  }
}
