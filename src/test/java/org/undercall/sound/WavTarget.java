package org.undercall.sound;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.undercall.port.Fault;

/** Any bytes as a WAV file: frames of bounded count, or a coded fault. */
public final class WavTarget {
  private static final Path FILE = file();

  private WavTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    Files.write(FILE, data);
    LevelMeter meter = new LevelMeter();
    try (WavFrames frames = WavFrames.open(FILE)) {
      long samples = 0;
      for (Optional<Frame> frame = frames.next(); frame.isPresent(); frame = frames.next()) {
        samples += frame.get().samples();
        meter.add(frame.get());
      }
      if (samples > 2L * data.length + Frames.FRAME_SAMPLES) {
        throw new AssertionError(samples + " samples from " + data.length + " bytes");
      }
    } catch (Fault e) {
      if (!e.getMessage().startsWith("SND-") || e.getMessage().indexOf('\n') >= 0) {
        throw new AssertionError("no line with a code: " + e.getMessage());
      }
    }
  }

  private static Path file() {
    try {
      Path file = Files.createTempFile("undercall-sound", ".wav");
      file.toFile().deleteOnExit();
      return file;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
