package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.term.Job;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.port.Fault;

@DisplayName("A log with right sums whose events cannot follow each other")
class ImpossibleLogTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final int SHUFFLES = 400;
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);

  @TempDir private Path sessions;
  private LoadedProcedure loaded;
  private List<Recorded> whole;

  @BeforeEach
  void work() throws Exception {
    loaded = ProcedureFile.load(DEMO);
    whole = TypedTechnician.wholeWork(loaded.procedure(), loaded.sha256());
    Session session = OpenSession.replay(loaded.procedure(), whole);
    assertEquals(Phase.ENDED, session.phase());
    assertTrue(whole.size() > 30, whole.size() + " decisions");
  }

  private static List<Recorded> numbered(List<Recorded> decisions) {
    List<Recorded> log = new ArrayList<>();
    decisions.forEach(
        d -> log.add(new Recorded(log.size() + 1L, d.at(), d.heard(), d.events(), d.said())));
    return log;
  }

  /** Replays an order; whether it was refused. Anything but a session or LOG-027 fails. */
  private boolean refused(List<Recorded> order) {
    List<Recorded> log = numbered(order);
    assertEquals(log.size() >= 1, !Review.of(Walk.of(loaded.procedure()), log).steps().isEmpty());
    try {
      Session session = OpenSession.replay(loaded.procedure(), log);
      assertTrue(Decider.prompt(session).sentences().size() < 20);
      return false;
    } catch (Fault e) {
      assertTrue(
          e.getMessage().matches("LOG-027 log line [0-9]+: found .*, expected .+"), e.getMessage());
      return true;
    }
  }

  @Test
  @DisplayName("is refused with LOG-027 wherever one line is left out or two change places")
  void neighbours() {
    int removed = 0;
    int swapped = 0;
    for (int i = 0; i + 1 < whole.size(); i++) {
      List<Recorded> without = new ArrayList<>(whole);
      without.remove(i);
      removed += refused(without) ? 1 : 0;
      List<Recorded> other = new ArrayList<>(whole);
      Collections.swap(other, i, i + 1);
      swapped += refused(other) ? 1 : 0;
    }
    System.out.printf(
        "of %d lines: without one %d refused, two swapped %d refused%n",
        whole.size(), removed, swapped);
    assertTrue(removed > whole.size() / 2 && swapped > whole.size() / 2);
  }

  @Test
  @DisplayName("is refused with LOG-027 in any random order, and never ends otherwise")
  void shuffled() {
    Random random = new Random(SEED);
    int refused = 0;
    for (int i = 0; i < SHUFFLES; i++) {
      List<Recorded> order = new ArrayList<>(whole);
      Collections.shuffle(
          order.subList(1 + random.nextInt(whole.size() - 2), whole.size()), random);
      refused += refused(order) ? 1 : 0;
    }
    System.out.printf("%d random orders, %d refused, seed %d%n", SHUFFLES, refused, SEED);
    assertTrue(refused > SHUFFLES / 2);
  }

  private Fault fault(List<Recorded> before, SessionEvent event) {
    List<Recorded> log = new ArrayList<>(before);
    log.add(new Recorded(0, before.get(0).at(), Optional.empty(), List.of(event), ""));
    return assertThrows(Fault.class, () -> OpenSession.replay(loaded.procedure(), numbered(log)));
  }

  private void assertFault(int after, SessionEvent event, String expected) {
    Fault fault = fault(whole.subList(0, after), event);
    assertEquals(LogCode.IMPOSSIBLE, fault.code());
    String line = "LOG-027 log line " + (after + 1) + ": ";
    assertTrue(fault.getMessage().startsWith(line), fault.getMessage());
    assertTrue(fault.getMessage().endsWith(", expected " + expected), fault.getMessage());
  }

  @Test
  @DisplayName("names the line, the event and what would have had to hold")
  void named() {
    StepRef bolt = new StepRef("bush-bolt", Side.LEFT);
    assertFault(
        1, new SessionEvent.StepClosed(bolt), "work that goes on, after \"cautions understood\"");
    assertFault(
        2,
        new SessionEvent.StepEntered(new StepRef("no-step", Side.CAR)),
        "a step of the procedure");
    assertFault(
        2, new SessionEvent.StageClosed(bolt, 1, "65 N·m"), "the step at hand, arch-height/left");
    assertFault(2, new SessionEvent.TimerEnded(bolt), "a timer that runs");
    assertFault(2, new SessionEvent.NoteDropped(), "a note that was begun");
    assertFault(2, new SessionEvent.ReadBackDropped(), "something that waits to be read back");
    assertFault(
        2,
        new SessionEvent.ClockJumped(Long.MIN_VALUE),
        "every timer ending between the years 1 and 9999");
    assertFault(2, new SessionEvent.EndCalled(1), openSteps() + " open steps");
    assertFault(
        whole.size(),
        new SessionEvent.StepEntered(bolt),
        "work that goes on, after \"cautions understood\"");
    assertFault(2, whole.get(0).events().get(0), "the start of the session first, and only there");
    Fault empty =
        assertThrows(
            Fault.class,
            () -> OpenSession.replay(loaded.procedure(), numbered(whole.subList(1, 3))));
    assertTrue(empty.getMessage().startsWith("LOG-027 log line 1: "), empty.getMessage());
  }

  private int openSteps() {
    return Walk.of(loaded.procedure()).places().size();
  }

  @Test
  @DisplayName("is refused at each stage that is not the next one")
  void stages() {
    List<Recorded> before = upTo(SessionEvent.ValueCalled.class);
    SessionEvent.ValueCalled called = (SessionEvent.ValueCalled) last(whole.get(before.size()));
    for (int stage : new int[] {Integer.MIN_VALUE, 0, 2, 3, Integer.MAX_VALUE}) {
      SessionEvent event = new SessionEvent.ValueCalled(called.step(), stage, BigDecimal.TEN);
      assertEquals(LogCode.IMPOSSIBLE, fault(before, event).code(), "stage " + stage);
    }
  }

  private static SessionEvent last(Recorded decision) {
    return decision.events().get(0);
  }

  private List<Recorded> upTo(Class<? extends SessionEvent> type) {
    for (int i = 0; i < whole.size(); i++) {
      if (whole.get(i).events().stream().anyMatch(type::isInstance)) {
        return whole.subList(0, i);
      }
    }
    throw new AssertionError("the work has no " + type);
  }

  @Test
  @DisplayName(
      "is not taken up, is named in the list of sessions and by verify, and is left unlocked")
  void folder() throws Exception {
    SessionFolder folder =
        SessionFolder.create(
            sessions, "demo", Files.readAllBytes(DEMO), OffsetDateTime.parse("2026-01-05T08:00Z"));
    List<Recorded> log = new ArrayList<>(whole.subList(0, 2));
    log.add(
        new Recorded(
            3,
            whole.get(2).at(),
            Optional.empty(),
            List.of(
                new SessionEvent.LoadConfirmed(
                    Side.LEFT,
                    LoadCondition.RIDE_HEIGHT,
                    LoadProof.WHEELS_CARRY_THE_CAR,
                    Optional.empty()),
                new SessionEvent.StepClosed(new StepRef("bush-bolt", Side.RIGHT))),
            ""));
    log.add(
        new Recorded(
            4,
            whole.get(2).at(),
            Optional.empty(),
            List.of(
                new SessionEvent.TimerStarted(new StepRef("settle", Side.CAR), 10, Instant.EPOCH)),
            ""));
    try (SessionLogFile file = SessionLogFile.open(folder.log())) {
      for (Recorded decision : log) {
        file.append(decision);
      }
    }
    for (int i = 0; i < 2; i++) {
      Fault fault = assertThrows(Fault.class, () -> Work.takeUp(folder, Occasion.WORK));
      assertEquals(LogCode.IMPOSSIBLE, fault.code());
    }
    Fault told =
        assertThrows(
            Fault.class, () -> Work.on(DEMO, sessions, Job.NOT_GIVEN, Occasion.WORK, false));
    String message = told.getMessage();
    assertTrue(message.startsWith("LOG-027 session " + folder.name() + ", log line 3: "), message);
    assertTrue(message.contains("--new begins another session"), message);
    assertEquals(1, SessionFolder.all(sessions).size());
    OpenSessions all = OpenSessions.in(sessions);
    assertEquals(List.of(), all.open());
    assertTrue(all.faults().get(0).startsWith("LOG-027 log line 3: "), all.faults() + "");
    List<LogFinding> findings = Proof.of(folder, Optional.empty()).findings();
    assertEquals(1, findings.size());
    assertTrue(
        findings
            .get(0)
            .message()
            .startsWith("LOG-027 log.jsonl line 3 (seq 3): found {\"id\":\"EV05\""),
        findings.get(0).message());
    try (Work asked = Work.on(DEMO, sessions, Job.NOT_GIVEN, Occasion.WORK, true)) {
      assertFalse(asked.takenUp());
    }
    assertEquals(2, SessionFolder.all(sessions).size());
  }
}
