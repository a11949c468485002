package org.undercall.command.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.text.Sha256;

@DisplayName("The report command")
class ReportCommandTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final List<String> SIZES =
      List.of("--clamped", "60", "--shank", "40", "--tube", "30", "14");

  @TempDir private Path folder;
  private Path session;
  private final StringWriter err = new StringWriter();
  private final StringWriter out = new StringWriter();

  @BeforeEach
  void makeSession() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    byte[] sound = {1};
    Clip kept = new Clip("000002.flac", Sha256.hex(sound));
    Clip changed = new Clip("000003.flac", Sha256.hex(new byte[] {2}));
    List<Recorded> done = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    List<Recorded> log = LogMaker.withClip(LogMaker.withClip(done, 2, kept), 3, changed);
    SessionFolder made =
        SessionFolder.create(folder, "demo", Files.readAllBytes(PROCEDURE), LogMaker.START);
    try (SessionLogFile open = SessionLogFile.open(made.log())) {
      for (Recorded decision : log) {
        open.append(decision);
      }
    }
    session = made.path();
    Files.createDirectory(session.resolve("clips"));
    Files.write(session.resolve("clips").resolve("000002.flac"), sound);
    Files.write(session.resolve("clips").resolve("000003.flac"), sound);
    Files.write(session.resolve("clips").resolve("999999.wav"), new byte[] {1});
  }

  private int run(String... options) {
    String[] call = new String[options.length + 2];
    call[0] = "report";
    call[1] = session.toString();
    System.arraycopy(options, 0, call, 2, options.length);
    return App.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(call);
  }

  private String page() throws Exception {
    return Files.readString(session.resolve("report").resolve("report.html"));
  }

  @Test
  @DisplayName("writes a page and a PDF into the session, with the sounds that belong to a line")
  void writes() throws Exception {
    assertEquals(0, run(), err::toString);
    Path report = session.resolve("report");
    assertTrue(page().contains("src=\"report-sounds/000002.flac\""));
    assertFalse(page().contains("000003.flac"), "a changed sound");
    assertFalse(page().contains("999999"), "a sound that the log does not name");
    assertTrue(Files.exists(report.resolve("report-sounds").resolve("000002.flac")));
    byte[] pdf = Files.readAllBytes(report.resolve("report.pdf"));
    assertEquals("%PDF-", new String(pdf, 0, 5, java.nio.charset.StandardCharsets.US_ASCII));
    assertFalse(Files.exists(report.resolve("report.vtt")));
    assertFalse(Files.exists(report.resolve("report.ics")));
    assertEquals(2, out.toString().lines().count());
  }

  @Test
  @DisplayName("leaves the sounds out, and writes captions and to-dos, when asked")
  void asked() throws Exception {
    assertEquals(0, run("--no-clips", "--vtt", "--due", "7", "--paper", "letter"), err::toString);
    assertFalse(page().contains("<audio"));
    assertTrue(page().contains("size: letter;"));
    Path report = session.resolve("report");
    assertFalse(Files.exists(report.resolve("report-sounds")));
    assertTrue(Files.readString(report.resolve("report.ics")).contains("DUE;VALUE=DATE:"));
    assertTrue(Files.readString(report.resolve("report.vtt")).startsWith("WEBVTT"));
  }

  @Test
  @DisplayName("shows names only when they are given")
  void names() throws Exception {
    assertEquals(0, run(), err::toString);
    assertFalse(page().contains("Customer"));
    assertEquals(0, run("--customer", "C & D", "--technician", " "), err::toString);
    assertTrue(page().contains("C &amp; D"));
    assertTrue(page().contains("Technician</th><td>not given"));
    assertEquals(0, run("--technician", "C & D"), err::toString);
    assertTrue(page().contains("Technician</th><td>C &amp; D"));
  }

  @Test
  @DisplayName("draws computed preload when the sizes of the joint are given")
  void sketch() throws Exception {
    String[] call = {"--sketch", "bush-bolt"};
    String[] whole =
        java.util.stream.Stream.concat(List.of(call).stream(), SIZES.stream())
            .toArray(String[]::new);
    assertEquals(0, run(whole), err::toString);
    assertTrue(page().contains("Computed sketch, not measured"));
    assertTrue(page().contains("clamped length 60.0 mm"));
    assertFalse(page().contains(" style=\""));
  }

  @ParameterizedTest
  @CsvSource({
    "bush-bolt, RPT-004 --sketch bush-bolt: found no sizes of the joint",
    "joint-nut, RPT-003 --sketch joint-nut: found no such step",
    "nothing, RPT-003 --sketch nothing: found no such step"
  })
  @DisplayName("says why it cannot draw")
  void noSketch(String step, String message) {
    assertEquals(1, run("--sketch", step));
    assertTrue(err.toString().startsWith(message), err::toString);
    assertEquals(1, err.toString().lines().count());
  }

  @Test
  @DisplayName("says that it cannot write")
  void cannotWrite() throws Exception {
    Path file = Files.createFile(folder.resolve("taken"));
    assertEquals(1, run("--out", file.toString()));
    assertTrue(err.toString().startsWith("RPT-001 taken: found "), err::toString);
  }

  @Test
  @DisplayName("refuses a number of days that cannot be meant")
  void days() {
    assertEquals(2, run("--due", "-1"));
    assertTrue(err.toString().contains("--due: found -1"), err::toString);
  }
}
