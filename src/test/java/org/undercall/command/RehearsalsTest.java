package org.undercall.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.speaker.PrintVoice;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.KeyboardEar;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.session.Work;

@DisplayName("A rehearsal")
class RehearsalsTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final String MARK = "NO RECORD OF WORK";

  @TempDir private Path sessions;
  private SessionFolder rehearsal;
  private String out;
  private String err;

  @BeforeEach
  void rehearsed() throws Exception {
    rehearsal = typed(SessionFolder.rehearsals(sessions), Occasion.REHEARSAL);
  }

  private static SessionFolder typed(Path folder, Occasion occasion) throws Exception {
    String said = "cautions understood\n382\nthat is correct\n";
    try (Work work = Work.on(PROCEDURE, folder, Job.NOT_GIVEN, occasion, false);
        KeyboardEar ear = new KeyboardEar(new StringReader(said), () -> {});
        PrintVoice voice = new PrintVoice(words -> {})) {
      work.run(ear, voice, Time.ofMachine());
      return work.folder();
    }
  }

  private int run(String... args) {
    StringWriter printed = new StringWriter();
    StringWriter faults = new StringWriter();
    int status =
        App.commandLine()
            .setOut(new PrintWriter(printed))
            .setErr(new PrintWriter(faults))
            .execute(args);
    out = printed.toString();
    err = faults.toString();
    return status;
  }

  private int runHere(String command, String... more) {
    List<String> all = new java.util.ArrayList<>(List.of(command));
    all.addAll(List.of(more));
    all.addAll(List.of("--sessions", sessions.toString()));
    return run(all.toArray(String[]::new));
  }

  @Test
  @DisplayName("is found as the last, and says what it is in its log and in the review")
  void review() throws Exception {
    assertTrue(Files.readString(rehearsal.log()).contains("\"occasion\":\"rehearsal\""));
    runHere("review", "last");
    assertTrue(out.startsWith("REHEARSAL"), out);
    assertEquals(2, out.split(MARK, -1).length - 1, "at the top and at the verdict: " + out);
    assertTrue(out.contains("typed 3 (100 %)"), out);
    runHere("review", rehearsal.name(), "--json");
    JsonNode json = new ObjectMapper().readTree(out);
    assertEquals("rehearsal", json.get("occasion").textValue());
    assertFalse(json.get("record").booleanValue());
    assertEquals(3, json.get("answers").get("typed").intValue());
    runHere("review", "last", "--csv", "events");
    out.lines().skip(1).forEach(row -> assertTrue(row.contains(",rehearsal,\"invented for"), row));
  }

  @Test
  @DisplayName("is marked in the list, and is no measure of a comparison")
  void list() throws Exception {
    SessionFolder work = typed(sessions, Occasion.WORK);
    assertEquals(0, runHere("sessions"), () -> err);
    assertTrue(out.contains("  rehearsals/" + rehearsal.name()), out);
    assertEquals(1, out.split("REHEARSAL, " + MARK, -1).length - 1, out);
    assertEquals(0, runHere("sessions", "--csv"));
    assertEquals(2, out.lines().filter(row -> row.contains(",open,")).count());
    assertTrue(
        out.lines().anyMatch(row -> row.startsWith(work.name()) && row.contains(",work,")), out);
    assertEquals(0, runHere("compare", work.name()));
    assertTrue(out.contains("against 0 earlier"), out);
  }

  @Test
  @DisplayName("is marked in the report, its captions and its to-dos")
  void report() throws Exception {
    assertEquals(0, runHere("report", "last", "--vtt", "--ics"), () -> err);
    Path folder = rehearsal.path().resolve("report");
    String page = Files.readString(folder.resolve("report.html"));
    assertTrue(page.contains("class=\"no-record\">REHEARSAL"), page);
    assertTrue(page.contains("content: \"REHEARSAL"), "at the top of each printed page");
    String captions = Files.readString(folder.resolve("report.vtt"));
    assertEquals(2, captions.split(MARK, -1).length - 1, captions);
    assertTrue(captions.contains("invented for demonstration"), captions);
  }

  @Test
  @DisplayName("is not signed, LOG-029, and verify says that it is no record")
  void signed() {
    Path key = sessions.resolve("shop.pem");
    run("key", key.toString());
    assertEquals(1, runHere("sign", "last", "--key", key.toString()));
    assertTrue(err.contains("LOG-029"), err);
    assertFalse(Files.exists(rehearsal.path().resolve("log.jsonl.sig")));
    assertEquals(0, runHere("verify", "last"));
    assertTrue(out.contains("rehearsal: no record of work"), out);
  }

  @Test
  @DisplayName("is not gone on with as work, nor work as a rehearsal, LOG-028")
  void takenUp() throws Exception {
    SessionFolder work = typed(sessions, Occasion.WORK);
    assertFalse(work.path().equals(rehearsal.path()));
    assertOther(rehearsal, Occasion.WORK);
    assertOther(work, Occasion.REHEARSAL);
    assertEquals(work, typed(sessions, Occasion.WORK), "the open one is taken up");
    assertFalse(typed(sessions, Occasion.REHEARSAL).equals(work), "passed by");
    Work.takeUp(rehearsal, Occasion.REHEARSAL).close();
  }

  private static void assertOther(SessionFolder folder, Occasion occasion) {
    Fault fault = assertThrows(Fault.class, () -> Work.takeUp(folder, occasion).close());
    assertEquals(LogCode.OTHER_OCCASION, fault.code());
  }
}
