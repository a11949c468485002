package org.undercall.command.procedure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.check.CheckRule;
import org.undercall.core.check.Severity;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import picocli.CommandLine;

@DisplayName("The check command")
class CheckCommandTest {
  private static final Path FILES = Path.of("src/test/resources/procedures");
  private static final Clock JUNE =
      Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... args) {
    String[] words = List.of(args).stream().map(String::valueOf).toArray(String[]::new);
    return new CommandLine(new CheckCommand(JUNE))
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .setExecutionExceptionHandler(
            (fault, line, parsed) -> {
              line.getErr().println(fault.getMessage());
              return 1;
            })
        .execute(words);
  }

  private JsonNode json() throws Exception {
    return new ObjectMapper().readTree(out.toString());
  }

  @Nested
  @DisplayName("on a bad procedure")
  class BadProcedure {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/procedures/check/expected.csv")
    @DisplayName("names exactly the broken rule and its place")
    void exactlyItsRule(String file, String code, String pointer, String place) throws Exception {
      int status = run("--json", FILES.resolve("check").resolve(file));
      List<String> seen = new ArrayList<>();
      json()
          .get("findings")
          .forEach(
              f ->
                  seen.add(
                      f.get("code").asText()
                          + " "
                          + f.get("pointer").asText()
                          + " "
                          + f.get("line")
                          + ":"
                          + f.get("column")));
      boolean remark =
          Set.of(CheckRule.values()).stream()
              .anyMatch(r -> r.code().equals(code) && r.severity() == Severity.REMARK);
      assertEquals(List.of(code + " " + pointer + " " + place), seen);
      assertEquals(remark ? 0 : 3, status);
    }

    @Test
    @DisplayName("shows code, severity, place, found, expected and source")
    void asText() {
      assertEquals(3, run(FILES.resolve("check/bush-without-load.json")));
      assertEquals(
          """
          CHK-005 error bush-without-load.json:29:22 /phases/0/steps/1/fastener/needs
            A bonded bush is tightened at any load condition.
            found "any" at a bush
            expected "ride-height", or "full-droop" if the maker says so
            to do: State the load condition that the maker gives.
            source: a bonded bush keeps the twist it is tightened with: common practice
          1 error, 0 warnings, 0 remarks.
          """,
          out.toString());
    }
  }

  @Nested
  @DisplayName("with sessions")
  class WithSessions {
    private static final Path DEMO = Path.of("shared/procedures/demo-lateral-link.json");

    @TempDir private Path sessions;

    private SessionFolder session() throws Exception {
      LoadedProcedure loaded = ProcedureFile.load(DEMO);
      SessionFolder made =
          SessionFolder.create(sessions, "demo", loaded.wholeBytes(), LogMaker.START);
      WrittenLog.write(
          made.path(),
          loaded.wholeBytes(),
          LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256()));
      return made;
    }

    @Test
    @DisplayName("says which of them it could not count, with the code")
    void notCounted() throws Exception {
      SessionFolder session = session();
      assertEquals(0, run(DEMO, "--sessions", sessions));
      assertEquals("", err.toString());
      String before = out.toString();
      Files.writeString(session.procedure(), "{}");
      assertEquals(0, run(DEMO, "--sessions", sessions));
      assertTrue(
          err.toString().startsWith("Uses not counted: LOG-011 procedure.json: found SHA-256 "),
          err::toString);
      assertTrue(err.toString().contains(session.name()), err::toString);
      assertEquals(before + before, out.toString(), "few uses are no finding");
    }
  }

  @Nested
  @DisplayName("on a good procedure")
  class GoodProcedure {

    @Test
    @DisplayName("finds nothing and does not say that it is right")
    void nothing() {
      assertEquals(0, run(FILES.resolve("check/good.json")));
      assertEquals(
          "No finding. That a procedure is right is for its author to say.\n", out.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-lateral-link.json", "light-van-rear-axle.json"})
    @DisplayName("that comes with the program has remarks at most")
    void demo(String name) {
      assertEquals(0, run(Path.of("shared/procedures", name)), out::toString);
    }
  }

  @Nested
  @DisplayName("judges calibrations")
  class Calibrations {

    @Test
    @DisplayName("names the files of one with blocks, and where the values of each come from")
    void blocks() {
      run(Path.of("shared/procedures/trailing-arm-from-blocks.json"));
      String text = out.toString();
      assertTrue(text.contains("Put together from:"), text);
      assertTrue(text.contains("  blocks/bonded-bush.yaml\n    values: none of its own"), text);
    }

    @Test
    @DisplayName("for the day given")
    void given() {
      assertEquals(3, run("--on", "2027-02-17", FILES.resolve("check/good.json")));
      assertTrue(out.toString().contains("CHK-016"));
    }

    @Test
    @DisplayName("as valid on the last day of the twelve months")
    void lastDay() {
      assertEquals(0, run("--on", "2027-02-16", FILES.resolve("check/good.json")));
    }

    @Test
    @DisplayName("as wrong if they lie in the future")
    void future() {
      assertEquals(3, run("--on", "2026-02-16", FILES.resolve("check/good.json")));
      assertTrue(out.toString().contains("CHK-016"));
    }
  }

  @Nested
  @DisplayName("on a file that cannot be used")
  class Unusable {

    @ParameterizedTest
    @CsvFileSource(resources = "/procedures/bad/expected.csv")
    @DisplayName("prints its faults and no stack trace")
    void fault(String file, String code) {
      int status = run(FILES.resolve("bad").resolve(file));
      assertAll(
          () -> assertEquals(1, status),
          () -> assertTrue(err.toString().startsWith(code), err::toString),
          () -> assertFalse(err.toString().contains("\tat ")),
          () -> assertEquals("", out.toString()));
    }

    @Test
    @DisplayName("for a day that is none, says how it is used")
    void usage() {
      assertEquals(2, run("--on", "yesterday", FILES.resolve("check/good.json")));
    }
  }
}
