package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.port.Fault;

@DisplayName("The log of a session")
class SessionLogFileTest {
  private static final List<Recorded> THREE =
      List.of(
          Samples.decision(1, new SessionEvent.CautionsUnderstood()),
          Samples.decision(2),
          Samples.decision(3, new SessionEvent.WorkHeld(), new SessionEvent.WorkResumed()));

  @TempDir private Path folder;
  private Path path;

  @BeforeEach
  void name() {
    path = folder.resolve("log.jsonl");
  }

  private byte[] written(List<Recorded> decisions) throws Fault, IOException {
    try (SessionLogFile log = SessionLogFile.open(path)) {
      for (Recorded decision : decisions) {
        log.append(decision);
      }
    }
    return Files.readAllBytes(path);
  }

  @Test
  @DisplayName("is on disk after each append, and goes on where it ended")
  void goesOn() throws Exception {
    try (SessionLogFile log = SessionLogFile.open(path)) {
      log.append(THREE.get(0));
      assertEquals(THREE.subList(0, 1), SessionLogFile.read(path).decisions());
      log.append(THREE.get(1));
      assertEquals(THREE.subList(0, 2), SessionLogFile.read(path).decisions());
    }
    try (SessionLogFile log = SessionLogFile.open(path)) {
      assertEquals(THREE.subList(0, 2), log.decisions());
      log.append(THREE.get(2));
      assertEquals(THREE, log.decisions());
    }
    assertEquals(THREE, SessionLogFile.read(path).decisions());
  }

  @Test
  @DisplayName("takes the next number only")
  void nextNumberOnly() throws Exception {
    try (SessionLogFile log = SessionLogFile.open(path)) {
      assertThrows(IllegalArgumentException.class, () -> log.append(THREE.get(1)));
    }
  }

  @Test
  @DisplayName("written by version 1 always loads, and is the same to the byte when written again")
  void versionOne() throws Exception {
    byte[] golden;
    try (var in = getClass().getResourceAsStream("/logs/v1.jsonl")) {
      golden = in.readAllBytes();
    }
    LogContent content = LogContent.of(golden, "v1.jsonl");
    assertEquals(Optional.empty(), content.dropped());
    assertArrayEquals(golden, written(content.decisions()));
  }

  @Nested
  @DisplayName("while a program has it open")
  class Locked {

    @Test
    @DisplayName("cannot be opened twice, though it can be read, and is free again when closed")
    void once() throws Exception {
      try (SessionLogFile log = SessionLogFile.open(path)) {
        log.append(THREE.get(0));
        Fault fault = assertThrows(Fault.class, () -> SessionLogFile.open(path));
        assertEquals(LogCode.IN_USE, fault.code());
        assertEquals(1, SessionLogFile.read(path).decisions().size());
        assertThrows(Fault.class, () -> SessionLogFile.open(path));
      }
      SessionLogFile.open(path).close();
    }

    @Test
    @DisplayName("cannot be opened by another program")
    void otherProgram() throws Exception {
      try (SessionLogFile log = SessionLogFile.open(path)) {
        assertEquals("LOG-003", otherProgramOpens());
        assertEquals(0, log.decisions().size());
      }
      assertEquals("opened", otherProgramOpens());
    }

    private String otherProgramOpens() throws Exception {
      Process other =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Opener.class.getName(),
                  path.toString())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      assertTrue(other.waitFor(60, TimeUnit.SECONDS));
      return new String(
              other.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
          .strip();
    }
  }

  /** The other program. */
  static final class Opener {
    private Opener() {}

    public static void main(String[] args) {
      try (SessionLogFile log = SessionLogFile.open(Path.of(args[0]))) {
        System.out.println(log.decisions().isEmpty() ? "opened" : "not empty");
      } catch (Fault e) {
        System.out.println(e.code().id());
      }
    }
  }

  @Test
  @DisplayName("does not open in a folder that is not there")
  void noFolder() {
    Path lost = folder.resolve("lost").resolve("log.jsonl");
    Fault fault = assertThrows(Fault.class, () -> SessionLogFile.open(lost));
    assertEquals(LogCode.CANNOT_READ, fault.code());
  }
}
