package org.undercall.adapter.clips;

import java.io.IOException;
import java.util.Arrays;
import net.sourceforge.javaflacencoder.EncodingConfiguration;
import net.sourceforge.javaflacencoder.EncodingConfiguration.SubframeType;
import net.sourceforge.javaflacencoder.FLACEncoder;
import net.sourceforge.javaflacencoder.FLACOutputStream;
import net.sourceforge.javaflacencoder.StreamConfiguration;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Sound as the bytes of a FLAC file.
 *
 * <p>The encoder goes wrong on blocks of a few samples, so the sound is filled up with silence to
 * whole pieces of 30 ms, of which a block is a multiple. Only linear prediction is tried: choosing
 * among all kinds, the encoder prints lines of its own.
 */
final class FlacSound {
  private static final int BITS = 16;

  /** The shortest block: 30 ms. */
  private static final int PIECE = Frames.FRAME_SAMPLES;

  /** The usual block: 240 ms. */
  private static final int BLOCK = 8 * PIECE;

  private FlacSound() {}

  static byte[] of(byte[] sound) throws IOException {
    int[] samples = samples(sound);
    InMemory out = new InMemory();
    try {
      encode(samples, out);
    } catch (RuntimeException e) {
      throw new IOException("the FLAC encoder failed", e);
    }
    return out.bytes();
  }

  private static void encode(int[] samples, InMemory out) throws IOException {
    FLACEncoder encoder = new FLACEncoder();
    encoder.setStreamConfiguration(
        new StreamConfiguration(
            1, StreamConfiguration.DEFAULT_MIN_BLOCK_SIZE, BLOCK, Frames.RATE, BITS));
    EncodingConfiguration how = new EncodingConfiguration();
    how.setSubframeType(SubframeType.LPC);
    encoder.setEncodingConfiguration(how);
    encoder.setOutputStream(out);
    encoder.openFLACStream();
    encoder.addSamples(samples, samples.length);
    int done = encoder.encodeSamples(samples.length, true);
    if (done < samples.length) {
      done += encoder.encodeSamples(samples.length - done, true);
    }
    if (done < samples.length) {
      throw new IOException("the FLAC encoder took " + done + " of " + samples.length + " samples");
    }
  }

  private static int[] samples(byte[] sound) {
    Frame all = new Frame(0, sound);
    int[] samples = new int[Math.max(1, (all.samples() + PIECE - 1) / PIECE) * PIECE];
    for (int i = 0; i < all.samples(); i++) {
      samples[i] = all.sample(i);
    }
    return samples;
  }

  /** A file in memory: the encoder goes back to its head at the end. */
  private static final class InMemory implements FLACOutputStream {
    private byte[] bytes = new byte[1 << 16];
    private int position;
    private int size;

    byte[] bytes() {
      return Arrays.copyOf(bytes, size);
    }

    @Override
    public long seek(long to) {
      position = Math.toIntExact(to);
      return to;
    }

    @Override
    public int write(byte[] from, int offset, int count) {
      if (position + count > bytes.length) {
        bytes = Arrays.copyOf(bytes, Math.max(position + count, 2 * bytes.length));
      }
      System.arraycopy(from, offset, bytes, position, count);
      position += count;
      size = Math.max(size, position);
      return count;
    }

    @Override
    public void write(byte one) {
      write(new byte[] {one}, 0, 1);
    }

    @Override
    public long size() {
      return size;
    }

    @Override
    public boolean canSeek() {
      return true;
    }

    @Override
    public long getPos() {
      return position;
    }
  }
}
