package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Clips;
import org.undercall.port.Fault;
import org.undercall.port.Journal;

@DisplayName("The session loop keeps the sound")
class SessionClipsTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");

  private final Bench bench = new Bench();
  private boolean all;
  private boolean full;

  private final class FakeClips implements Clips {
    @Override
    public Optional<Clip> keep(long seq, byte[] sound) {
      bench.happened.add("clip " + seq);
      return full ? Optional.empty() : Optional.of(clip(seq));
    }

    @Override
    public void discard(Clip clip) {
      bench.happened.add("discarded " + clip.file());
    }

    @Override
    public boolean ofAll() {
      return all;
    }
  }

  private static Clip clip(long seq) {
    return new Clip("00000" + seq + ".flac", "0".repeat(64));
  }

  private record Kept(Journal journal, Clips clips) implements Journal {
    @Override
    public void append(Recorded decision) throws Fault {
      journal.append(decision);
    }
  }

  @BeforeEach
  void heard() {
    bench.sound = new byte[2];
  }

  /** The numbers of the decisions whose line names a clip. */
  private List<Long> run() throws Exception {
    Session session = Session.start(Walk.of(ProcedureFile.load(PROCEDURE).procedure()));
    SessionLoop.Ports ports = bench.ports();
    Journal journal = new Kept(ports.journal(), new FakeClips());
    new SessionLoop(
            session, new SessionLoop.Ports(ports.ear(), ports.voice(), journal, ports.time()), 0)
        .run(Decider.begin(session, new SessionEvent.SessionStarted("title", "1", "00", "test")));
    return bench.recorded.stream()
        .filter(d -> d.heard().flatMap(Recorded.Heard::clip).isPresent())
        .map(Recorded::seq)
        .toList();
  }

  @Test
  @DisplayName(
      "of what was accepted or is read back and of notes, not of refusals, questions and chatter")
  void taken() throws Exception {
    bench.hears("cautions understood").hears("step completed").hears("what is left");
    bench.hears("did you see the match").hears("three eight two").hears("that is correct");
    bench.hears("take a note").hears("boot looks dry");
    assertEquals(List.of(2L, 6L, 7L, 8L, 9L), run());
    assertEquals(Optional.of(clip(9)), bench.recorded.get(8).heard().orElseThrow().clip());
    assertEquals("Note kept, not checked.", bench.recorded.get(8).said());
  }

  @Test
  @DisplayName("of everything when asked to")
  void ofAll() throws Exception {
    all = true;
    bench.hears("cautions understood").hears("step completed").hears("did you see the match");
    assertEquals(List.of(2L, 3L, 4L), run());
  }

  @Test
  @DisplayName("before the line that names it, and that before the reply")
  void order() throws Exception {
    bench.hears("cautions understood");
    run();
    int clip = bench.happened.indexOf("clip 2");
    assertTrue(bench.happened.get(clip + 1).startsWith("recorded "));
    assertTrue(bench.happened.get(clip + 2).startsWith("said "));
  }

  @Test
  @DisplayName("and counts a decision without it when it cannot be kept or was not heard")
  void without() throws Exception {
    full = true;
    bench.hears("cautions understood").hears("three eight two");
    assertEquals(List.of(), run());
    assertEquals(3, bench.recorded.size());
    bench.sound = null;
    full = false;
    bench.recorded.clear();
    bench.happened.clear();
    bench.hears("cautions understood");
    assertEquals(List.of(), run());
    assertEquals(2, bench.recorded.size());
    assertTrue(bench.happened.stream().noneMatch(line -> line.startsWith("clip")));
  }

  @Test
  @DisplayName("and deletes it when the decision could not be recorded")
  void discarded() throws Exception {
    Fault fault =
        org.junit.jupiter.api.Assertions.assertThrows(
            Fault.class, () -> SessionFolder.find(Path.of("no", "such"), "last"));
    bench.breaks(fault).hears("cautions understood");
    assertEquals(List.of(), run());
    int clip = bench.happened.indexOf("clip 2");
    assertEquals(
        List.of("failed", "discarded 000002.flac"), bench.happened.subList(clip + 1, clip + 3));
  }
}
