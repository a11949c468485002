package org.undercall.session;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("A stored session")
class StoredSessionTest {
  private static final Path PROCEDURES = Path.of("shared", "procedures");
  private static final Path DEMO = PROCEDURES.resolve("demo-lateral-link.json");

  @TempDir private Path sessions;
  private LoadedProcedure demo;
  private SessionFolder folder;

  @BeforeEach
  void store() throws Exception {
    demo = ProcedureFile.load(DEMO);
    folder = stored(Files.readAllBytes(DEMO), demo.sha256());
  }

  private SessionFolder stored(byte[] procedure, String sha256) throws Exception {
    SessionFolder made = SessionFolder.create(sessions, "demo", procedure, LogMaker.START);
    try (SessionLogFile open = SessionLogFile.open(made.log())) {
      for (Recorded decision : LogMaker.allDone(Walk.of(demo.procedure()), sha256)) {
        open.append(decision);
      }
    }
    return made;
  }

  /** The same procedure with one value changed: every step of it fits the log. */
  private static String changed() throws IOException {
    return Files.readString(DEMO).replace("\"torque\": 135", "\"torque\": 136");
  }

  private static void replace(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  @DisplayName("has its log, the procedure it began with, and what was done")
  void whole() throws Exception {
    StoredSession stored = StoredSession.read(folder);
    assertEquals(demo.procedure(), stored.procedure());
    assertEquals(SessionLogFile.read(folder.log()), stored.log());
    assertTrue(stored.review().complete());
  }

  @Test
  @DisplayName("never uses a procedure that is put in its place after it was verified")
  void changedAfterwards() throws Exception {
    String other = changed();
    LogContent log = SessionLogFile.read(folder.log());
    AtomicInteger reads = new AtomicInteger();
    StoredSession stored =
        StoredSession.of(
            folder,
            log,
            sha256 -> {
              reads.incrementAndGet();
              byte[] verified = folder.procedureBytes(sha256);
              replace(folder.procedure(), other);
              return verified;
            });
    assertEquals(1, reads.get());
    assertEquals(demo.procedure(), stored.procedure());
    assertEquals(demo.sha256(), Sha256.hex(stored.kept().wholeBytes()));
    assertEquals(other, Files.readString(folder.procedure()), "it was changed in between");
  }

  @Test
  @DisplayName("is proven by the bytes that were verified, whatever is put in their place")
  void proven() throws Exception {
    byte[] verified = Files.readAllBytes(folder.procedure());
    Path tieRod = PROCEDURES.resolve("tie-rod-counter-nut.json");
    String other = ProcedureFile.load(tieRod).assembled().text();
    List<Recorded> log = SessionLogFile.read(folder.log()).decisions();
    Proof any = new Proof(new KeptProcedures());
    assertTrue(any.broken(folder, other.getBytes(UTF_8), log).isPresent(), "no other will do");
    Proof own = new Proof(new KeptProcedures());
    AtomicInteger asked = new AtomicInteger();
    SessionProof proof =
        SessionProof.of(
            folder,
            Optional.empty(),
            (session, procedure, decisions) -> {
              asked.incrementAndGet();
              replace(session.procedure(), other);
              assertArrayEquals(verified, procedure);
              return own.broken(session, procedure, decisions);
            });
    assertEquals(1, asked.get());
    assertTrue(proof.whole(), proof.findings()::toString);
  }

  @Test
  @DisplayName("is refused with a procedure that was changed before")
  void changedBefore() throws Exception {
    Files.writeString(folder.procedure(), changed());
    Fault fault = assertThrows(Fault.class, () -> StoredSession.read(folder));
    assertEquals(LogCode.OTHER_PROCEDURE, fault.code());
  }

  @Test
  @DisplayName("is refused with a procedure that needs other files, whose sums nobody kept")
  void needsOthers() throws Exception {
    Path blocks = PROCEDURES.resolve("trailing-arm-from-blocks.json");
    byte[] bytes = Files.readAllBytes(blocks);
    SessionFolder apart = stored(bytes, Sha256.hex(bytes));
    Files.createDirectory(apart.path().resolve("blocks"));
    try (Stream<Path> all = Files.list(PROCEDURES.resolve("blocks"))) {
      for (Path block : all.toList()) {
        Files.copy(block, apart.path().resolve("blocks").resolve(block.getFileName()));
      }
    }
    Fault fault = assertThrows(Fault.class, () -> StoredSession.read(apart));
    assertEquals(LogCode.OTHER_PROCEDURE, fault.code());
  }

  @Test
  @DisplayName("is not taken up when its log, once open, tells of another procedure")
  void otherLog() throws Exception {
    Path other = sessions.resolve("other.json");
    Files.writeString(other, changed());
    LoadedProcedure loaded = ProcedureFile.load(other);
    Fault fault = assertThrows(Fault.class, () -> OpenSession.takeUp(folder, loaded).close());
    assertEquals(LogCode.OTHER_PROCEDURE, fault.code());
    SessionLogFile.open(folder.log()).close();
  }

  @Test
  @DisplayName("counts for the uses of wrenches only with the procedure it began with")
  void counted() throws Exception {
    List<Tool> tools = demo.procedure().tools();
    CountedUses whole = CountedUses.in(sessions, tools);
    assertEquals(1, whole.sessions());
    assertEquals(List.of(), whole.faults());
    assertTrue(whole.uses().values().stream().mapToInt(Integer::intValue).sum() > 0);
    Files.writeString(folder.procedure(), changed());
    CountedUses none = CountedUses.in(sessions, tools);
    assertEquals(0, none.sessions());
    assertEquals(java.util.Map.of(), none.uses());
    assertEquals(1, none.faults().size());
    assertTrue(
        none.faults().get(0).startsWith("LOG-011 procedure.json: "), none.faults()::toString);
    assertTrue(none.faults().get(0).endsWith(" (session " + folder.name() + ")"));
    assertEquals(0, CountedUses.in(sessions.resolve("absent"), tools).sessions());
  }
}
