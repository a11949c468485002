package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Job;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.StepRef;
import org.undercall.port.Fault;

@DisplayName("A visit that goes on from a session")
class VisitTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final String FIRST = "2026-01-05-080000-demo";

  @TempDir private Path sessions;
  private LoadedProcedure demo;

  @BeforeEach
  void first() throws Exception {
    demo = ProcedureFile.load(DEMO);
    write(
        FIRST,
        demo,
        job("INV 123"),
        Optional.empty(),
        TypedTechnician.wholeWork(demo.procedure(), demo.sha256()));
  }

  private static Job job(String plate) {
    return new Job(
        Optional.of(plate),
        Optional.empty(),
        Optional.of(new Measure(new BigDecimal("84210"), MeasureUnit.KILOMETRE)),
        Optional.empty(),
        Optional.empty());
  }

  /** Writes a session of a job, with a link if it is a visit. */
  private void write(
      String name,
      LoadedProcedure loaded,
      Job job,
      Optional<SessionEvent.VisitBegun> visit,
      List<Recorded> work)
      throws Exception {
    List<Recorded> all = new ArrayList<>(work);
    Recorded old = all.get(0);
    List<SessionEvent> events = new ArrayList<>(old.events());
    var about = loaded.procedure().about();
    events.set(
        0,
        new SessionEvent.SessionStarted(
            about.title(), about.revision(), loaded.sha256(), "test", job));
    visit.ifPresent(link -> events.add(1, link));
    all.set(0, new Recorded(1, old.at(), old.heard(), events, old.said()));
    WrittenLog.write(sessions.resolve(name), loaded.wholeBytes(), all);
  }

  private Visit visit(String named, Job given) throws Fault {
    return Visit.of(sessions, named, given, Occasion.WORK);
  }

  private String code(String named, Job given) {
    return assertThrows(Fault.class, () -> visit(named, given)).code().id();
  }

  private void visited(String name, Visit visit, Job job) throws Exception {
    LoadedProcedure loaded = visit.procedure();
    write(
        name,
        loaded,
        job,
        Optional.of(visit.begun()),
        TypedTechnician.wholeWork(loaded.procedure(), loaded.sha256()));
  }

  private String command(String... words) {
    StringWriter out = new StringWriter();
    App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(out)).execute(words);
    return out.toString().replaceAll("\\s+", " ");
  }

  @Test
  @DisplayName(
      "has the wheel bolts alone, with the torque they were tightened to, and asks if they moved")
  void procedure() throws Exception {
    Visit visit = visit(FIRST, Job.NOT_GIVEN);
    List<Step> steps = visit.procedure().procedure().phases().get(0).steps();
    assertEquals(2, steps.size());
    Step.Fasten bolts = (Step.Fasten) steps.get(0);
    assertEquals("wheel-bolts", bolts.head().id());
    Stage.TorqueStage torque =
        (Stage.TorqueStage) bolts.fastener().variants().get(0).stages().get(0);
    assertEquals("135 N·m", torque.target().toString());
    assertEquals(Stage.TorqueStage.Form.CHECK_PASS, torque.form());
    assertEquals(5, bolts.fastener().set().count());
    assertEquals(Optional.of("Did all stay put?"), ((Step.Do) steps.get(1)).check());
    assertEquals(FIRST, visit.begun().session());
    assertEquals(Optional.of("INV 123"), visit.job().registration());
    assertEquals(Optional.empty(), visit.job().odometer());
  }

  @Test
  @DisplayName("is found by the plate, however it is typed, but not among several")
  void byPlate() throws Exception {
    assertEquals(FIRST, visit("inv-123", Job.NOT_GIVEN).begun().session());
    write(
        "2026-01-06-080000-demo",
        demo,
        job("INV 123"),
        Optional.empty(),
        TypedTechnician.wholeWork(demo.procedure(), demo.sha256()));
    Fault several = assertThrows(Fault.class, () -> visit("INV123", Job.NOT_GIVEN));
    assertEquals(VisitCode.SEVERAL, several.code());
    assertTrue(several.getMessage().contains(FIRST), several.getMessage());
    assertEquals(LogCode.NO_SUCH_SESSION.id(), code("INV 999", Job.NOT_GIVEN));
  }

  @Test
  @DisplayName(
      "is refused from an unfinished session, a rehearsal, another car, and where nothing is due")
  void refused() throws Exception {
    assertEquals(VisitCode.OTHER_CAR.id(), code(FIRST, job("ABC 1")));
    List<Recorded> work = TypedTechnician.wholeWork(demo.procedure(), demo.sha256());
    write("half", demo, job("H 1"), Optional.empty(), work.subList(0, work.size() / 2));
    assertEquals(VisitCode.NOT_COMPLETE.id(), code("half", Job.NOT_GIVEN));
    List<Recorded> typed = new ArrayList<>(work);
    Recorded one = typed.get(1);
    typed.set(
        1,
        new Recorded(
            2,
            one.at(),
            Optional.of(
                new Recorded.Heard("cautions understood", "CAUTIONS_UNDERSTOOD", 1, "typed")),
            one.events(),
            one.said()));
    write("typed", demo, job("T 1"), Optional.empty(), typed);
    assertEquals(VisitCode.REHEARSED.id(), code("typed", Job.NOT_GIVEN));
    assertEquals(
        "typed", Visit.of(sessions, "typed", Job.NOT_GIVEN, Occasion.REHEARSAL).begun().session());
    String nothing =
        Files.readString(DEMO).replace("Re-torque the wheel bolts", "Look at the wheels");
    LoadedProcedure none = ProcedureFile.of(DEMO, nothing);
    write(
        "none",
        none,
        job("N 1"),
        Optional.empty(),
        TypedTechnician.wholeWork(none.procedure(), none.sha256()));
    assertEquals(VisitCode.NOTHING_AGAIN.id(), code("none", Job.NOT_GIVEN));
  }

  @Test
  @DisplayName("leaves out what no torque checks, and says so")
  void leftOut() throws Exception {
    String bush =
        Files.readString(DEMO)
            .replace("Re-torque the wheel bolts", "Retighten the bush bolt")
            .replace("\"after\": [\"wheel-bolts\"],", "");
    LoadedProcedure angle = ProcedureFile.of(DEMO, bush);
    write(
        "angle",
        angle,
        job("A 1"),
        Optional.empty(),
        TypedTechnician.wholeWork(angle.procedure(), angle.sha256()));
    Fault fault = assertThrows(Fault.class, () -> visit("angle", Job.NOT_GIVEN));
    assertEquals(VisitCode.NOTHING_AGAIN, fault.code());
    assertTrue(fault.getMessage().contains("by an angle last"), fault.getMessage());
  }

  @Test
  @DisplayName("shows in the review of the first session as what did its item")
  void done() throws Exception {
    Visit visit = visit(FIRST, Job.NOT_GIVEN);
    visited("2026-01-07-080000-retorque", visit, visit.job());
    String text = command("review", FIRST, "--sessions", sessions.toString());
    assertTrue(
        text.contains("DONE 2026-01-05 by session 2026-01-07-080000-retorque, nothing had moved"),
        text);
    assertFalse(text.contains("alignment: before the van is driven away; DONE"), text);
    String list = command("sessions", "--car", "inv123", "--sessions", sessions.toString());
    assertTrue(list.contains("[x] retorque: handed over after 50 km; done by 2026-01-07"), list);
    assertTrue(list.contains("[ ] alignment: handed over"), list);
    Visit second = visit(FIRST, Job.NOT_GIVEN);
    assertTrue(
        second.notes().get(0).startsWith("visited before: 2026-01-07"), second.notes()::toString);
    Visit ofVisit = visit("2026-01-07-080000-retorque", Job.NOT_GIVEN);
    assertEquals(FIRST, ofVisit.begun().session());
  }

  @Test
  @DisplayName("does not do the item while it is open, and shows that something moved")
  void notDone() throws Exception {
    Visit visit = visit(FIRST, Job.NOT_GIVEN);
    LoadedProcedure loaded = visit.procedure();
    List<Recorded> work =
        new ArrayList<>(TypedTechnician.wholeWork(loaded.procedure(), loaded.sha256()));
    List<Recorded> moved = new ArrayList<>();
    for (Recorded line : work.subList(0, work.size() - 1)) {
      List<SessionEvent> events = new ArrayList<>();
      Optional<StepRef> answered =
          line.events().stream()
              .filter(SessionEvent.CheckAnswered.class::isInstance)
              .map(event -> ((SessionEvent.CheckAnswered) event).step())
              .findFirst();
      if (answered.isPresent()) {
        events.add(new SessionEvent.CheckAnswered(answered.get(), false));
        moved.add(new Recorded(line.seq(), line.at(), line.heard(), events, ""));
        break;
      }
      moved.add(line);
    }
    write("2026-01-08-080000-retorque", loaded, visit.job(), Optional.of(visit.begun()), moved);
    String text = command("review", FIRST, "--sessions", sessions.toString());
    assertTrue(text.contains("not done by session 2026-01-08"), text);
    assertTrue(text.contains("MOVED: wheel-bolts-stayed"), text);
    String list = command("sessions", "--car", "INV 123", "--sessions", sessions.toString());
    assertTrue(list.contains("[ ] retorque: handed over"), list);
    assertTrue(list.contains("had moved"), list);
  }

  @Test
  @DisplayName("tells how far the car went, or that the odometer is lower")
  void odometer() throws Exception {
    Visit visit = visit(FIRST, Job.NOT_GIVEN);
    visited("v1", visit, visit.job());
    assertTrue(
        command("review", "v1", "--sessions", sessions.toString())
            .contains("Driven since: not known"));
    Job less =
        new Job(
            Optional.of("INV 123"),
            Optional.empty(),
            Optional.of(new Measure(new BigDecimal("84000"), MeasureUnit.KILOMETRE)),
            Optional.empty(),
            Optional.empty());
    visited("v2", visit, less);
    assertTrue(
        command("review", "v2", "--sessions", sessions.toString())
            .contains("ODOMETER LOWER than then, 84210 km"));
  }
}
