package org.undercall.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.function.DoubleConsumer;
import org.undercall.port.Fault;

/** Makes frames from sound of any supported format. */
public final class FrameMaker {
  private final SampleFormat format;
  private final String name;
  private final Resampler resampler;
  private final DoubleConsumer put = this::put;
  private final ArrayDeque<Frame> made = new ArrayDeque<>();
  private byte[] filling = new byte[Frames.FRAME_BYTES];
  private int filled;
  private long samplesIn;
  private long samplesOut;

  public FrameMaker(SampleFormat format, String name) {
    this.format = format;
    this.name = name;
    this.resampler = new Resampler(format.rate(), Frames.RATE);
  }

  /**
   * Takes sound.
   *
   * @param length how many bytes count: whole blocks
   * @throws Fault SND-011 if a sample is no number
   */
  public void add(byte[] sound, int length) throws Fault {
    ByteBuffer from = ByteBuffer.wrap(sound, 0, length).order(ByteOrder.LITTLE_ENDIAN);
    while (from.remaining() >= format.blockBytes()) {
      double sample = format.mean(from);
      if (!Double.isFinite(sample)) {
        throw new Fault(
            SoundCode.NOT_A_NUMBER, name, "found " + sample + " at sample " + samplesIn);
      }
      samplesIn++;
      resampler.add(sample, put);
    }
  }

  /** The sound has ended: the last frame may be short. */
  void end() {
    resampler.end(put);
    if (filled > 0) {
      made.add(new Frame(samplesOut - filled / 2, Arrays.copyOf(filling, filled)));
      filled = 0;
    }
  }

  /** The oldest frame, null if none is ready. */
  public Frame poll() {
    return made.poll();
  }

  private void put(double sample) {
    short value = Pcm.clipped(sample * 32_768);
    filling[filled] = (byte) value;
    filling[filled + 1] = (byte) (value >> 8);
    filled += 2;
    samplesOut++;
    if (filled == filling.length) {
      made.add(new Frame(samplesOut - Frames.FRAME_SAMPLES, filling));
      filling = new byte[Frames.FRAME_BYTES];
      filled = 0;
    }
  }
}
