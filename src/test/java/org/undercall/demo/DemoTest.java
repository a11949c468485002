package org.undercall.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.List;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogSchema;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.session.Dialogue;
import org.undercall.session.Proof;

@DisplayName("The demonstration, heard by the real recogniser")
class DemoTest {
  private static final Path SHARED = Path.of("shared");
  private static final Path PROCEDURE =
      SHARED.resolve("procedures").resolve("demo-lateral-link.json");
  private static final StepRef LEFT_BUSH = new StepRef("bush-bolt", Side.LEFT);

  @TempDir private static Path sessions;

  private static SpeechModel model;
  private static SessionFolder folder;
  private static String printed;
  private static List<Recorded> log;
  private static Review review;

  @BeforeAll
  static void run() throws Exception {
    Path script = SHARED.resolve("demo").resolve("spoken-run.json");
    StringWriter out = new StringWriter();
    Demo demo = Demo.of(PROCEDURE, script, Path.of("target", "speech-cache"));
    model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    folder = demo.run(sessions, () -> model, new Dialogue(new PrintWriter(out)));
    printed = out.toString();
    System.out.println(printed);
    log = SessionLogFile.read(folder.log()).decisions();
    review = Review.of(Walk.of(ProcedureFile.load(PROCEDURE).procedure()), log);
  }

  @Test
  @DisplayName("closes the model that it loaded")
  void closed() {
    assertThrows(IllegalStateException.class, () -> model.unknownWords(List.of("one")));
  }

  private static List<SessionEvent> events() {
    return log.stream().flatMap(decision -> decision.events().stream()).toList();
  }

  private static void refused(SessionEvent event) {
    assertTrue(events().contains(event), "not in the log: " + event);
  }

  @Test
  @DisplayName("refuses to close the bush bolt before ride height is confirmed on its side")
  void early() {
    refused(new SessionEvent.CloseRefused(LEFT_BUSH, Missing.RIDE_HEIGHT));
    List<SessionEvent> all = events();
    int closed = all.indexOf(new SessionEvent.StepClosed(LEFT_BUSH));
    List<SessionEvent.LoadConfirmed> before =
        all.subList(0, closed).stream()
            .filter(SessionEvent.LoadConfirmed.class::isInstance)
            .map(SessionEvent.LoadConfirmed.class::cast)
            .filter(e -> e.side() == Side.LEFT && e.condition() == LoadCondition.RIDE_HEIGHT)
            .toList();
    assertEquals(1, before.size());
  }

  @Test
  @DisplayName("leaves a log whose every line keeps to its schema, and which is whole")
  void schema() throws Exception {
    LogSchema schema = new LogSchema();
    for (String line : java.nio.file.Files.readAllLines(folder.log())) {
      assertEquals(List.of(), schema.faults(line), line);
    }
    SessionProof proof = Proof.of(folder, java.util.Optional.empty());
    assertEquals(List.of(), proof.findings());
    assertEquals(log.size(), proof.covered().orElse(0));
  }

  @Test
  @DisplayName("refuses a value that is not the one of the specification")
  void value() {
    refused(
        new SessionEvent.ValueRefused(
            new StepRef("joint-nut", Side.LEFT), 1, new BigDecimal("67"), new BigDecimal("62")));
  }

  @Test
  @DisplayName("refuses a head marking that the procedure does not know")
  void marking() {
    refused(new SessionEvent.MarkingRefused(LEFT_BUSH, new HeadMarking("12.9")));
  }

  @Test
  @DisplayName("is heard as the script has it, and chatter closes nothing")
  void chatter() throws Exception {
    List<Recorded> unclear =
        log.stream()
            .filter(d -> d.heard().filter(h -> h.intent().equals("unclear")).isPresent())
            .toList();
    unclear.forEach(
        d -> d.events().forEach(e -> assertTrue(e instanceof SessionEvent.NotUnderstood, d + "")));
    Script script = Script.read(SHARED.resolve("demo").resolve("spoken-run.json"));
    List<String> commands =
        script.lines().stream()
            .map(Script.Line::words)
            .filter(w -> w != null && !w.contains("weather") && !w.contains("customer"))
            .toList();
    List<String> heard =
        log.stream()
            .flatMap(d -> d.heard().stream())
            .filter(h -> !h.intent().equals("unclear"))
            .map(Recorded.Heard::text)
            .toList();
    assertEquals(commands, heard);
  }

  @Test
  @DisplayName("closes every stage of every fastener, with its time")
  void stages() {
    List<StepReview> fasteners =
        review.steps().stream().filter(s -> s.place().step() instanceof Step.Fasten).toList();
    assertEquals(5, fasteners.size());
    for (StepReview step : fasteners) {
      assertFalse(step.tightened().stages().isEmpty(), step.place().ref() + "");
      step.tightened().stages().forEach(s -> assertTrue(s.closed().isPresent(), s + ""));
    }
  }

  @Test
  @DisplayName("ends complete, and the review agrees")
  void complete() {
    assertEquals(new SessionEvent.SessionEnded(true, 0), events().get(events().size() - 1));
    assertTrue(review.complete());
    assertEquals(List.of(), review.open());
  }

  @Test
  @DisplayName("prints every reply as it was recorded")
  void dialogue() {
    List<String> replies =
        printed
            .lines()
            .filter(line -> line.startsWith("  reply  "))
            .map(line -> line.substring("  reply  ".length()))
            .toList();
    assertEquals(log.stream().map(Recorded::said).filter(s -> !s.isEmpty()).toList(), replies);
  }

  @Test
  @DisplayName("leaves the sound of both sides, and it is not silent")
  void sound() throws Exception {
    Path wav = folder.path().resolve("dialogue.wav");
    try (AudioInputStream in = AudioSystem.getAudioInputStream(wav.toFile())) {
      double rate = in.getFormat().getFrameRate();
      byte[] bytes = in.readAllBytes();
      java.nio.ShortBuffer samples =
          ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
      long loud = 0;
      int count = samples.remaining();
      for (int i = 0; i < count; i++) {
        loud += Math.abs(samples.get(i)) > 1000 ? 1 : 0;
      }
      double seconds = count / rate;
      long last = log.get(log.size() - 1).at().monotonicMillis();
      assertTrue(seconds * 1000 >= last, seconds + " s of sound, last decision at " + last + " ms");
      assertTrue(loud > count / 50, loud + " loud samples of " + count);
    }
  }
}
