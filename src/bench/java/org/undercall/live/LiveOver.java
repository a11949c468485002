package org.undercall.live;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Jobs one after another at real speed at a virtual sound card, each answered over its prompts.
 * Prints figures and asserts none.
 *
 * <p>Arguments: minutes, and how loud the loudspeaker is in the microphone, 0 for a headset. It
 * needs PulseAudio.
 */
public final class LiveOver {
  private static final long PATIENCE_MILLIS = 20_000;

  private LiveOver() {}

  /** Runs it. */
  public static void main(String[] args) throws Exception {
    double echo = Double.parseDouble(args[1]);
    String option = echo > 0 ? "--barge-in" : "--headset";
    Path cache = Path.of("target", "speech-cache");
    Path procedure = Path.of("src", "test", "resources", "live", "two-sides.json");
    Path folder = Files.createTempDirectory("live-over");
    OverPrompts over = new OverPrompts();
    long until = System.nanoTime() + Long.parseLong(args[0]) * 60_000_000_000L;
    int jobs = 0;
    try (VirtualSound sound = VirtualSound.start(folder.resolve("sound")).orElseThrow();
        AutoCloseable heard = echo > 0 ? sound.echoing(echo) : () -> {}) {
      while (System.nanoTime() < until) {
        jobs++;
        Path sessions = folder.resolve("sessions-" + jobs);
        try (Technician technician = new Technician(cache, folder);
            SpeakerTap tap = SpeakerTap.on(sound.recording());
            Program program = Program.work(procedure, sessions, sound, cache, option)) {
          over.talk(sound, technician, tap, program);
          int status = program.status(PATIENCE_MILLIS);
          System.out.printf(Locale.ROOT, "over: %d jobs, status %d: %s%n", jobs, status, over);
        }
      }
      System.out.printf(Locale.ROOT, "over: echo %.1f, %s%n", echo, heard == null ? "" : over);
    }
  }
}
