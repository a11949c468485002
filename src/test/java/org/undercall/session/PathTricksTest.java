package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.clips.ClipFormat;
import org.undercall.adapter.clips.ClipWriter;
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

@DisplayName("No name and no link leads out of the folder of a session")
class PathTricksTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final Path SOUND =
      Path.of("src", "test", "resources", "sound", "one-seven-five.wav");
  private static final byte[] SECOND = new byte[32_000];

  @TempDir private Path folder;
  private Path sessions;
  private Path outside;
  private SessionFolder session;
  private String out;
  private Map<String, String> before;

  @BeforeEach
  void written() throws Exception {
    sessions = Files.createDirectory(folder.resolve("sessions"));
    outside = Files.createDirectory(folder.resolve("outside"));
    Files.writeString(outside.resolve("kept.txt"), "kept");
    Files.writeString(outside.resolve("000003.wav"), "not a clip of this session");
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    Clip sound = new Clip("000003.wav", Sha256.hex(Files.readAllBytes(SOUND)));
    List<Recorded> done = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    session = SessionFolder.create(sessions, "demo", Files.readAllBytes(PROCEDURE), LogMaker.START);
    try (SessionLogFile log = SessionLogFile.open(session.log())) {
      for (Recorded decision : LogMaker.withClip(done, 3, sound)) {
        log.append(decision);
      }
    }
    Files.createDirectory(session.clips());
    Files.copy(SOUND, session.clips().resolve("000003.wav"));
    assertEquals(0, run("key", folder.resolve("shop.pem").toString()), () -> out);
    before = outside();
  }

  private Map<String, String> outside() throws IOException {
    return FolderTexts.of(outside);
  }

  private int run(String... words) {
    StringWriter printed = new StringWriter();
    int status =
        App.commandLine()
            .setOut(new PrintWriter(printed))
            .setErr(new PrintWriter(printed))
            .execute(words);
    out = printed.toString();
    return status;
  }

  /** Puts a link at a place of the session, instead of what is there. */
  private void link(String place, Path to) throws IOException {
    Path link = session.path().resolve(place);
    if (Files.isDirectory(link)) {
      try (Stream<Path> files = Files.list(link)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
    }
    Files.deleteIfExists(link);
    Files.createDirectories(link.getParent());
    try {
      Files.createSymbolicLink(link, to);
    } catch (IOException | UnsupportedOperationException e) {
      assumeTrue(false, "no links here: " + e);
    }
  }

  /** Everything that writes into a session, one after the other; what came of it. */
  private String everything(boolean report) throws IOException {
    StringBuilder all = new StringBuilder();
    try (SessionLogFile log = SessionLogFile.open(session.log())) {
      all.append("opened ").append(log.decisions().size()).append('\n');
      log.sumTrouble().ifPresent(trouble -> all.append(trouble).append('\n'));
    } catch (org.undercall.port.Fault e) {
      all.append(e.getMessage()).append('\n');
    }
    ClipWriter.Settings settings = new ClipWriter.Settings(ClipFormat.WAV, true);
    new ClipWriter(session.clips(), settings, line -> all.append(line).append('\n'))
        .keep(4, SECOND);
    String path = session.path().toString();
    String key = folder.resolve("shop.pem").toString();
    List<String[]> commands =
        List.of(
            new String[] {"report", path, "--vtt", "--ics"},
            new String[] {"sign", path, "--key", key},
            new String[] {"sessions", "--sessions", sessions.toString()},
            new String[] {"clips", path, "--remove"});
    for (String[] command : report ? commands : commands.subList(1, commands.size())) {
      run(command);
      all.append(out);
    }
    return all.toString();
  }

  @Test
  @DisplayName("and without a trick all of it is written into the session")
  void usual() throws IOException {
    String all = everything(true);
    for (String file : List.of("report/report.pdf", "log.jsonl.sig", "log.jsonl.sha256")) {
      assertTrue(Files.isRegularFile(session.path().resolve(file)), () -> file + "\n" + all);
    }
    assertTrue(all.contains("2 deleted"), all);
    assertEquals(before, outside());
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource({
    "log.jsonl, kept.txt, LOG-001",
    "log.jsonl, new.txt, LOG-001",
    "log.jsonl.lock, new.txt, LOG-001",
    "log.jsonl.lock, kept.txt, LOG-001",
    "log.jsonl.sha256.new, kept.txt, symbolic links",
    "log.jsonl.sha256.new, new.txt, symbolic links",
    "log.jsonl.sha256, kept.txt, opened",
    "log.jsonl.sig, kept.txt, LOG-0",
    "log.jsonl.sig, new.txt, LOG-0",
    "clips, ., CLP-001",
    "clips/000004.wav.part, kept.txt, CLP-001",
    "clips/000004.wav.part, new.txt, CLP-001",
    "clips/000004.wav, kept.txt, deleted",
    "clips/000003.wav, kept.txt, deleted",
    "report, ., RPT-001",
    "report/report.html.part, kept.txt, RPT-001",
    "report/report.html.part, new.txt, RPT-001",
    "report/report.html, kept.txt, Wrote",
    "report/report.pdf.part, kept.txt, RPT-001",
    "report/report-sounds, ., RPT-002",
    "report/report-sounds/000003.wav, kept.txt, Wrote",
    "../index.jsonl, new.db, FLT-0",
    "../index.jsonl, kept.txt, FLT-0",
  })
  @DisplayName("a link in a session")
  void links(String place, String to, String answer) throws IOException {
    link(place, outside.resolve(to));
    String all = everything(place.startsWith("report"));
    assertEquals(before, outside(), all);
    assertTrue(all.contains(answer), all);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../../outside/x.json",
        "..\\..\\outside\\x.json",
        "/etc/x.yaml",
        "C:\\x.json",
        "..",
        ".",
        "",
        "....//....//x",
        "x\u0000y.json",
        "x\n../y.json",
        "..%2f..%2fx.json",
        "\uFF0E\uFF0E\uFF0Fx.json",
        "nul.json",
        "x.json/../../y",
        "-rf.json",
        "~/x.json",
        "$HOME.json"
      })
  @DisplayName("a name of a procedure")
  void names(String name) throws Exception {
    SessionFolder made = SessionFolder.create(sessions, name, new byte[1], LogMaker.START);
    assertEquals(sessions.toRealPath(), made.path().toRealPath().getParent());
    assertTrue(made.name().matches("2026-11-25-090000-[a-z0-9][a-z0-9-]*"), made.name());
    assertEquals(before, outside());
  }

  @ParameterizedTest
  @ValueSource(strings = {"../outside", "../../outside", "..", ".", "", "x\u0000", "kept.txt", "~"})
  @DisplayName("a name of a session that is none")
  void sessionNames(String name) throws IOException {
    for (String command : List.of("review", "report", "clips", "verify")) {
      assertEquals(1, run(command, name, "--sessions", sessions.toString()), () -> out);
      assertTrue(out.startsWith("LOG-0") && out.lines().count() == 1, () -> out);
    }
    assertEquals(before, outside());
  }

  @Test
  @DisplayName("a clip named in a log by another path")
  void clipNames() {
    for (String file :
        List.of("../000003.wav", "/000003.wav", "000003.wav/..", "..", "000003.wav\u0000", "x")) {
      assertFalse(Clip.isFile(file), file);
    }
  }

  @Test
  @DisplayName("a part of a workbook with a path in its name")
  void workbook() throws IOException {
    Path kept = Path.of("src", "test", "resources", "fuzz", "table", "outside-names.xlsx");
    Path inside = Files.createDirectory(folder.resolve("inside"));
    Path table = Files.copy(kept, inside.resolve("table.xlsx"));
    run("import", table.toString(), "--out", inside.resolve("made.json").toString());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          List.of("inside", "outside", "sessions", "shop.pem", "shop.pub.pem"),
          files.map(f -> f.getFileName().toString()).sorted().toList());
    }
    assertEquals(before, outside());
  }

  @ParameterizedTest
  @ValueSource(strings = {"*", "a'; DROP TABLE made; --", "[ab]?", "..x", "a\"b", "$(x)", "a b"})
  @DisplayName("a session's folder named like a pattern or a command, among many")
  void fleet(String name) throws IOException {
    Path odd = session.path().resolveSibling(name);
    Files.move(session.path(), odd);
    assertEquals(0, run("sessions", "--csv", "--sessions", sessions.toString()), () -> out);
    Optional<String> row = out.lines().skip(1).findFirst();
    assertTrue(row.orElse("").contains(name.replace("\"", "\"\"")), () -> out);
    assertEquals(2, out.lines().count(), out);
    assertEquals(before, outside());
  }
}
