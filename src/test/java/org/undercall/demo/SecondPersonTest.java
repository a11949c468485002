package org.undercall.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.session.Dialogue;

/** Two synthetic people: the one who works is tired, the other saw it. */
@DisplayName("A second person at a nut, heard by the real recogniser")
class SecondPersonTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "demo");
  private static final StepRef NUT = new StepRef("axle-nut", Side.CAR);

  @TempDir private Path sessions;

  @Test
  @DisplayName("closes it by his name alone, said twice, and not by what a tired person says")
  void seen() throws Exception {
    StringWriter out = new StringWriter();
    Demo demo =
        Demo.of(
            FOLDER.resolve("second-person.json"),
            FOLDER.resolve("second-person-script.json"),
            Path.of("target", "speech-cache"));
    SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    SessionFolder folder = demo.run(sessions, () -> model, new Dialogue(new PrintWriter(out)));
    System.out.println(out);
    List<Recorded> log = SessionLogFile.read(folder.log()).decisions();
    List<SessionEvent> events = log.stream().flatMap(d -> d.events().stream()).toList();
    int putOff = index(events, SessionEvent.StepPutOff.class, 0);
    int first = index(events, SessionEvent.Witnessed.class, 0);
    int taken = index(events, SessionEvent.WitnessAsked.class, first);
    int again = index(events, SessionEvent.Witnessed.class, taken);
    assertTrue(0 < putOff && putOff < first && first < taken && taken < again, events::toString);
    assertEquals(2, events.stream().filter(SessionEvent.Witnessed.class::isInstance).count());
    assertTrue(
        events.indexOf(new SessionEvent.StepClosed(NUT)) > first, "closed before it was seen");
    assertEquals(new SessionEvent.SessionEnded(true, 0), events.get(events.size() - 1));
  }

  /** Where the first event of a kind stands from a place on; -1 if there is none. */
  private static int index(List<SessionEvent> events, Class<?> kind, int from) {
    for (int i = Math.max(0, from); i < events.size(); i++) {
      if (kind.isInstance(events.get(i))) {
        return i;
      }
    }
    return -1;
  }
}
