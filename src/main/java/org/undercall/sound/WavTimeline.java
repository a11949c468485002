package org.undercall.sound;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import org.undercall.port.UncheckedFault;

/**
 * A WAV file to which sound is added at any time of its length; sounds at the same time are mixed.
 * It is a whole WAV file after each addition. One thread uses it.
 */
public final class WavTimeline implements AutoCloseable {
  private final Path path;
  private final int rate;
  private final RandomAccessFile file;
  private long samples;

  /**
   * Starts an empty file, over what was there.
   *
   * @param rate samples a second
   * @throws UncheckedFault SPK-009 if it cannot be written
   */
  public WavTimeline(Path path, int rate) {
    this.path = path;
    this.rate = rate;
    try {
      file = new RandomAccessFile(path.toFile(), "rw");
      file.setLength(0);
      file.write(WavFile.header(rate, 0, 0));
    } catch (IOException e) {
      throw cannotWrite(e);
    }
  }

  /**
   * Adds a sound.
   *
   * @param atMillis when it starts, in milliseconds from the start of the file, zero or more
   * @return when it ends, in milliseconds from the start of the file
   */
  public long add(long atMillis, Pcm sound) {
    Pcm added = Resampler.to(sound, rate);
    long first = atMillis * rate / 1000;
    try {
      long place = WavFile.HEADER + 2 * first;
      samples = Math.max(samples, first + added.length());
      file.setLength(WavFile.HEADER + 2 * samples);
      byte[] there = new byte[2 * added.length()];
      file.seek(place);
      file.readFully(there);
      file.seek(place);
      file.write(mixed(Pcm.ofBytes(rate, there, 0, there.length), added).bytes());
      file.seek(0);
      file.write(WavFile.header(rate, Math.toIntExact(2 * samples), 0));
    } catch (IOException e) {
      throw cannotWrite(e);
    }
    return atMillis + added.millis();
  }

  /** How long the file sounds, in milliseconds, rounded up. */
  public long millis() {
    return (samples * 1000 + rate - 1) / rate;
  }

  @Override
  public void close() {
    try {
      file.close();
    } catch (IOException e) {
      throw cannotWrite(e);
    }
  }

  private static Pcm mixed(Pcm one, Pcm other) {
    short[] sum = one.samples();
    for (int i = 0; i < sum.length; i++) {
      sum[i] = Pcm.clipped(sum[i] + other.at(i));
    }
    return Pcm.of(one.rate(), sum);
  }

  private UncheckedFault cannotWrite(IOException cause) {
    return new UncheckedFault(
        SpeakerCode.CANNOT_WRITE, path + " cannot be written: " + cause, cause);
  }
}
