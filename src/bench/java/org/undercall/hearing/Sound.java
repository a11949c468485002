package org.undercall.hearing;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.WavFrames;

/** Sound in memory: 16 kHz, mono, 16 bit. Nobody changes the samples. */
final class Sound {
  private final short[] samples;

  Sound(short[] samples) {
    this.samples = samples;
  }

  /** The samples themselves, not a copy. */
  short[] samples() {
    return samples;
  }

  /** Silence of a length in milliseconds. */
  static Sound silence(int millis) {
    return new Sound(new short[millis * Frames.RATE / 1000]);
  }

  /** The whole sound of a WAV file, read as the program reads one. */
  static Sound read(Path file) throws Fault {
    short[] all = new short[4 * Frames.RATE];
    int length = 0;
    try (WavFrames frames = WavFrames.open(file)) {
      for (Optional<Frame> next = frames.next(); next.isPresent(); next = frames.next()) {
        Frame frame = next.get();
        if (length + frame.samples() > all.length) {
          all = Arrays.copyOf(all, 2 * all.length);
        }
        for (int i = 0; i < frame.samples(); i++) {
          all[length++] = (short) frame.sample(i);
        }
      }
    }
    return new Sound(Arrays.copyOf(all, length));
  }

  /** All the sounds in a row. */
  static Sound joined(Sound... parts) {
    short[] all = new short[Arrays.stream(parts).mapToInt(Sound::length).sum()];
    int at = 0;
    for (Sound part : parts) {
      System.arraycopy(part.samples, 0, all, at, part.length());
      at += part.length();
    }
    return new Sound(all);
  }

  /** How many samples there are. */
  int length() {
    return samples.length;
  }

  double seconds() {
    return (double) samples.length / Frames.RATE;
  }

  /** Part of the sound; what lies outside is left out. */
  Sound part(int from, int to) {
    return new Sound(Arrays.copyOfRange(samples, Math.max(0, from), Math.min(samples.length, to)));
  }

  /** A frame of the sound as the program's sources give them; the last one may be shorter. */
  Frame frame(int from) {
    int count = Math.min(Frames.FRAME_SAMPLES, samples.length - from);
    byte[] bytes = new byte[2 * count];
    for (int i = 0; i < count; i++) {
      bytes[2 * i] = (byte) samples[from + i];
      bytes[2 * i + 1] = (byte) (samples[from + i] >> 8);
    }
    return Frame.of(from, bytes);
  }
}
