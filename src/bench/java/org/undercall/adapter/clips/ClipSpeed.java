package org.undercall.adapter.clips;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.undercall.port.Clips;
import org.undercall.sound.Frames;

/**
 * Prints how long it takes to put a clip of three seconds on the disk, which is how much later its
 * reply begins: the first, the middle and the 95th percentile. It asserts nothing.
 */
public final class ClipSpeed {
  private static final int BYTES = 2 * 3 * Frames.RATE;

  private ClipSpeed() {}

  /** Takes the folder to write into and the number of clips, 200 without one. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    int count = args.length > 1 ? Integer.parseInt(args[1]) : 200;
    byte[] sound = speech();
    for (ClipFormat format : ClipFormat.values()) {
      long prepared = System.nanoTime();
      format.prepare();
      System.out.printf(
          Locale.ROOT, "%s prepared in %.0f ms%n", format, (System.nanoTime() - prepared) / 1e6);
      Path clips = Files.createTempDirectory(folder, "clips");
      Clips writer =
          new ClipWriter(clips, new ClipWriter.Settings(format, false), System.out::println);
      List<Double> millis = new ArrayList<>();
      for (int i = 1; i <= count; i++) {
        long before = System.nanoTime();
        writer.keep(i, sound);
        millis.add((System.nanoTime() - before) / 1e6);
      }
      long size = Files.size(clips.resolve("000001." + format.ending()));
      print(format, millis, size);
    }
  }

  private static void print(ClipFormat format, List<Double> millis, long size) {
    double first = millis.get(0);
    Collections.sort(millis);
    System.out.printf(
        Locale.ROOT,
        "%s, 3 s of speech: first %.1f ms, middle %.1f ms, 95th percentile %.1f ms, %d bytes%n",
        format,
        first,
        millis.get(millis.size() / 2),
        millis.get(millis.size() * 95 / 100),
        size);
  }

  /** Speech of the tests' files, one after the other. */
  private static byte[] speech() throws IOException {
    byte[] all = new byte[BYTES];
    int at = 0;
    for (String name : List.of("one-seven-five", "go-to-step-four", "say-again")) {
      try (InputStream in = ClipSpeed.class.getResourceAsStream("/sound/" + name + ".wav")) {
        in.skipNBytes(44);
        byte[] part = in.readAllBytes();
        int length = Math.min(part.length, BYTES - at);
        System.arraycopy(Arrays.copyOf(part, length), 0, all, at, length);
        at += length;
      }
    }
    return all;
  }
}
