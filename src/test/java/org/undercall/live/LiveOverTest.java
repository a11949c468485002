package org.undercall.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The whole program at a virtual sound card: a synthetic technician answers while the program still
 * speaks, and the microphone hears the loudspeaker as in a small room, or wears a headset.
 */
@DisplayName("At a virtual sound card, with answers over the prompts")
@Tag("alone")
class LiveOverTest {
  private static final Path PROCEDURE =
      Path.of("src", "test", "resources", "live", "two-sides.json");
  private static final Path CACHE = Path.of("target", "speech-cache");
  private static final long PATIENCE_MILLIS = 20_000;

  @TempDir private Path folder;

  private final OverPrompts over = new OverPrompts();

  @ParameterizedTest(name = "echo {0}, options {1}")
  @CsvSource({"0.3, --barge-in", "0, --headset"})
  @DisplayName("work is done, and nothing closes that was not said")
  void work(double echo, String option) throws Exception {
    Optional<VirtualSound> started = VirtualSound.start(folder.resolve("sound"));
    Assumptions.assumeTrue(started.isPresent(), "no virtual sound card can be made here");
    try (VirtualSound sound = started.get();
        AutoCloseable heard = echo > 0 ? sound.echoing(echo) : () -> {};
        Technician technician = new Technician(CACHE, folder);
        SpeakerTap tap = SpeakerTap.on(sound.recording());
        Program program =
            Program.work(PROCEDURE, folder.resolve("sessions"), sound, CACHE, option)) {
      assertTrue(heard != null);
      over.talk(sound, technician, tap, program);
      System.out.printf(Locale.ROOT, "live: %s, echo %.1f: %s%n", option, echo, over);
      assertEquals(0, program.status(PATIENCE_MILLIS), "exit status");
    }
    assertEquals(List.of(), over.wrong(), "closing and never said");
    assertTrue(over.mute() < 2, "replies are not spoken");
  }
}
