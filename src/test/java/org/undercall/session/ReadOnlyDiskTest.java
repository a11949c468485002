package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;

@DisplayName("On a disk that cannot be written, the program as a process of its own")
class ReadOnlyDiskTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final int FAULT = 1;

  private boolean mounted;

  @TempDir private Path disk;

  @BeforeEach
  void mount() throws Exception {
    mounted = Mount.disk(disk, "2m");
    assumeTrue(mounted, "only root can mount a disk that cannot be written");
  }

  @AfterEach
  void unmount() throws Exception {
    assertTrue(!mounted || Mount.gone(disk));
  }

  private String refused() throws Exception {
    try (Rehearsal rehearsal = Rehearsal.start(DEMO, disk)) {
      assertFalse(rehearsal.ready(), rehearsal.printed());
      assertEquals(FAULT, rehearsal.status());
      assertEquals(1, rehearsal.printed().lines().count(), rehearsal.printed());
      return rehearsal.printed();
    }
  }

  @Test
  @DisplayName("begins no session and says so at once, with a code")
  void fresh() throws Exception {
    assertTrue(Mount.again(disk, "ro"));
    String printed = refused();
    assertTrue(printed.startsWith("LOG-009 "), printed);
    assertTrue(printed.contains("Read-only file system"), printed);
    try (Stream<Path> files = Files.list(disk)) {
      assertEquals(0, files.count());
    }
  }

  @Test
  @DisplayName("takes no session up, says at once that it cannot record, and goes on when it can")
  void takenUp() throws Exception {
    try (Rehearsal rehearsal = Rehearsal.start(DEMO, disk)) {
      assertTrue(rehearsal.ready());
      rehearsal.type("cautions understood");
      assertTrue(rehearsal.ready());
      rehearsal.kill(0);
    }
    Path log = SessionFolder.find(disk, SessionFolder.LAST).log();
    byte[] before = Files.readAllBytes(log);
    assertTrue(Mount.again(disk, "ro"));
    String printed = refused();
    assertTrue(printed.startsWith("LOG-001 "), printed);
    assertTrue(printed.contains("expected a folder that can be written"), printed);
    assertArrayEquals(before, Files.readAllBytes(log));
    assertTrue(Mount.again(disk, "rw"));
    try (Rehearsal rehearsal = Rehearsal.start(DEMO, disk)) {
      assertTrue(rehearsal.ready());
      assertTrue(rehearsal.printed().contains("Rehearsal taken up: "), rehearsal.printed());
      rehearsal.kill(0);
    }
  }
}
