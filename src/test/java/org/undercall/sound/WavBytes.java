package org.undercall.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Makes WAV files for tests, lying ones too. */
public final class WavBytes {
  private int tag = 1;
  private int bits = 16;
  private int channels = 1;
  private int rate = 16_000;
  private int blockBytes = -1;
  private long statedBytes = -1;

  public WavBytes coded(int tag, int bits) {
    this.tag = tag;
    this.bits = bits;
    return this;
  }

  public WavBytes channels(int channels) {
    this.channels = channels;
    return this;
  }

  public WavBytes rate(int rate) {
    this.rate = rate;
    return this;
  }

  public WavBytes statedBlock(int bytes) {
    this.blockBytes = bytes;
    return this;
  }

  public WavBytes statedLength(long bytes) {
    this.statedBytes = bytes;
    return this;
  }

  /** One second of a sine, the same in every channel. */
  byte[] tone(double hertz, double amplitude) {
    byte[] bytes = new byte[rate * channels * bits / 8];
    ByteBuffer data = little(bytes);
    for (int i = 0; i < rate; i++) {
      double value = amplitude * Math.sin(2 * Math.PI * hertz * i / rate);
      for (int c = 0; c < channels; c++) {
        put(data, value);
      }
    }
    return of(bytes);
  }

  /** A file with this sound, one array a channel; full scale is from -1 to 1, more is clipped. */
  public byte[] sound(double[]... sounds) {
    channels(sounds.length);
    byte[] bytes = new byte[sounds[0].length * channels * bits / 8];
    ByteBuffer data = little(bytes);
    for (int i = 0; i < sounds[0].length; i++) {
      for (double[] sound : sounds) {
        put(data, tag == 3 ? sound[i] : Math.max(-1, Math.min(1, sound[i])));
      }
    }
    return of(bytes);
  }

  /** A file with this sound. */
  public byte[] of(byte[] data) {
    long stated = statedBytes < 0 ? data.length : statedBytes;
    byte[] bytes = new byte[44 + data.length];
    ByteBuffer file = little(bytes);
    file.put(ascii("RIFF")).putInt(36 + data.length).put(ascii("WAVE"));
    file.put(ascii("fmt ")).putInt(16).putShort((short) tag).putShort((short) channels);
    int block = blockBytes < 0 ? channels * bits / 8 : blockBytes;
    file.putInt(rate).putInt(rate * block).putShort((short) block).putShort((short) bits);
    file.put(ascii("data")).putInt((int) stated).put(data);
    return bytes;
  }

  private void put(ByteBuffer data, double value) {
    if (tag == 3 && bits == 64) {
      data.putDouble(value);
    } else if (tag == 3) {
      data.putFloat((float) value);
    } else if (bits == 8) {
      data.put((byte) (128 + Math.round(127 * value)));
    } else {
      long whole = Math.round(value * ((1L << (bits - 1)) - 1));
      for (int shift = 0; shift < bits; shift += 8) {
        data.put((byte) (whole >> shift));
      }
    }
  }

  private static ByteBuffer little(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
