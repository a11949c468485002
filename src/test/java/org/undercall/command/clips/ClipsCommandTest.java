package org.undercall.command.clips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.clips.ClipWriter;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.command.App;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import picocli.CommandLine;

@DisplayName("The clips command")
class ClipsCommandTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-11-25T09:00:00+01:00");
  private static final StepRef STEP = new StepRef("bolt", Side.LEFT);

  @TempDir private Path sessions;
  private SessionFolder folder;
  private List<Recorded> log;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void session() throws Exception {
    folder = SessionFolder.create(sessions, "job", new byte[] {'{', '}'}, START);
    ClipWriter writer = new ClipWriter(folder.clips(), ClipWriter.Settings.STANDARD, line -> {});
    try (SessionLogFile open = SessionLogFile.open(folder.log())) {
      open.append(decision(1, Optional.empty(), new SessionEvent.CautionsUnderstood()));
      for (int i = 2; i <= 4; i++) {
        Recorded.Heard heard =
            new Recorded.Heard(i == 3 ? "boot looks dry" : "six two", "intent-" + i, 1, "spoken")
                .with(writer.keep(i, new byte[960 * i]));
        SessionEvent event =
            i == 3
                ? new SessionEvent.NoteKept(STEP, "boot looks dry")
                : new SessionEvent.WorkDone(STEP);
        open.append(decision(i, Optional.of(heard), event));
      }
      log = new ArrayList<>(open.decisions());
    }
  }

  private static Recorded decision(long seq, Optional<Recorded.Heard> heard, SessionEvent event) {
    return new Recorded(
        seq, new Moment(START.plusSeconds(seq), 1000 * seq), heard, List.of(event), "");
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> all = new ArrayList<>(List.of("clips", "last", "--sessions", sessions.toString()));
    all.addAll(List.of(args));
    return line.execute(all.toArray(String[]::new));
  }

  private boolean exists(String name) {
    return Files.exists(folder.clips().resolve(name));
  }

  private void logIsWhole() throws Exception {
    assertEquals(log, SessionLogFile.read(folder.log()).decisions());
  }

  @Test
  @DisplayName("lists each clip with its time, state, size, intent and words")
  void lists() {
    assertEquals(0, run(), err::toString);
    assertEquals(
        """
        000002.flac  2026-11-25 09:00:02  whole  1 kB  intent-2  "six two"
        000003.flac  2026-11-25 09:00:03  whole  1 kB  intent-3  "boot looks dry" (unchecked)
        000004.flac  2026-11-25 09:00:04  whole  1 kB  intent-4  "six two"
        3 clips named by the log, 2 kB on the disk.
        """,
        out.toString());
    assertEquals("", err.toString());
  }

  @Test
  @DisplayName("ends with 1 and a line with a code for a clip that was changed, by one bit")
  void changed() throws Exception {
    Path clip = folder.clips().resolve("000004.flac");
    byte[] bytes = Files.readAllBytes(clip);
    bytes[bytes.length - 1] ^= 1;
    Files.write(clip, bytes);
    assertEquals(1, run());
    assertEquals(
        "CLP-002 clip 000004.flac: found another sound, expected the one the log names by its hash\n",
        err.toString());
    assertTrue(out.toString().contains("000004.flac  2026-11-25 09:00:04  changed"));
    assertTrue(out.toString().contains("000002.flac  2026-11-25 09:00:02  whole"));
  }

  @Test
  @DisplayName("takes an absent clip for what it is, and shows a file of no decision")
  void absent() throws Exception {
    Files.move(folder.clips().resolve("000002.flac"), folder.clips().resolve("000009.flac.part"));
    Files.writeString(folder.clips().resolve("other.txt"), "");
    assertEquals(0, run());
    assertTrue(out.toString().contains("000002.flac  2026-11-25 09:00:02  absent  0 kB"));
    assertTrue(out.toString().contains("000009.flac.part  named by no decision"));
    assertFalse(out.toString().contains("other.txt"));
  }

  @Test
  @DisplayName("deletes the clips of notes only, after saying so; the log stays whole")
  void onlyNotes() throws Exception {
    assertEquals(0, run("--remove", "--only", "notes"));
    assertEquals(
        "Deleting the clips of notes: 1 files. The log stays.\n1 deleted, 0 were absent already.\n",
        out.toString());
    assertFalse(exists("000003.flac"));
    assertTrue(exists("000002.flac") && exists("000004.flac"));
    logIsWhole();
    assertEquals(0, run());
  }

  @Test
  @DisplayName("deletes all clips and what a crash left, and nothing else; the log stays whole")
  void all() throws Exception {
    Files.writeString(folder.clips().resolve("000009.wav.part"), "x");
    Files.writeString(folder.clips().resolve("mine.wav"), "x");
    assertEquals(0, run("--remove"));
    assertTrue(out.toString().startsWith("Deleting all clips: 4 files. The log stays.\n"));
    assertFalse(exists("000002.flac") || exists("000003.flac") || exists("000009.wav.part"));
    assertTrue(exists("mine.wav"));
    logIsWhole();
    assertEquals(0, run("--remove"));
    assertTrue(out.toString().endsWith("0 deleted, 3 were absent already.\n"), out::toString);
  }

  @Test
  @DisplayName("refuses to delete a part without being told to delete")
  void usage() {
    assertEquals(2, run("--only", "notes"));
    assertTrue(err.toString().startsWith("USE-001 --only is for --remove"), err::toString);
    assertTrue(exists("000003.flac"));
  }
}
