package org.undercall.command.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import picocli.CommandLine;

@DisplayName("The review command")
class ReviewCommandTest {
  private static final Path PROCEDURES = Path.of("shared", "procedures");

  @TempDir private Path sessions;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return new CommandLine(new ReviewCommand())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .setExecutionExceptionHandler(
            (fault, line, parsed) -> {
              line.getErr().println(fault.getMessage());
              return 1;
            })
        .execute(args);
  }

  private int runLast() {
    return run("--sessions", sessions.toString(), "last");
  }

  private SessionFolder session(String file, int leftOut) throws Exception {
    Path source = PROCEDURES.resolve(file);
    LoadedProcedure loaded = ProcedureFile.load(source);
    List<Recorded> log = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    SessionFolder folder =
        SessionFolder.create(sessions, file, loaded.wholeBytes(), LogMaker.START);
    try (SessionLogFile open = SessionLogFile.open(folder.log())) {
      for (Recorded decision : log.subList(0, log.size() - leftOut)) {
        open.append(decision);
      }
    }
    return folder;
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-lateral-link.json", "light-van-rear-axle.json"})
  @DisplayName("ends with 0 when all is done")
  void complete(String file) throws Exception {
    SessionFolder folder = session(file, 0);
    assertEquals(0, run(folder.path().toString()), () -> out + "\n" + err);
    String text = out.toString().replaceAll("\\s+", " ");
    int closed = text.indexOf("EVERY STEP CLOSED, NOT YET TO BE DRIVEN");
    assertTrue(text.indexOf("Before the car is driven: ", closed) > closed, out::toString);
    assertFalse(text.contains(" Complete"), out::toString);
    assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80));
  }

  @Test
  @DisplayName("prints the torque wrenches, and tables as CSV")
  void tables() throws Exception {
    SessionFolder folder = session("demo-lateral-link.json", 0);
    assertEquals(0, run(folder.path().toString()));
    String wrench =
        "wrench 1: 20 lbf·ft to 100 lbf·ft, calibration not stated, torques closed while it was"
            + " named: 0, not known to be with it: 2";
    assertTrue(out.toString().replaceAll("\\s+", " ").contains(wrench), out::toString);
    out.getBuffer().setLength(0);
    assertEquals(0, run(folder.path().toString(), "--csv"));
    assertTrue(out.toString().startsWith("step,side,phase,"), out::toString);
    assertFalse(out.toString().contains("wrench"), "none was named");
    out.getBuffer().setLength(0);
    assertEquals(0, run(folder.path().toString(), "--csv", "events"));
    assertTrue(out.toString().startsWith("seq,at,mono_ms,"), out::toString);
    assertTrue(out.toString().contains(",EV05,step-closed,bush-bolt,left,"), out::toString);
    assertEquals(2, run(folder.path().toString(), "--csv", "--json"));
  }

  @Test
  @DisplayName("ends with 3 when something is open")
  void notComplete() throws Exception {
    session("demo-lateral-link.json", 2);
    assertEquals(3, runLast());
    assertTrue(out.toString().contains("NOT COMPLETE"), out::toString);
  }

  @Test
  @DisplayName("prints JSON when asked")
  void json() throws Exception {
    SessionFolder folder = session("demo-lateral-link.json", 0);
    String name = folder.path().getFileName().toString();
    assertEquals(0, run("--json", "--sessions", sessions.toString(), name));
    assertTrue(new ObjectMapper().readTree(out.toString()).get("complete").booleanValue());
  }

  @Test
  @DisplayName("tells of a torn last line and reviews the rest")
  void torn() throws Exception {
    SessionFolder folder = session("demo-lateral-link.json", 0);
    byte[] bytes = Files.readAllBytes(folder.log());
    Files.write(folder.log(), java.util.Arrays.copyOf(bytes, bytes.length - 1));
    assertEquals(3, runLast());
    assertEquals("The last line of the log is torn and was left out.", err.toString().strip());
  }

  @Test
  @DisplayName("ends with 1 and one line when there is no session, or it was changed")
  void faults() throws Exception {
    assertEquals(1, runLast());
    assertTrue(err.toString().startsWith("LOG-010 "), err::toString);
    SessionFolder folder = session("demo-lateral-link.json", 0);
    Files.writeString(folder.procedure(), "{}");
    assertEquals(1, runLast());
    assertTrue(err.toString().contains("LOG-011 procedure.json"), err::toString);
    Files.write(folder.log(), new byte[0]);
    assertEquals(1, runLast());
    assertTrue(err.toString().contains("LOG-012 "), err::toString);
    assertEquals(3, err.toString().lines().count());
  }
}
