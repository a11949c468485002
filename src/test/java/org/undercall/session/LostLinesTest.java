package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogFinding;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.core.review.Review;
import org.undercall.core.term.Job;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.LogTrouble;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.Side;

@DisplayName("A session whose log lost its last lines")
class LostLinesTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final SessionEvent LOST =
      new SessionEvent.LogDoubted(LogTrouble.LINES_GONE, Optional.of(2));

  @TempDir private Path sessions;
  private LoadedProcedure loaded;
  private SessionFolder folder;

  @BeforeEach
  void cut() throws Exception {
    loaded = ProcedureFile.load(PROCEDURE);
    folder = SessionFolder.create(sessions, "demo", Files.readAllBytes(PROCEDURE), LogMaker.START);
    List<Recorded> log = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    try (SessionLogFile file = SessionLogFile.open(folder.log())) {
      for (Recorded decision : log) {
        file.append(decision);
      }
    }
    List<String> lines = Files.readAllLines(folder.log());
    Files.write(folder.log(), lines.subList(0, lines.size() - 2));
  }

  private Recorded takenUp() throws Exception {
    SessionLoop.Ports ports = new Bench().ports();
    try (Work work = Work.on(PROCEDURE, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertTrue(work.takenUp());
      work.run(ports.ear(), ports.voice(), ports.time());
    }
    List<Recorded> log = SessionLogFile.read(folder.log()).decisions();
    return log.get(log.size() - 1);
  }

  @Test
  @DisplayName("can be gone on with; the loss is said and recorded")
  void goesOn() throws Exception {
    Recorded last = takenUp();
    assertEquals(LOST, last.events().get(1));
    assertTrue(
        last.said().contains("Careful. The log lost two lines. Check what was done last."),
        last::said);
  }

  @Test
  @DisplayName("and changed in the middle is not taken up; another session begins and names it")
  void changed() throws Exception {
    String text = Files.readString(folder.log());
    Files.writeString(folder.log(), text.replaceFirst("\"seq\":3", "\"seq\":4"));
    try (Work work = Work.on(PROCEDURE, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertFalse(work.takenUp());
      assertEquals(1, work.passedOver().size());
      String told = work.passedOver().get(0);
      assertTrue(told.startsWith("LOG-"), told);
      assertTrue(told.contains(folder.name()), told);
      SessionLoop.Ports ports = new Bench().ports();
      work.run(ports.ear(), ports.voice(), ports.time());
    }
    Path other = Path.of("shared", "procedures", "strut-top-mount.json");
    try (Work work = Work.on(other, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertEquals(List.of(), work.passedOver());
    }
    try (Work work = Work.on(PROCEDURE, sessions, Job.NOT_GIVEN, Occasion.WORK, false)) {
      assertTrue(work.takenUp());
      assertEquals(List.of(), work.passedOver());
    }
  }

  @Test
  @DisplayName("is told by verify and review from then on, and is never complete")
  void told() throws Exception {
    long line = takenUp().seq();
    List<LogFinding> findings = Proof.of(folder, Optional.empty()).findings();
    assertEquals(List.of(LogCode.LOSS_RECORDED), findings.stream().map(f -> f.code()).toList());
    assertEquals(line, findings.get(0).line().orElseThrow());
    takenUp();
    try (SessionLogFile file = SessionLogFile.open(folder.log())) {
      long next = file.decisions().size() + 1L;
      Recorded last = file.decisions().get(file.decisions().size() - 1);
      file.append(
          new Recorded(
              next,
              last.at(),
              Optional.empty(),
              List.of(
                  new SessionEvent.StepClosed(Walk.of(loaded.procedure()).places().get(14).ref()),
                  new SessionEvent.SessionEnded(true, 0)),
              ""));
    }
    List<Recorded> log = SessionLogFile.read(folder.log()).decisions();
    Review review = Review.of(Walk.of(loaded.procedure()), log);
    assertEquals(List.of(), review.open());
    assertEquals(List.of(LOST), review.ending().losses().stream().map(l -> l.event()).toList());
    assertTrue(review.ending().saidComplete());
    assertFalse(review.complete());
  }

  @Test
  @DisplayName("has lost its load condition too, and says that the log is to be doubted")
  void load() {
    Session session =
        Session.start(Walk.of(loaded.procedure()))
            .after(new SessionEvent.CautionsUnderstood())
            .after(
                new SessionEvent.LoadConfirmed(
                    Side.LEFT,
                    LoadCondition.RIDE_HEIGHT,
                    LoadProof.WHEELS_CARRY_THE_CAR,
                    Optional.empty()));
    SessionEvent cancelled = new SessionEvent.LoadChanged(LoadChange.PROGRAM_RESTARTED);
    Decision whole = Decider.takeUp(session, "test", Duration.ZERO);
    assertTrue(whole.events().contains(cancelled), "as after every restart");
    assertFalse(whole.reply().text().contains("Careful. "), whole.reply()::text);
    for (LogTrouble trouble : LogTrouble.values()) {
      Decision up =
          Decider.takeUp(
              session,
              "test",
              Duration.ZERO,
              Optional.of(new SessionEvent.LogDoubted(trouble, Optional.empty())),
              Optional.empty());
      assertTrue(up.events().contains(cancelled), () -> trouble + " " + up.events());
      assertTrue(up.reply().text().contains("Careful. "), up.reply()::text);
    }
  }
}
