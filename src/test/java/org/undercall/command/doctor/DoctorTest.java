package org.undercall.command.doctor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogCode;
import org.undercall.command.App;
import org.undercall.command.doctor.Found.State;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;

@DisplayName("The doctor")
@Timeout(120)
class DoctorTest {
  @TempDir Path folder;

  /** A check that does what it is told. */
  private record Told(String name, Callable<Found> call) implements Check {
    @Override
    public Found look() throws Exception {
      return call.call();
    }
  }

  private static List<Doctor.Result> run(long limit, Check... checks) throws InterruptedException {
    return new Doctor(List.of(checks), limit).run(result -> {});
  }

  @Test
  @DisplayName("leaves a check behind that hangs, and goes on with the next")
  void hangs() throws InterruptedException {
    CountDownLatch never = new CountDownLatch(1);
    Check hanging =
        new Told(
            "speaker",
            () -> {
              never.await();
              return Found.well("");
            });
    List<Doctor.Result> results = run(50, hanging, new Told("disk", () -> Found.well("fine")));
    never.countDown();
    assertTrue(results.get(0).found().found().startsWith("DOC-002 "));
    assertEquals("fine", results.get(1).found().found());
    assertFalse(Doctor.ready(results));
  }

  @Test
  @DisplayName("shows a message with a code as it is, and anything else as unexpected")
  void throwing() throws InterruptedException {
    List<Doctor.Result> results =
        run(60_000, new Told("a", DoctorTest::faulty), new Told("b", () -> throwing("oops")));
    assertEquals("LOG-002 x: found nothing, expected something", results.get(0).found().found());
    assertTrue(results.get(1).found().found().startsWith("DOC-003 "));
    assertTrue(results.get(1).found().found().contains("oops"));
  }

  private static Found faulty() {
    throw new UncheckedFault(new Fault(LogCode.CANNOT_READ, "x", "nothing", "something"));
  }

  private static Found throwing(String message) {
    throw new IllegalStateException(message);
  }

  @Test
  @DisplayName("is ready with notes, not with a fault, and names both")
  void verdict() throws InterruptedException {
    Check well = new Told("disk", () -> Found.well("fine"));
    Check note = new Told("board", () -> Found.note("BRD-001 taken", "take another"));
    Check fault = new Told("model", () -> Found.fault("MOD-001 none", "build"));
    List<Doctor.Result> noted = run(60_000, well, note);
    assertTrue(Doctor.ready(noted));
    assertTrue(DoctorText.verdict(noted).startsWith("Ready; look at: board."));
    assertTrue(DoctorText.verdict(run(60_000, well)).startsWith("Ready. "));
    assertEquals("Not ready: model.", DoctorText.verdict(run(60_000, well, note, fault)));
    assertEquals("note   board       BRD-001 taken - to do: take another", line(noted.get(1)));
    assertEquals("well   disk        fine", line(noted.get(0)));
  }

  private static String line(Doctor.Result result) {
    return DoctorText.line(result);
  }

  @Test
  @DisplayName("keeps every check on one line, whatever was found")
  void oneLine() {
    assertEquals("a | b", Found.well("a\n  b\r\n").found());
  }

  @Test
  @DisplayName("runs for real on this machine, with the same in text and JSON")
  void real() throws Exception {
    StringWriter text = new StringWriter();
    int status = doctor(text);
    StringWriter printed = new StringWriter();
    assertEquals(status, doctor(printed, "--json"));
    JsonNode json = new ObjectMapper().readTree(printed.toString());
    assertEquals(status == 0, json.get("ready").booleanValue());
    List<String> lines = text.toString().lines().toList();
    List<String> checks = new ArrayList<>();
    json.get("checks").forEach(c -> checks.add(c.get("check").asText()));
    assertEquals(
        List.of(
            "java",
            "recogniser",
            "model",
            "microphone",
            "speaker",
            "voice",
            "own voice",
            "disk",
            "board",
            "procedures",
            "sessions",
            "places"),
        checks);
    assertEquals(checks.size() + 1, lines.size());
    for (JsonNode check : json.get("checks")) {
      boolean trouble = !check.get("state").asText().equals(State.WELL.word());
      assertEquals(trouble, !check.get("remedy").asText().isEmpty(), check.toString());
    }
    assertTrue(lines.get(0).startsWith("well   java"), lines.get(0));
  }

  private int doctor(StringWriter out, String... more) {
    String[] fixed = {"doctor", "--board-port", "0", "--sessions", folder.toString()};
    List<String> words = new ArrayList<>(Arrays.asList(fixed));
    words.addAll(List.of(more));
    return App.commandLine().setOut(new PrintWriter(out)).execute(words.toArray(String[]::new));
  }

  @Test
  @DisplayName("takes no port that no machine has")
  void port() {
    StringWriter err = new StringWriter();
    int status =
        App.commandLine().setErr(new PrintWriter(err)).execute("doctor", "--board-port", "65536");
    assertEquals(2, status);
    assertTrue(err.toString().startsWith("USE-001 found --board-port 65536"), err::toString);
  }

  @Test
  @DisplayName("gives every code once")
  void codes() {
    List<String> codes = Arrays.stream(DoctorCode.values()).map(DoctorCode::id).toList();
    assertEquals(codes.size(), codes.stream().distinct().count());
    String meanings =
        Arrays.stream(DoctorCode.values()).map(DoctorCode::meaning).collect(Collectors.joining());
    assertTrue(meanings.endsWith("."));
  }
}
