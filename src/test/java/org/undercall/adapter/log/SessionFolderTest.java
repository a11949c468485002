package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("A session folder")
class SessionFolderTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-25T09:12:03.4+01:00");
  private static final byte[] PROCEDURE = "{\"title\":\"ä\"}\r\n".getBytes(UTF_8);

  @TempDir private Path sessions;

  private SessionFolder created(String name) throws Fault {
    return SessionFolder.create(sessions, name, PROCEDURE, NOW);
  }

  @ParameterizedTest
  @CsvSource({
    "front-strut.json, front-strut",
    "Rear Trailing Arm.JSON, rear-trailing-arm",
    "../../etc/passwd, etc-passwd",
    "C:\\temp\\x, c-temp-x",
    "Träger, trager",
    "..., procedure",
    "'', procedure",
    "'con\u0001\u00e9|', con-e"
  })
  @DisplayName("is named from the date and a plain form of the file name")
  void named(String from, String expected) throws Fault {
    SessionFolder folder = created(from);
    assertEquals("2026-11-25-091203-" + expected, folder.path().getFileName().toString());
    assertEquals(sessions, folder.path().getParent());
  }

  @Test
  @DisplayName("has a name that is not too long for any system")
  void shortName() throws Fault {
    assertTrue(created("x".repeat(500)).path().getFileName().toString().length() < 100);
  }

  @Test
  @DisplayName("never takes a folder that is there already")
  void neverTheSame() throws Fault {
    assertEquals("2026-11-25-091203-a", created("a").path().getFileName().toString());
    assertEquals("2026-11-25-091203-a-2", created("a").path().getFileName().toString());
  }

  @Test
  @DisplayName("keeps the procedure to the byte and shows a change")
  void keepsProcedure() throws Exception {
    SessionFolder folder = created("a");
    String sum = Sha256.hex(PROCEDURE);
    assertArrayEquals(PROCEDURE, folder.procedureBytes(sum));
    Files.writeString(folder.procedure(), "{}");
    Fault fault = assertThrows(Fault.class, () -> folder.procedureBytes(sum));
    assertEquals(LogCode.OTHER_PROCEDURE, fault.code());
    Files.delete(folder.procedure());
    assertEquals(
        LogCode.CANNOT_READ, assertThrows(Fault.class, () -> folder.procedureBytes(sum)).code());
  }

  @Test
  @DisplayName("is found by its path, by its name, and as the last")
  void found() throws Exception {
    SessionFolder first = SessionFolder.create(sessions, "a", PROCEDURE, NOW.minusDays(1));
    SessionFolder second = created("b");
    SessionFolder empty = SessionFolder.create(sessions, "c", PROCEDURE, NOW.plusDays(1));
    SessionLogFile.open(first.log()).close();
    SessionLogFile.open(second.log()).close();
    assertEquals(first, SessionFolder.find(sessions, first.path().getFileName().toString()));
    assertEquals(first, SessionFolder.find(Path.of("elsewhere"), first.path().toString()));
    assertEquals(second, SessionFolder.find(sessions, "last"));
    assertTrue(Files.exists(empty.procedure()));
  }

  @Test
  @DisplayName("of a rehearsal lies apart, and is found by its name and as the last of both")
  void rehearsal() throws Exception {
    SessionFolder work = created("a");
    SessionFolder rehearsal =
        SessionFolder.create(
            SessionFolder.rehearsals(sessions), "b", PROCEDURE, NOW.plusMinutes(1));
    SessionLogFile.open(work.log()).close();
    SessionLogFile.open(rehearsal.log()).close();
    assertEquals(java.util.List.of(work), SessionFolder.all(sessions));
    assertEquals(rehearsal, SessionFolder.find(sessions, rehearsal.name()));
    assertEquals(rehearsal, SessionFolder.find(sessions, "rehearsals/" + rehearsal.name()));
    assertEquals(rehearsal, SessionFolder.find(sessions, "last"));
    assertEquals(work, SessionFolder.last(sessions));
  }

  @ParameterizedTest
  @ValueSource(strings = {"last", "nothing", "", "\u0000"})
  @DisplayName("that is not there is a fault")
  void notFound(String session) {
    Fault fault = assertThrows(Fault.class, () -> SessionFolder.find(sessions, session));
    assertEquals(LogCode.NO_SUCH_SESSION, fault.code());
    assertThrows(Fault.class, () -> SessionFolder.find(sessions.resolve("x"), session));
  }

  @Test
  @DisplayName("that cannot be created is a fault")
  void cannotCreate() throws Exception {
    Path file = Files.createFile(sessions.resolve("file"));
    Fault fault = assertThrows(Fault.class, () -> SessionFolder.create(file, "a", PROCEDURE, NOW));
    assertEquals(LogCode.CANNOT_CREATE, fault.code());
  }
}
