package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.reply.Refuse;

@DisplayName("On a disk of 64 kB, the program as a process of its own")
class SmallDiskTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final int MOST = 400;

  private boolean mounted;

  @TempDir private Path disk;

  @BeforeEach
  void mount() throws Exception {
    mounted = Mount.disk(disk, "64k");
    assumeTrue(mounted, "only root can mount a small disk");
  }

  @AfterEach
  void unmount() throws Exception {
    assertTrue(!mounted || Mount.gone(disk));
  }

  @Test
  @DisplayName("says that it cannot record, closes nothing then, and goes on when there is room")
  void full() throws Exception {
    try (Rehearsal rehearsal = Rehearsal.start(DEMO, disk)) {
      assertTrue(rehearsal.ready());
      say(rehearsal, "cautions understood");
      int said = 0;
      while (said < MOST && !rehearsal.printed().contains(cannot())) {
        say(rehearsal, "where am i");
        said++;
      }
      assertTrue(said < MOST, "the disk was never full");
      int before = log().decisions().size();
      say(rehearsal, "three eight two");
      say(rehearsal, "that is correct");
      int fitted = log().decisions().size() - before;
      assertTrue(fitted <= 1, "a shorter line may just fit, not one that closes a step: " + fitted);
      assertFalse(rehearsal.printed().contains("Noted. "));
      assertTrue(Mount.again(disk, "size=1m"));
      say(rehearsal, "three eight two");
      say(rehearsal, "that is correct");
      assertTrue(rehearsal.printed().contains("Noted. "), tail(rehearsal));
    }
    long closed =
        log().decisions().stream()
            .flatMap(d -> d.events().stream())
            .filter(SessionEvent.StepClosed.class::isInstance)
            .count();
    assertEquals(1, closed);
    assertTrue(log().dropped().isEmpty());
  }

  private static void say(Rehearsal rehearsal, String phrase) throws IOException {
    rehearsal.type(phrase);
    assertTrue(rehearsal.ready());
  }

  private static String tail(Rehearsal rehearsal) {
    String printed = rehearsal.printed();
    return printed.substring(Math.max(0, printed.length() - 600));
  }

  private static String cannot() {
    return Refuse.cannotRecord().text();
  }

  private LogContent log() throws Exception {
    return SessionLogFile.read(SessionFolder.find(disk, SessionFolder.LAST).log());
  }
}
