package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.clips.ClipFormat;
import org.undercall.adapter.clips.ClipWriter;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;

@DisplayName("On a disk of 11 MB, clips and a log")
class ClipReserveTest {
  private static final byte[] SOUND = new byte[100_000];
  private static final int MOST = 100;

  /**
   * A disk gives out whole blocks: the last clip takes up to a few kilobytes more than its bytes.
   */
  private static final int BLOCKS = 8_192;

  private final List<String> told = new ArrayList<>();
  private boolean mounted;

  @TempDir private Path disk;

  @BeforeEach
  void mount() throws Exception {
    new SplittableRandom(7).nextBytes(SOUND);
    mounted = Mount.disk(disk, "11m");
    assumeTrue(mounted, "only root can mount a small disk");
  }

  @AfterEach
  void unmount() throws Exception {
    assertTrue(!mounted || Mount.gone(disk));
  }

  @Test
  @DisplayName("share it so that clips leave the last 10 MB to the log, which goes on")
  void reserve() throws Exception {
    ClipWriter clips =
        new ClipWriter(
            disk.resolve("clips"), new ClipWriter.Settings(ClipFormat.WAV, false), told::add);
    int kept = 0;
    Optional<Clip> clip = clips.keep(1, SOUND);
    while (clip.isPresent() && kept < MOST) {
      kept++;
      clip = clips.keep(kept + 1L, SOUND);
    }
    assertTrue(kept > 5 && kept < MOST, kept + " clips");
    assertEquals(1, told.size());
    assertTrue(told.get(0).startsWith("CLP-001 "), told.get(0));
    long left = Files.getFileStore(disk).getUsableSpace();
    assertTrue(left >= 10_000_000 - BLOCKS, left + " bytes left");
    try (var files = Files.list(disk.resolve("clips"))) {
      assertEquals(kept, files.count());
    }
    assertEquals(10_000, linesAfterwards());
    assertEquals(1, told.size());
  }

  /** Writes lines of 600 bytes and more to a log on the same disk; gives how many are read back. */
  private int linesAfterwards() throws Exception {
    Moment now = new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);
    List<SessionEvent> events = List.of(new SessionEvent.SessionStarted("", "", "", ""));
    try (SessionLogFile log = SessionLogFile.open(disk.resolve("log.jsonl"))) {
      for (int seq = 1; seq <= 10_000; seq++) {
        log.append(new Recorded(seq, now, Optional.empty(), events, "x".repeat(300)));
      }
    }
    return SessionLogFile.read(disk.resolve("log.jsonl")).decisions().size();
  }
}
