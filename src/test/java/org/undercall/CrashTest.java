package org.undercall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.files.LogFault;
import org.undercall.adapter.files.ProcedureFile;
import org.undercall.adapter.files.SessionFolder;
import org.undercall.adapter.files.SessionLogFile;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.term.StepRef;

@DisplayName("The program, killed at any moment")
class CrashTest {
  private static final int KILLS = Integer.getInteger("undercall.kills", 6);
  private static final int PHRASES = 48;
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");

  private final SplittableRandom random = new SplittableRandom(SEED);
  private int kills;
  private int untilKill;

  @TempDir private Path folder;

  @Test
  @DisplayName(
      "goes on where its log ends, closes nothing twice, and prints nothing it did not log")
  void killed() throws Exception {
    Path file = folder.resolve("procedure.json");
    Files.writeString(file, Files.readString(DEMO).replace("\"seconds\": 10", "\"seconds\": 1"));
    Procedure procedure = ProcedureFile.load(file).procedure();
    StringBuilder printed = new StringBuilder();
    int status = -1;
    int spacing = Math.max(1, PHRASES / KILLS);
    while (status != 0) {
      untilKill = kills < KILLS ? 1 + random.nextInt(spacing) : Integer.MAX_VALUE;
      try (Rehearsal rehearsal = Rehearsal.start(file, folder.resolve("sessions"))) {
        status = work(rehearsal, procedure);
        printed.append(rehearsal.printed());
      }
    }
    List<Recorded> log = log();
    System.out.printf(
        "%d kills, %d decisions, seed %d%n%s%n", kills, log.size(), SEED, torn(printed));
    assertEquals(KILLS, kills, "the work was over before the last kill");
    everyPrintedReplyIsInTheLog(printed.toString(), log);
    nothingIsClosedTwice(log, procedure);
    assertEquals(Phase.ENDED, OpenSession.replay(procedure, log).phase());
    assertTrue(Review.of(Walk.of(procedure), log).complete());
  }

  /** Works until the session ends or the program is killed; the status is then not 0. */
  private int work(Rehearsal rehearsal, Procedure procedure) throws Exception {
    if (!rehearsal.ready()) {
      return rehearsal.status();
    }
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

  private List<Recorded> log() throws LogFault {
    SessionFolder session = SessionFolder.find(folder.resolve("sessions"), "last");
    return SessionLogFile.read(session.log()).decisions();
  }

  private static String torn(StringBuilder printed) {
    long count = printed.toString().lines().filter(l -> l.startsWith("A torn last line")).count();
    return count + " torn last lines dropped";
  }

  private static void everyPrintedReplyIsInTheLog(String printed, List<Recorded> log) {
    int at = 0;
    for (String line : printed.lines().toList()) {
      String words = line.replaceFirst("^(> )+", "").strip();
      boolean own =
          words.isEmpty()
              || words.equals(">")
              || words.startsWith("New session: ")
              || words.startsWith("Session taken up: ")
              || words.startsWith("A torn last line was dropped: ");
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
