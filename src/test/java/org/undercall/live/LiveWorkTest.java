package org.undercall.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;

/**
 * The whole program at a virtual sound card, in a process of its own: a synthetic technician works
 * through a procedure of two sides by voice, calls over a prompt, and loses the microphone on the
 * way.
 */
@DisplayName("At a virtual sound card")
@Tag("alone")
class LiveWorkTest {
  private static final Path PROCEDURE =
      Path.of("src", "test", "resources", "live", "two-sides.json");
  private static final Path CACHE = Path.of("target", "speech-cache");
  private static final String STOP = "stop talking";
  private static final String GONE = "The microphone is gone.";
  private static final String BACK = "The microphone is back.";
  private static final long PATIENCE_MILLIS = 20_000;
  private static final int MOST_TURNS = 40;

  /** Letters of a prompt that is long enough to be called over. */
  private static final int LONG = 60;

  @TempDir private Path folder;

  private final List<Long> starts = new ArrayList<>();
  private VirtualSound sound;
  private Program program;
  private SpeakerTap tap;
  private Technician technician;
  private boolean stopped;
  private boolean lost;

  @Test
  @DisplayName(
      "a procedure of two sides is worked through, a call stops the voice, and a lost"
          + " microphone comes back")
  void work() throws Exception {
    Optional<VirtualSound> started = VirtualSound.start(folder.resolve("sound"));
    Assumptions.assumeTrue(started.isPresent(), "no virtual sound card can be made here");
    Path sessions = folder.resolve("sessions");
    sound = started.get();
    try (VirtualSound closed = sound;
        Technician speaks = new Technician(CACHE, folder);
        SpeakerTap taps = SpeakerTap.on(closed.recording());
        Program works = Program.work(PROCEDURE, sessions, closed, CACHE)) {
      program = works;
      tap = taps;
      technician = speaks;
      technician.said(STOP, 600);
      talk();
      assertEquals(0, program.status(PATIENCE_MILLIS), "exit status");
    }
    print();
    assertTrue(stopped, "the call over the voice was not heard");
    assertTrue(lost, "the microphone was never lost");
    List<SessionEvent> events = events(sessions);
    assertEquals(new SessionEvent.SessionEnded(true, 0), events.get(events.size() - 1));
  }

  private void talk() throws IOException, InterruptedException {
    String reply = "";
    for (int turn = 0; turn < MOST_TURNS && !reply.contains("Log closed."); turn++) {
      Optional<Program.Line> line = program.await(Program.Line::isReply, PATIENCE_MILLIS);
      if (line.isPresent()) {
        reply = line.get().text().substring(Program.REPLY.length());
        listen(line.get(), reply);
      }
      if (reply.contains("Log closed.")) {
        return;
      }
      if (!lost && reply.contains("Right, look at the boot")) {
        lose();
        reply = "";
        sound.call(technician.said("say again", 600));
      } else {
        sound.call(technician.said(technician.answer(reply), 600));
      }
    }
  }

  /** Waits until a prompt has been spoken; calls over one of them. */
  private void listen(Program.Line line, String reply) throws IOException, InterruptedException {
    tap.from(line.nanos());
    long start = tap.awaitLoud(PATIENCE_MILLIS);
    assertTrue(start > 0, "nothing is spoken: " + reply);
    starts.add((start - line.nanos()) / 1_000_000);
    if (!stopped && starts.size() > 1 && reply.length() > LONG) {
      call();
    }
    tap.awaitQuiet(900);
  }

  private void call() throws IOException, InterruptedException {
    sound.call(technician.said(STOP, 600));
    long end = System.nanoTime();
    Optional<Program.Line> line = program.await(l -> l.text().endsWith(STOP), 3_000);
    stopped = line.isPresent();
    if (stopped) {
      long quiet = tap.awaitQuiet(900);
      System.out.printf(
          "live: quiet %d ms after the call was recognised, %d ms after the call had been played%n",
          (quiet - line.get().nanos()) / 1_000_000, (quiet - end) / 1_000_000);
    }
  }

  private void lose() throws IOException, InterruptedException {
    sound.lose();
    long gone = System.nanoTime();
    Program.Line said = awaited(GONE);
    tap.from(said.nanos());
    tap.awaitLoud(5_000);
    tap.awaitQuiet(900);
    sound.find();
    long found = System.nanoTime();
    Program.Line back = awaited(BACK);
    tap.from(back.nanos());
    tap.awaitLoud(5_000);
    tap.awaitQuiet(900);
    lost = true;
    System.out.printf(
        "live: loss told after %d ms, return told after %d ms%n",
        (said.nanos() - gone) / 1_000_000, (back.nanos() - found) / 1_000_000);
  }

  private Program.Line awaited(String notice) throws InterruptedException {
    return program
        .await(line -> line.text().contains(notice), PATIENCE_MILLIS)
        .orElseThrow(() -> new AssertionError("not said: " + notice));
  }

  private void print() {
    Collections.sort(starts);
    System.out.printf(
        "live: %d prompts, sound %d ms after the decision was printed in the middle, %d at most%n",
        starts.size(), starts.get(starts.size() / 2), starts.get(starts.size() - 1));
  }

  private static List<SessionEvent> events(Path sessions) throws Exception {
    try (Stream<Path> folders = Files.list(sessions)) {
      SessionFolder only = new SessionFolder(folders.findFirst().orElseThrow());
      List<Recorded> decisions = SessionLogFile.read(only.log()).decisions();
      return decisions.stream().flatMap(decision -> decision.events().stream()).toList();
    }
  }
}
