package org.undercall.command.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Recorded;
import org.undercall.fleet.MakeSessions;
import org.undercall.session.TypedTechnician;
import org.undercall.text.Sha256;
import picocli.CommandLine;

@DisplayName("The list of sessions")
class SessionsListTest {
  @TempDir private Path folder;

  private String list(String... more) {
    StringWriter out = new StringWriter();
    CommandLine line = App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(out));
    List<String> all =
        new ArrayList<>(List.of("sessions", "--csv", "--sessions", folder.toString()));
    all.addAll(List.of(more));
    assertEquals(0, line.execute(all.toArray(String[]::new)), out::toString);
    return out.toString();
  }

  @Test
  @DisplayName("shows the vehicle of a procedure in YAML as that of one in JSON")
  void yaml() throws Exception {
    Path demo = Path.of("shared", "procedures", "demo-lateral-link.json");
    String text = new YAMLMapper().writeValueAsString(new ObjectMapper().readTree(demo.toFile()));
    byte[] yaml = text.getBytes(StandardCharsets.UTF_8);
    Path session = folder.resolve("2026-01-05-080000-demo");
    List<Recorded> work =
        TypedTechnician.wholeWork(ProcedureFile.load(demo).procedure(), Sha256.hex(yaml));
    WrittenLog.write(session, yaml, work);
    Files.move(session.resolve("procedure.json"), session.resolve("procedure.yaml"));
    String vehicle = ProcedureFile.load(demo).procedure().about().vehicle();
    String listed = list("--vehicle", vehicle);
    assertEquals(2, listed.lines().count(), listed);
    assertTrue(listed.contains(",complete,") && listed.contains(vehicle), listed);
  }

  @Test
  @DisplayName("has every session, though one log holds half a pair of a character")
  void halfPair() throws Exception {
    MakeSessions.main(new String[] {"2", folder.toString(), "3"});
    SessionFolder one = SessionFolder.all(folder).get(0);
    Files.copy(
        Path.of("src", "test", "resources", "logs", "v1.jsonl"),
        one.log(),
        StandardCopyOption.REPLACE_EXISTING);
    String listed = list();
    for (SessionFolder session : SessionFolder.all(folder)) {
      assertTrue(listed.contains(session.name() + ","), listed);
    }
  }

  @Test
  @DisplayName("marks a log with right sums and an impossible order as damaged, with LOG-027")
  void impossible() throws Exception {
    MakeSessions.main(new String[] {"3", folder.toString(), "3"});
    SessionFolder one = SessionFolder.all(folder).get(1);
    List<Recorded> swapped = new ArrayList<>(SessionLogFile.read(one.log()).decisions());
    Collections.swap(swapped, 1, swapped.size() / 2);
    List<Recorded> numbered = new ArrayList<>();
    swapped.forEach(
        d ->
            numbered.add(
                new Recorded(numbered.size() + 1L, d.at(), d.heard(), d.events(), d.said())));
    byte[] procedure = Files.readAllBytes(one.procedure());
    WrittenLog.write(one.path(), procedure, numbered);
    String text = list("--state", "damaged");
    assertEquals(2, text.lines().count(), text);
    assertTrue(text.contains(one.name()) && text.contains("LOG-027 log.jsonl line "), text);
    assertEquals(4, list().lines().count());
  }
}
