package org.undercall.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.PartsFirst;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.session.Dialogue;
import org.undercall.session.TypedTechnician;
import org.undercall.session.Visit;

/** Synthetic people, with what a tired one says instead, heard by the real recogniser. */
@DisplayName("By voice")
class ByVoiceTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "demo");

  @TempDir private Path sessions;

  private List<SessionEvent> spoken(Path procedure, String script) throws Exception {
    StringWriter out = new StringWriter();
    Demo demo = Demo.of(procedure, FOLDER.resolve(script), Path.of("target", "speech-cache"));
    SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    SessionFolder folder = demo.run(sessions, () -> model, new Dialogue(new PrintWriter(out)));
    System.out.println(out);
    return SessionLogFile.read(folder.log()).decisions().stream()
        .flatMap(decision -> decision.events().stream())
        .toList();
  }

  private static <E extends SessionEvent> Stream<E> of(List<SessionEvent> events, Class<E> kind) {
    return events.stream().filter(kind::isInstance).map(kind::cast);
  }

  private static void assertComplete(List<SessionEvent> events) {
    assertEquals(new SessionEvent.SessionEnded(true, 0), events.get(events.size() - 1));
  }

  @Test
  @DisplayName("values of an alignment are kept with their sign, in degrees or in minutes")
  void alignment() throws Exception {
    List<SessionEvent> events = spoken(FOLDER.resolve("alignment.json"), "alignment-script.json");
    assertEquals(
        List.of("-2.4 °", "-1.5 °", "-1 °", "0.2 °", "2 mm"),
        of(events, SessionEvent.Measured.class).map(e -> e.value().toString()).toList());
    assertComplete(events);
  }

  @Test
  @DisplayName("a part that is missing keeps its fastener open until it is there")
  void parts() throws Exception {
    LoadedProcedure loaded = PartsFirst.of(ProcedureFile.load(FOLDER.resolve("parts.json")));
    Path procedure = Files.write(sessions.resolve("parts-first.json"), loaded.wholeBytes());
    List<SessionEvent> events = spoken(procedure, "parts-script.json");
    StepRef part = new StepRef("new-link-bolt", Side.CAR);
    int there = events.indexOf(new SessionEvent.StepClosed(part));
    int fitted =
        events.indexOf(of(events, SessionEvent.NewHardwareFitted.class).findFirst().orElseThrow());
    assertTrue(0 < there && there < fitted, events::toString);
    assertComplete(events);
  }

  @Test
  @DisplayName("a visit tightens five wheel bolts again and tells that one had moved")
  void visit() throws Exception {
    LoadedProcedure first =
        ProcedureFile.load(Path.of("shared", "procedures", "demo-lateral-link.json"));
    String name = "2026-01-05-080000-demo";
    WrittenLog.write(
        sessions.resolve(name),
        first.wholeBytes(),
        TypedTechnician.wholeWork(first.procedure(), first.sha256()));
    LoadedProcedure again = Visit.of(sessions, name, Job.NOT_GIVEN, Occasion.WORK).procedure();
    Path procedure = Files.write(sessions.resolve("again.json"), again.wholeBytes());
    List<SessionEvent> events = spoken(procedure, "visit-script.json");
    assertEquals(
        List.of(false, true),
        of(events, SessionEvent.CheckAnswered.class).map(e -> e.passed()).toList());
    assertComplete(events);
  }

  @Test
  @DisplayName("a second person closes a nut by his name alone, said twice, and by nothing else")
  void secondPerson() throws Exception {
    List<SessionEvent> events =
        spoken(FOLDER.resolve("second-person.json"), "second-person-script.json");
    int putOff = indexFrom(events, SessionEvent.StepPutOff.class, 0);
    int first = indexFrom(events, SessionEvent.Witnessed.class, 0);
    int taken = indexFrom(events, SessionEvent.WitnessAsked.class, first);
    int again = indexFrom(events, SessionEvent.Witnessed.class, taken);
    assertTrue(0 < putOff && putOff < first && first < taken && taken < again, events::toString);
    assertEquals(2, of(events, SessionEvent.Witnessed.class).count());
    StepRef nut = new StepRef("axle-nut", Side.CAR);
    assertTrue(
        events.indexOf(new SessionEvent.StepClosed(nut)) > first, "closed before it was seen");
    assertComplete(events);
  }

  /** Where the first event of a kind stands from a place on; -1 if there is none. */
  private static int indexFrom(List<SessionEvent> events, Class<?> kind, int from) {
    return IntStream.range(Math.max(0, from), events.size())
        .filter(i -> kind.isInstance(events.get(i)))
        .findFirst()
        .orElse(-1);
  }
}
