package org.undercall.sound;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.undercall.port.Fault;

/**
 * The sound of a WAV file: PCM of 8 to 32 bits or floating point, 1 to 8 channels, 8 to 96 kHz.
 * Channels are averaged, other rates are brought to 16 kHz, too loud samples are clipped.
 */
public final class WavFrames implements Frames {
  private static final int BLOCKS = 4096;

  private final String name;
  private final DataInputStream in;
  private final FrameMaker maker;
  private final byte[] block;
  private long left;

  private WavFrames(String name, DataInputStream in, WavHeader header) {
    this.name = name;
    this.in = in;
    this.maker = new FrameMaker(header.format(), name);
    this.block = new byte[BLOCKS * header.format().blockBytes()];
    this.left = header.dataBytes();
  }

  /**
   * Opens a file and checks its header.
   *
   * @throws Fault SND-001 to SND-010
   */
  public static WavFrames open(Path file) throws Fault {
    String name = file.toString();
    if (!Files.isRegularFile(file)) {
      throw new Fault(SoundCode.UNREADABLE, name, "there is no such file, expected a WAV file");
    }
    DataInputStream in = null;
    try {
      in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 16));
      WavFrames frames = new WavFrames(name, in, WavHeader.read(in, name, Files.size(file)));
      in = null;
      return frames;
    } catch (IOException e) {
      throw unreadable(name, e);
    } finally {
      close(in);
    }
  }

  @Override
  public Optional<Frame> next() throws Fault {
    Frame frame = maker.poll();
    while (frame == null && left > 0) {
      read();
      frame = maker.poll();
    }
    return Optional.ofNullable(frame);
  }

  private void read() throws Fault {
    int wanted = (int) Math.min(block.length, left);
    int found;
    try {
      found = in.readNBytes(block, 0, wanted);
    } catch (IOException e) {
      throw unreadable(name, e);
    }
    if (found < wanted) {
      throw new Fault(
          SoundCode.TRUNCATED, name, "ended " + (left - found) + " bytes early while it was read");
    }
    maker.add(block, found);
    left -= found;
    if (left == 0) {
      maker.end();
    }
  }

  @Override
  public void close() {
    left = 0;
    close(in);
  }

  private static void close(DataInputStream in) {
    if (in != null) {
      try {
        in.close();
      } catch (IOException e) {
        // It was only read from: nothing is lost.
      }
    }
  }

  private static Fault unreadable(String name, IOException e) {
    return new Fault(SoundCode.UNREADABLE, name, "cannot be read (" + e + ")");
  }
}
