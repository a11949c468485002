package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.Part;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.speaker.PrintVoice;
import org.undercall.command.App;
import org.undercall.core.decision.Session;
import org.undercall.core.decision.WalkThrough;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.KeyboardEar;
import org.undercall.port.Time;
import org.undercall.text.Sha256;

@DisplayName("A session of a procedure with blocks")
class BlocksSessionTest {
  private static final Path SHARED = Path.of("shared", "procedures");
  private static final String NAME = "trailing-arm-from-blocks.json";
  private static final List<String> BLOCKS =
      List.of(
          "ride-height-noted.yaml",
          "lift.yaml",
          "bonded-bush.yaml",
          "wheel-fitting.json",
          "road-test.yaml",
          "wheel-retorque.yaml");

  @TempDir private Path folder;
  private Path procedure;
  private Path sessions;
  private String printed;

  @BeforeEach
  void copied() throws IOException {
    Files.createDirectory(folder.resolve("blocks"));
    procedure = Files.copy(SHARED.resolve(NAME), folder.resolve(NAME));
    for (String block : BLOCKS) {
      Files.copy(SHARED.resolve("blocks/" + block), folder.resolve("blocks/" + block));
    }
    sessions = folder.resolve("sessions");
  }

  private static Session said(Work work, String typed) throws Exception {
    try (KeyboardEar ear = new KeyboardEar(new StringReader(typed), () -> {});
        PrintVoice voice = new PrintVoice(words -> {})) {
      return work.run(ear, voice, Time.ofMachine());
    }
  }

  private SessionFolder begun() throws Exception {
    try (Work work = Work.on(procedure, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertFalse(work.takenUp());
      said(work, "cautions understood\n300\nthat is correct\n");
      return work.folder();
    }
  }

  private void removed() throws IOException {
    Files.delete(procedure);
    for (String block : BLOCKS) {
      Files.delete(folder.resolve("blocks").resolve(block));
    }
  }

  private int run(String... args) {
    StringWriter out = new StringWriter();
    int status =
        App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(out)).execute(args);
    printed = out.toString();
    return status;
  }

  @Test
  @DisplayName("keeps it whole, with the name and SHA-256 of each file it was put together from")
  void kept() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(procedure);
    SessionFolder session = begun();
    removed();
    LoadedProcedure kept = ProcedureFile.load(session.procedure());
    assertEquals(loaded.procedure(), kept.procedure());
    assertEquals(
        Stream.concat(Stream.of(NAME), BLOCKS.stream().map("blocks/"::concat)).toList(),
        kept.assembled().parts().stream().map(Part::file).toList());
    for (Part part : kept.assembled().parts()) {
      byte[] bytes = Files.readAllBytes(SHARED.resolve(part.file()));
      assertEquals(Sha256.hex(bytes), part.sha256());
    }
    assertEquals(kept.sha256(), Sha256.hex(Files.readAllBytes(session.procedure())));
  }

  @Test
  @DisplayName("is taken up, finished, verified and reviewed when all its files are gone")
  void afterwards() throws Exception {
    Walk walk = Walk.of(ProcedureFile.load(procedure).procedure());
    SessionFolder session = begun();
    removed();
    String answers =
        WalkThrough.of(walk).stream()
            .flatMap(exchange -> exchange.answer().stream())
            .skip(3)
            .collect(Collectors.joining("\n"));
    try (Work again = Work.takeUp(session, Occasion.WORK)) {
      assertTrue(again.takenUp());
      assertEquals(0, said(again, answers + "\n").openSteps());
    }
    String path = session.path().toString();
    assertEquals(0, run("verify", path), () -> printed);
    assertEquals(0, run("review", path), () -> printed);
    assertTrue(printed.contains("Tighten the left wheel bolts"), printed);
    assertEquals(0, run("show", session.procedure().toString()), () -> printed);
    assertTrue(printed.contains("blocks/wheel-fitting.json"), printed);
  }

  @Test
  @DisplayName("is found again by its procedure, and a changed block begins a new one")
  void foundAgain() throws Exception {
    SessionFolder session = begun();
    try (Work again = Work.on(procedure, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertTrue(again.takenUp());
      assertEquals(session, again.folder());
    }
    Path block = folder.resolve("blocks/wheel-fitting.json");
    Files.writeString(block, Files.readString(block).replace("in the air", "off the ground"));
    try (Work other = Work.on(procedure, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertFalse(other.takenUp());
    }
    try (Work again = Work.takeUp(session, Occasion.WORK)) {
      assertTrue(again.takenUp());
    }
    assertEquals(0, run("verify", session.path().toString()), () -> printed);
  }

  @Test
  @DisplayName("is refused by verify if the kept procedure was changed")
  void changed() throws Exception {
    SessionFolder session = begun();
    String text = Files.readString(session.procedure());
    Files.writeString(session.procedure(), text.replace("\"torque\": 115", "\"torque\": 125"));
    assertEquals(1, run("verify", session.path().toString()));
    assertTrue(printed.contains("LOG-"), printed);
  }
}
