package org.undercall.command.doctor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.speaker.Synthesiser;
import org.undercall.command.doctor.Found.State;
import org.undercall.command.front.ProcedureShelf;
import org.undercall.port.UncheckedFault;
import org.undercall.session.OpenSessions;
import org.undercall.sound.Level;
import org.undercall.sound.Pcm;
import org.undercall.sound.SpeakerCode;

@DisplayName("A check of the doctor")
class ChecksTest {
  private static final Path SHARED = Path.of("shared", "procedures");

  @TempDir Path folder;

  private static void assertFound(State state, String start, Found found) {
    assertEquals(state, found.state(), found.found());
    assertTrue(found.found().startsWith(start), found.found());
  }

  @Nested
  @DisplayName("of Java")
  class OfJava {
    @Test
    @DisplayName("is well with this Java, a fault with an old one, a note with little memory")
    void versions() {
      assertFound(State.WELL, "", new JavaCheck(17, "17.0.1", 256L << 20).look());
      assertFound(State.FAULT, "DOC-001 ", new JavaCheck(11, "11.0.1", 256L << 20).look());
      assertFound(State.NOTE, "DOC-012 ", new JavaCheck(21, "21", 100L << 20).look());
      assertTrue(JavaCheck.ofMachine().feature() >= 17);
    }
  }

  @Nested
  @DisplayName("of the recogniser and the model")
  class OfTheModel {
    @Test
    @DisplayName("loads the libraries and the model of this project")
    void real() throws Exception {
      assertFound(State.WELL, "", RecogniserCheck.ofMachine().look());
      assertFound(
          State.WELL,
          ModelFolder.STANDARD,
          ModelCheck.of(() -> ModelFolder.verify(ModelFolder.standard())).look());
    }

    @Test
    @DisplayName("says how to build a model that is not there")
    void noModel() throws Exception {
      Found found = ModelCheck.of(() -> ModelFolder.verify(folder.resolve("none"))).look();
      assertFound(State.FAULT, "MOD-001 ", found);
      assertTrue(found.remedy().contains("mvn process-resources"));
    }

    @Test
    @DisplayName("notes a missing detector, words that are not known, and a missing checksum list")
    void notes() {
      assertFound(State.NOTE, "DOC-014 ", new EchoCheck(Optional::empty).look());
      assertFound(State.NOTE, "DOC-010 ", new RecogniserCheck(() -> {}, () -> false).look());
      assertFound(State.NOTE, "MOD-011 ", loaded(Optional.empty(), List.of("knuckle")));
      assertFound(State.NOTE, "MOD-008 x", loaded(Optional.of("MOD-008 x"), List.of()));
    }

    private Found loaded(Optional<String> warning, List<String> unknown) {
      return new ModelCheck(() -> new ModelCheck.Loaded("own", warning, unknown)).look();
    }
  }

  @Nested
  @DisplayName("of the sound")
  class OfTheSound {
    @ParameterizedTest(name = "{0} dBFS, peak {1}, clipped {2}: {3}")
    @CsvSource({
      "-52, -30, 0, WELL, desk",
      "-120, -120, 0, NOTE, DOC-007",
      "-30, 0, 0.01, NOTE, DOC-008",
      "-20, -8, 0, NOTE, DOC-009"
    })
    @DisplayName("judges the level of the room")
    void levels(double rms, double peak, double clipped, State state, String start) {
      MicrophoneCheck.Heard heard =
          new MicrophoneCheck.Heard("desk, 16000 Hz", new Level(rms, peak, clipped));
      assertFound(state, start, new MicrophoneCheck(() -> heard).look());
    }

    @Test
    @DisplayName("names what to do for a microphone that is not there")
    void unknownMicrophone() {
      Found found = MicrophoneCheck.named(Optional.of("no such microphone \u0007")).look();
      assertEquals(State.FAULT, found.state());
      assertTrue(found.found().matches("SND-02[01] .*"), found.found());
      assertTrue(found.remedy().contains("undercall rehearse"));
    }

    @Test
    @DisplayName("tells no speaker from one that hangs")
    void speaker() {
      assertFound(State.WELL, "", new SpeakerCheck(() -> {}).look());
      Found none = failing(SpeakerCode.NO_DEVICE);
      assertFound(State.FAULT, "SPK-001 ", none);
      assertTrue(none.remedy().startsWith("plug one in"), none.remedy());
      Found gone = failing(SpeakerCode.DEVICE_GONE);
      assertFound(State.FAULT, "SPK-002 ", gone);
      assertTrue(gone.remedy().startsWith("restart"), gone.remedy());
    }

    private Found failing(SpeakerCode fault) {
      Runnable trial =
          () -> {
            throw new UncheckedFault(fault, "a fake");
          };
      return new SpeakerCheck(trial).look();
    }

    @Test
    @DisplayName("hears the voice speak, or says why it does not")
    void voice() {
      assertFound(
          State.WELL, "speaks; a value lasts 500 ms", new VoiceCheck(new Mute(false)).look());
      assertFound(State.FAULT, "SPK-003 ", new VoiceCheck(new Mute(true)).look());
    }
  }

  /** A voice of half a second of silence, or none. */
  private record Mute(boolean broken) implements Synthesiser {
    @Override
    public String voice() {
      return "mute";
    }

    @Override
    public Pcm speak(String words) {
      if (broken) {
        throw new UncheckedFault(SpeakerCode.MARY_FAILED, "a fake");
      }
      return Pcm.of(8_000, new short[4_000]);
    }
  }

  @Nested
  @DisplayName("of the disk")
  class OfTheDisk {
    @Test
    @DisplayName("forces a file and leaves nothing behind, not even the folder of sessions")
    void real() throws IOException {
      assertFound(State.WELL, "", DiskCheck.of(folder.resolve("sessions").resolve("deep")).look());
      try (Stream<Path> left = Files.list(folder)) {
        assertEquals(List.of(), left.toList());
      }
    }

    @Test
    @DisplayName("finds a file in the place of the folder")
    void notAFolder() throws IOException {
      Path file = Files.writeString(folder.resolve("sessions"), "");
      assertFound(State.FAULT, "DOC-004 ", DiskCheck.of(file).look());
    }

    @ParameterizedTest(name = "{0} ms, {1} MB: {2}")
    @CsvSource({
      "3, 5000, WELL, a decision",
      "3, 5, FAULT, DOC-005",
      "3, 200, NOTE, DOC-005",
      "900, 5000, NOTE, DOC-006",
      "-1, 5000, FAULT, DOC-004"
    })
    @DisplayName("judges its speed and space, and a disk that takes nothing")
    void judged(long millis, long free, State state, String start) throws IOException {
      assertFound(state, start, new DiskCheck(folder, new FakeDisk(millis, free << 20)).look());
    }
  }

  /** A disk; with a negative time it takes nothing. */
  private record FakeDisk(long millis, long bytes) implements DiskCheck.Disk {
    @Override
    public long force(Path folder) throws IOException {
      if (millis < 0) {
        throw new IOException("Read-only file system");
      }
      return millis;
    }

    @Override
    public long free(Path folder) {
      return bytes;
    }
  }

  @Nested
  @DisplayName("of the board, the procedures and the sessions")
  class OfTheRest {
    @Test
    @DisplayName("finds a port that is free, and notes one that is taken")
    void ports() throws IOException {
      assertFound(State.WELL, "port ", BoardCheck.ofMachine(0).look());
      try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        assertFound(State.NOTE, "BRD-001 ", BoardCheck.ofMachine(taken.getLocalPort()).look());
      }
    }

    @Test
    @DisplayName("counts procedures; notes broken ones, none at all, and overdue wrenches")
    void procedures() throws IOException {
      LocalDate day = LocalDate.of(2026, 6, 1);
      Path shared = Files.createDirectory(folder.resolve("shared"));
      Files.createDirectory(shared.resolve("blocks"));
      try (Stream<Path> blocks = Files.list(SHARED.resolve("blocks"))) {
        for (Path block : blocks.toList()) {
          Files.copy(block, shared.resolve("blocks").resolve(block.getFileName()));
        }
      }
      for (String name : List.of("demo-lateral-link.json", "light-van-rear-axle.json")) {
        String text = Files.readString(SHARED.resolve(name));
        String dated =
            text.replaceAll("(\"unit\": \"N·m\") }", "$1, \"calibrated\": \"2026-02-17\" }");
        Files.writeString(shared.resolve(name), dated);
      }
      assertFound(State.WELL, "2 found", procedures(shared, day));
      Found overdue = procedures(shared, day.plusYears(2));
      assertFound(State.NOTE, "CHK-", overdue);
      assertTrue(overdue.found().contains("calibrated on"), overdue.found());
      assertFound(State.NOTE, "DOC-011 ", procedures(folder, day));
      Files.writeString(folder.resolve("bad.json"), "{");
      assertFound(State.NOTE, "PRO-005 bad.json", procedures(folder, day));
    }

    private Found procedures(Path shared, LocalDate day) {
      Path none = folder.resolve("none");
      return new ProceduresCheck(() -> ProcedureShelf.in(none, List.of(none, shared)), day).look();
    }

    @Test
    @DisplayName("counts sessions and notes a damaged one")
    void sessions() {
      assertFound(State.WELL, "0 open, 3 complete", sessions(List.of()));
      Found damaged = sessions(List.of("LOG-004 a", "LOG-004 b"));
      assertFound(State.NOTE, "LOG-004 a (and 1 more)", damaged);
      assertFalse(damaged.remedy().isEmpty());
    }

    private Found sessions(List<String> faults) {
      return new SessionsCheck(() -> new OpenSessions(List.of(), 3, faults)).look();
    }
  }
}
