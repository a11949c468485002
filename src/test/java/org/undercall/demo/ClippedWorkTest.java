package org.undercall.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.clips.ClipFolder;
import org.undercall.adapter.clips.Decoded;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.command.App;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.listen.SoundEar;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavFile;
import org.undercall.sound.WavFrames;
import picocli.CommandLine;

@DisplayName("Work with sound")
class ClippedWorkTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final int RATE = 16_000;
  private static final String NOTE = "the rubber on the left side looks dry and old";

  @TempDir private static Path folder;
  private static Path sound;

  @BeforeAll
  static void speak() throws Exception {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    try (SpokenCache speaker = DemoVoices.speaker("alto", Path.of("target", "speech-cache"))) {
      for (String words :
          List.of(
              "cautions understood", "one hundred ten", "that is correct", "take a note", NOTE)) {
        all.writeBytes(new byte[2 * RATE]);
        all.writeBytes(speaker.speak(words).bytes());
      }
    }
    all.writeBytes(new byte[4 * RATE]);
    sound = folder.resolve("spoken.wav");
    write(sound, all.toByteArray());
  }

  private static void write(Path file, byte[] bytes) throws Exception {
    short[] samples = new short[bytes.length / 2];
    ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().get(samples);
    WavFile.write(file, Pcm.of(RATE, samples));
  }

  private static SessionFolder work(String name, String... options) throws Exception {
    Path sessions = folder.resolve(name);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> all =
        new java.util.ArrayList<>(
            List.of("work", PROCEDURE.toString(), "--sound", sound.toString(), "--voice", "none"));
    all.addAll(List.of("--sessions", sessions.toString()));
    all.addAll(List.of(options));
    assertEquals(3, line.execute(all.toArray(String[]::new)), () -> out + "\n" + err);
    return SessionFolder.find(sessions, "last");
  }

  private static Recorded of(SessionFolder session, Class<? extends SessionEvent> event)
      throws Exception {
    return SessionLogFile.read(session.log()).decisions().stream()
        .filter(d -> d.events().stream().anyMatch(event::isInstance))
        .findFirst()
        .orElseThrow();
  }

  private static Clip clip(Recorded decision) {
    return decision.heard().flatMap(Recorded.Heard::clip).orElseThrow();
  }

  /** Hears a WAV file with silence after it, as an ear would that knows nothing of the session. */
  private static String heardAgain(byte[] samples, IntentKind kind) throws Exception {
    Path file = folder.resolve("again.wav");
    write(file, java.util.Arrays.copyOf(samples, samples.length + 2 * RATE));
    try (SoundEar ear = SoundEar.standard(WavFrames.open(file), TestModel.shared())) {
      return ear.next(Set.of(kind), 60_000).orElseThrow().text();
    }
  }

  @Test
  @DisplayName("keeps the called value and the note so that they can be heard again")
  void heardAgain() throws Exception {
    SessionFolder session = work("flac");
    Recorded value = of(session, SessionEvent.MeasureCalled.class);
    assertEquals("one hundred ten", value.heard().orElseThrow().text());
    ClipFolder clips = new ClipFolder(session.clips());
    assertEquals(ClipFolder.State.WHOLE, clips.look(clip(value)).state());
    byte[] samples = Decoded.sound(Files.readAllBytes(session.clips().resolve(clip(value).file())));
    double seconds = samples.length / 2.0 / RATE;
    assertTrue(seconds > 0.8 && seconds < 2.5, seconds + " s");
    assertEquals("one hundred ten", heardAgain(samples, IntentKind.VALUE_CALLED));

    Recorded note = of(session, SessionEvent.NoteKept.class);
    byte[] spoken = Decoded.sound(Files.readAllBytes(session.clips().resolve(clip(note).file())));
    String text = note.heard().orElseThrow().text();
    assertTrue(text.split(" ").length >= 5, text);
    assertEquals(text, heardAgain(spoken, IntentKind.NOTE_TEXT));
    assertEquals("Note kept, not checked.", note.said());
  }

  @Test
  @DisplayName("keeps WAV files when asked to, with the same sound")
  void wav() throws Exception {
    SessionFolder session = work("wav", "--clips", "wav");
    Clip clip = clip(of(session, SessionEvent.MeasureCalled.class));
    assertTrue(clip.file().endsWith(".wav"));
    try (SoundEar ear =
        SoundEar.standard(
            WavFrames.open(session.clips().resolve(clip.file())), TestModel.shared())) {
      assertEquals(
          "one hundred ten",
          ear.next(Set.of(IntentKind.VALUE_CALLED), 60_000).orElseThrow().text());
    }
  }

  @Test
  @DisplayName("keeps nothing with --clips none")
  void none() throws Exception {
    SessionFolder session = work("none", "--clips", "none");
    assertFalse(Files.exists(session.clips()));
    Recorded value = of(session, SessionEvent.MeasureCalled.class);
    assertTrue(value.heard().orElseThrow().clip().isEmpty());
  }
}
