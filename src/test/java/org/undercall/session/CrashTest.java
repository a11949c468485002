package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.term.StepRef;
import org.undercall.port.Fault;
import org.undercall.text.ProgramVersion;

@DisplayName("The program, killed at any moment")
class CrashTest {
  private static final int KILLS = Integer.getInteger("undercall.kills", 20);

  /** How often one session is killed at most; then another one is begun. */
  private static final int MOST_IN_ONE = 20;

  private static final int PHRASES = 48;
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final String TORN = "A torn last line was dropped: ";

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final StringBuilder printed = new StringBuilder();
  private Procedure procedure;
  private Path sessions;
  private int kills;
  private int untilKill;
  private int torn;
  private int decisions;

  @TempDir private Path folder;

  @Test
  @DisplayName(
      "goes on where its log ends, closes nothing twice, and prints nothing it did not log")
  void killed() throws Exception {
    Path file = folder.resolve("procedure.json");
    Files.writeString(file, Files.readString(DEMO).replace("\"seconds\": 10", "\"seconds\": 1"));
    procedure = ProcedureFile.load(file).procedure();
    int jobs = 0;
    while (kills < KILLS) {
      sessions = folder.resolve("sessions-" + jobs);
      printed.setLength(0);
      job(file, Math.min(MOST_IN_ONE, KILLS - kills));
      jobs++;
    }
    assertEquals(KILLS, kills);
    System.out.printf(
        "%d kills in %d sessions, %d decisions, %d torn last lines dropped, seed %d%n",
        kills, jobs, decisions, torn, SEED);
  }

  /** One session from its start to its end, killed so many times. */
  private void job(Path file, int most) throws Exception {
    int last = kills + most;
    List<Recorded> kept = List.of();
    boolean cut = false;
    int status = -1;
    while (status != 0 && !ended(kept)) {
      int spacing = Math.max(1, PHRASES / most);
      untilKill = kills < last ? 1 + random.nextInt(spacing) : Integer.MAX_VALUE;
      int before = kills;
      try (Rehearsal rehearsal = Rehearsal.start(file, sessions)) {
        status = work(rehearsal, kept);
        assertEquals(cut, rehearsal.printed().contains(TORN), rehearsal.printed());
        printed.append(rehearsal.printed());
      }
      kept = log();
      cut = kills > before && !ended(kept) && random.nextInt(4) == 0;
      if (cut) {
        tear();
      }
    }
    everyPrintedReplyIsInTheLog(printed.toString(), kept);
    nothingIsClosedTwice(kept, procedure);
    assertEquals(Phase.ENDED, OpenSession.replay(procedure, kept).phase());
    assertTrue(Review.of(Walk.of(procedure), kept).complete());
    decisions += kept.size();
  }

  /** A session that was killed after its last decision is over: the next start begins another. */
  private boolean ended(List<Recorded> kept) throws Fault {
    return OpenSession.replay(procedure, kept).phase() == Phase.ENDED;
  }

  /** Works until the session ends or the program is killed; the status is then not 0. */
  private int work(Rehearsal rehearsal, List<Recorded> kept) throws Exception {
    if (!rehearsal.ready()) {
      return rehearsal.status();
    }
    goesOn(kept);
    TypedTechnician technician = new TypedTechnician();
    while (true) {
      Session session = OpenSession.replay(procedure, log());
      if (session.nextTimer().isPresent()) {
        rehearsal.await("Time is up");
        continue;
      }
      rehearsal.type(technician.says(session));
      untilKill--;
      if (untilKill <= 0) {
        kills++;
        rehearsal.kill(random.nextInt(40));
        return -1;
      }
      if (!rehearsal.ready()) {
        return rehearsal.status();
      }
    }
  }

  /** The log has all it had, and the program goes on in the very state that follows from it. */
  private void goesOn(List<Recorded> kept) throws Fault {
    List<Recorded> now = log();
    assertEquals(kept, now.subList(0, kept.size()), "decisions were lost");
    if (!kept.isEmpty()) {
      Session session = OpenSession.replay(procedure, kept);
      Recorded up = now.get(kept.size());
      Decision expected = Decider.takeUp(session, ProgramVersion.TEXT, Duration.ofSeconds(1));
      assertEquals(expected.events(), up.events());
      assertEquals(expected.reply().text(), up.said());
    }
  }

  /** Leaves the beginning of a line that was being written, as a power cut can. */
  private void tear() throws Exception {
    Path log = SessionFolder.find(sessions, SessionFolder.LAST).log();
    String line = Files.readAllLines(log).get(0);
    String rest = line.substring(0, 1 + random.nextInt(line.length() - 1));
    Files.writeString(log, rest, StandardOpenOption.APPEND);
    torn++;
  }

  private List<Recorded> log() throws Fault {
    return SessionLogFile.read(SessionFolder.find(sessions, SessionFolder.LAST).log()).decisions();
  }

  private static void everyPrintedReplyIsInTheLog(String printed, List<Recorded> log) {
    int at = 0;
    for (String line : printed.lines().toList()) {
      String words = line.replaceFirst("^(> )+", "").strip();
      boolean own =
          words.isEmpty()
              || words.equals(">")
              || words.startsWith("New rehearsal: ")
              || words.startsWith("Rehearsal taken up: ")
              || words.startsWith("A rehearsal is no record ")
              || words.startsWith("so far ")
              || words.startsWith(TORN);
      while (!own && !log.get(at).said().equals(words)) {
        at++;
        assertTrue(at < log.size(), "printed and not in the log, in its order: " + words);
      }
      at += own ? 0 : 1;
    }
    assertTrue(at > 20, "only " + at + " replies were printed");
  }

  private static void nothingIsClosedTwice(List<Recorded> log, Procedure procedure) {
    Map<StepRef, Integer> closed = new HashMap<>();
    log.stream()
        .flatMap(decision -> decision.events().stream())
        .filter(SessionEvent.StepClosed.class::isInstance)
        .forEach(e -> closed.merge(((SessionEvent.StepClosed) e).step(), 1, Integer::sum));
    Map<StepRef, Integer> once = new HashMap<>();
    Walk.of(procedure).places().forEach(place -> once.put(place.ref(), 1));
    assertEquals(once, closed);
  }

  @Test
  @DisplayName("starts in a time in which a technician would wait")
  void starts() throws IOException {
    long before = System.nanoTime();
    try (Rehearsal rehearsal = Rehearsal.start(DEMO, folder.resolve("sessions"))) {
      assertTrue(rehearsal.ready());
    }
    Duration took = Duration.ofNanos(System.nanoTime() - before);
    assertTrue(took.toSeconds() < 60, "took " + took);
  }
}
