package org.undercall.command.front;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.speaker.PrintVoice;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.KeyboardEar;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.session.OpenSessions;
import org.undercall.session.Work;

@DisplayName("At the first screen")
class ChoosingTest {
  private static final Path SHARED = Path.of("target", "two-procedures");
  private static final Path DEMO = SHARED.resolve("demo-lateral-link.json");
  private static final Path VAN = SHARED.resolve("light-van-rear-axle.json");

  /** A folder with two procedures and the blocks, whatever else comes with the program. */
  @BeforeAll
  static void copyTwo() throws IOException {
    Path all = Path.of("shared", "procedures");
    Files.createDirectories(SHARED.resolve("blocks"));
    try (Stream<Path> blocks = Files.list(all.resolve("blocks"))) {
      for (Path from :
          Stream.concat(Stream.of(DEMO, VAN).map(SHARED::relativize).map(all::resolve), blocks)
              .toList()) {
        Path copy = SHARED.resolve(all.relativize(from));
        Files.copy(from, copy, StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();

  private Path sessions() {
    return folder.resolve("sessions");
  }

  /** Works with typed phrases until they end. */
  private SessionFolder worked(Path procedure, String typed) throws Exception {
    try (Work work = Work.on(procedure, sessions(), Job.NOT_GIVEN, Occasion.WORK, true);
        KeyboardEar ear = new KeyboardEar(new java.io.StringReader(typed), () -> {});
        PrintVoice voice = new PrintVoice(words -> {})) {
      work.run(ear, voice, Time.ofMachine());
      return work.folder();
    }
  }

  private Offer offer() {
    Path none = folder.resolve("none");
    return new Offer(OpenSessions.in(sessions()), ProcedureShelf.in(none, List.of(none, SHARED)));
  }

  private Optional<Chosen> choose(Offer offer, InputStream typed, boolean attended)
      throws IOException {
    return new Choosing(new Terminal(typed, attended), new PrintWriter(out))
        .choose(offer, OffsetDateTime.now(java.time.ZoneOffset.UTC));
  }

  private static InputStream typing(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  @Nested
  @DisplayName("somebody is asked, and")
  class Asked {
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"2", " 2 ", "x\n2", "0\n3\n-1\n2", "\n2", "2.0\n99999999999\n2"})
    @DisplayName("a number is taken; anything else is asked again")
    void number(String typed) throws IOException {
      Optional<Chosen> chosen = choose(offer(), typing(typed + "\n"), true);
      assertEquals(Optional.of(new Chosen.Fresh(VAN)), chosen);
      int questions = out.toString().split("Number: ", -1).length - 1;
      assertEquals(typed.split("\n", -1).length, questions);
    }

    @Test
    @DisplayName("not a byte more than the line is read")
    void rest() throws IOException {
      InputStream typed = typing("1\r\ncautions understood\n");
      assertEquals(Optional.of(new Chosen.Fresh(DEMO)), choose(offer(), typed, true));
      assertEquals(
          "cautions understood\n", new String(typed.readAllBytes(), StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("an end of the input in the middle chooses nothing")
    void end() throws IOException {
      assertEquals(Optional.empty(), choose(offer(), typing("x\n"), true));
      assertTrue(out.toString().contains("Found \"x\", expected a number from 1 to 2."));
    }

    @Test
    @DisplayName("a bell that was typed is not rung")
    void control() throws IOException {
      choose(offer(), typing("\u0007\n"), true);
      assertFalse(out.toString().contains("\u0007"));
    }

    @Test
    @DisplayName("Enter takes up the session worked on last")
    void enter() throws Exception {
      SessionFolder first = worked(VAN, "");
      worked(DEMO, "cautions understood\n");
      try (Work again = Work.takeUp(first, Occasion.WORK);
          KeyboardEar ear = new KeyboardEar(new java.io.StringReader("where am i\n"), () -> {})) {
        again.run(ear, new PrintVoice(words -> {}), Time.ofMachine());
      }
      Optional<Chosen> chosen = choose(offer(), typing("\n"), true);
      assertEquals(Optional.of(new Chosen.Session(first)), chosen);
      assertTrue(out.toString().contains("Number (Enter alone: 1): "));
    }
  }

  @Test
  @DisplayName("nobody there is asked nothing, and told what to type")
  void unattended() throws Exception {
    assertEquals(Optional.empty(), choose(offer(), typing("1\n"), false));
    assertFalse(out.toString().contains("Number"));
    assertEquals("undercall work " + DEMO, offer().command("work"));
    SessionFolder open = worked(DEMO, "");
    assertEquals("undercall rehearse --resume " + open.name(), offer().command("rehearse"));
  }

  @Test
  @DisplayName("a session is shown with its procedure, what is open, where it stands and its name")
  void session() throws Exception {
    SessionFolder open = worked(DEMO, "cautions understood\n382\nthat is correct\n");
    OpenSessions.Open left = OpenSessions.in(sessions()).newest().orElseThrow();
    assertEquals(
        List.of(
            "  7  Lateral link, short demonstration" + " ".repeat(31) + "2 hours ago",
            "     14 of 15 open, at step 2, left: Look at the joint boot",
            "     " + open.name()),
        OfferText.of(7, left, left.last().plusHours(2).plusMinutes(59)));
  }

  @Test
  @DisplayName("complete sessions are counted, broken ones listed with their code, others offered")
  void broken() throws Exception {
    SessionFolder open = worked(DEMO, "");
    SessionFolder changed = worked(DEMO, "");
    Files.writeString(changed.procedure(), "{}");
    SessionFolder damaged = worked(DEMO, "");
    Files.writeString(damaged.log(), "x\ny\n");
    Files.createDirectories(sessions().resolve("no-session"));
    OpenSessions found = OpenSessions.in(sessions());
    assertEquals(List.of(open), found.open().stream().map(OpenSessions.Open::folder).toList());
    assertEquals(2, found.faults().size());
    assertTrue(
        found.faults().stream()
            .anyMatch(f -> f.startsWith("LOG-011 ") && f.contains(changed.name())));
    assertTrue(
        found.faults().stream()
            .anyMatch(f -> f.startsWith("LOG-004 ") && f.contains(damaged.name())));
    assertFalse(found.none());
  }

  @Test
  @DisplayName("a complete session is not taken up")
  void complete() throws Exception {
    SessionFolder open = worked(DEMO, "");
    LoadedProcedure loaded = ProcedureFile.load(DEMO);
    WrittenLog.write(
        open.path(),
        Files.readAllBytes(DEMO),
        LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256()));
    Fault fault = assertThrows(Fault.class, () -> Work.takeUp(open, Occasion.WORK).close());
    assertEquals(LogCode.COMPLETE, fault.code());
    assertTrue(fault.getMessage().startsWith("LOG-013 session " + open.name()));
  }

  @Test
  @DisplayName("only files that look like a procedure count in the folder of work")
  void shelf() throws IOException {
    Files.writeString(folder.resolve("package.json"), "{\"name\": \"x\"}");
    Files.writeString(folder.resolve("half.json"), "{\"$schema\": \"procedure.schema.json\"");
    Files.copy(DEMO, folder.resolve("mine.json"));
    Path own = Files.createDirectories(folder.resolve("own"));
    Files.writeString(own.resolve("notes.json"), "[]");
    Files.writeString(own.resolve("notes.txt"), "[]");
    ProcedureShelf shelf = ProcedureShelf.in(folder, List.of(own, folder));
    assertEquals(
        List.of("mine.json"),
        shelf.usable().stream().map(p -> p.file().getFileName().toString()).toList());
    List<String> codes = shelf.faults().stream().map(f -> f.substring(0, 18).strip()).toList();
    assertEquals(3, codes.size(), codes.toString());
    assertTrue(codes.get(0).startsWith("PRO-005 half.json"), codes.toString());
    assertTrue(codes.get(1).startsWith("PRO-010 notes.json"), codes.toString());
  }

  @ParameterizedTest(name = "{0} s: {1}")
  @CsvSource({
    "0, just now",
    "59, just now",
    "60, 1 minute ago",
    "3599, 59 minutes ago",
    "3600, 1 hour ago",
    "172800, 2 days ago",
    "-1, dated 2026-11-25"
  })
  @DisplayName("how long ago is told in the largest whole unit")
  void ago(long seconds, String words) {
    OffsetDateTime last = OffsetDateTime.parse("2026-11-25T08:00:00+01:00");
    assertEquals(words, OfferText.ago(last, last.plusSeconds(seconds)));
  }
}
