package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;

@DisplayName("Two programs on one session")
class TwoProgramsTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");

  @TempDir private Path sessions;

  @Test
  @DisplayName("the second one says at once that it is open and writes nothing; the first goes on")
  void second() throws Exception {
    try (Rehearsal first = Rehearsal.start(DEMO, sessions)) {
      assertTrue(first.ready());
      first.type("cautions understood");
      assertTrue(first.ready());
      Path log = SessionFolder.find(sessions, SessionFolder.LAST).log();
      byte[] before = Files.readAllBytes(log);
      try (Rehearsal second = Rehearsal.start(DEMO, sessions)) {
        assertFalse(second.ready(), second.printed());
        assertEquals(1, second.status());
        assertTrue(second.printed().startsWith("LOG-003 "), second.printed());
        assertEquals(1, second.printed().lines().count(), second.printed());
      }
      assertArrayEquals(before, Files.readAllBytes(log));
      first.type("three eight two");
      assertTrue(first.ready());
      first.type("that is correct");
      assertTrue(first.ready());
      assertTrue(first.printed().contains("Noted. "), first.printed());
      LogContent content = SessionLogFile.read(log);
      assertEquals(4, content.decisions().size());
      assertTrue(content.dropped().isEmpty());
    }
  }
}
