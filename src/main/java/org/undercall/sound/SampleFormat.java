package org.undercall.sound;

import java.nio.ByteBuffer;
import javax.sound.sampled.AudioFormat;
import org.undercall.port.Fault;

/**
 * How samples are coded.
 *
 * @param floating whether they are floating point numbers
 * @param bits 8, 16, 24 or 32; 32 or 64 when floating
 * @param channels 1 to 8
 * @param rate samples a second, 8,000 to 96,000
 */
public record SampleFormat(boolean floating, int bits, int channels, int rate) {
  private static final int PCM = 1;
  private static final int FLOAT = 3;

  /** Whole numbers of 16 bits: how sound is kept and how devices give and take it. */
  public static SampleFormat pcm(int channels, int rate) {
    return new SampleFormat(false, 16, channels, rate);
  }

  /** The same for the devices of Java Sound; not for floating point. */
  public AudioFormat ofDevice() {
    return new AudioFormat(rate, bits, channels, true, false);
  }

  /** The format with the numbers of a WAV header. */
  static SampleFormat checked(String name, int tag, int bits, int channels, int rate) throws Fault {
    if (tag != PCM && tag != FLOAT) {
      throw new Fault(SoundCode.ENCODING, name, "encoding " + tag, "1 (PCM) or 3 (float)");
    }
    boolean known =
        tag == PCM ? bits == 8 || bits == 16 || bits == 24 || bits == 32 : bits == 32 || bits == 64;
    if (!known) {
      throw new Fault(
          SoundCode.SAMPLE_SIZE,
          name,
          "samples of " + bits + " bits",
          tag == PCM ? "8, 16, 24 or 32" : "32 or 64");
    }
    if (channels < 1 || channels > 8) {
      throw new Fault(SoundCode.CHANNELS, name, channels + " channels", "1 to 8");
    }
    if (rate < 8_000 || rate > 96_000) {
      throw new Fault(SoundCode.RATE, name, rate + " samples a second", "8000 to 96000");
    }
    return new SampleFormat(tag == FLOAT, bits, channels, rate);
  }

  /** Bytes of one sample of every channel. */
  public int blockBytes() {
    return channels * bits / 8;
  }

  /**
   * Reads one sample of every channel.
   *
   * @param from in little-endian order
   * @return the mean of the channels; full scale is from -1 to 1. No number if a sample is none.
   */
  double mean(ByteBuffer from) {
    double sum = 0;
    for (int i = 0; i < channels; i++) {
      sum += sample(from);
    }
    return sum / channels;
  }

  private double sample(ByteBuffer from) {
    if (floating) {
      return bits == 32 ? from.getFloat() : from.getDouble();
    }
    return switch (bits) {
      case 8 -> ((from.get() & 0xff) - 128) / 128.0;
      case 16 -> from.getShort() / 32_768.0;
      case 24 -> ((from.get() & 0xff) | (from.getShort() << 8)) / 8_388_608.0;
      default -> from.getInt() / 2_147_483_648.0;
    };
  }
}
