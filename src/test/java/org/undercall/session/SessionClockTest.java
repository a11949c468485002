package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;

@DisplayName("The session loop")
class SessionClockTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");

  private final Bench bench = new Bench();
  private Procedure procedure;
  private Session session;

  @BeforeEach
  void load() throws Fault {
    procedure = ProcedureFile.load(PROCEDURE).procedure();
    session = Session.start(Walk.of(procedure));
  }

  private Session run() throws Fault {
    SessionEvent.SessionStarted started =
        new SessionEvent.SessionStarted("title", "1", "00", "test");
    return new SessionLoop(session, bench.ports(), 0).run(Decider.begin(session, started));
  }

  private static Fault fault() {
    return assertThrows(
        Fault.class, () -> SessionFolder.find(Path.of("no", "such", "folder"), "last"));
  }

  private Session replayed() throws Fault {
    return OpenSession.replay(procedure, bench.recorded);
  }

  @Nested
  @DisplayName("looks at the clocks")
  class Clocks {
    private List<String> said() {
      return bench.happened.stream().filter(line -> line.startsWith("said ")).toList();
    }

    @Test
    @DisplayName("and ends a timer by its true time though the wall clock was set")
    void wallClockSet() throws Fault {
      toTimer();
      bench.wallClockSet(3_600_000, 4_000).wallClockSet(-7_200_000, 3_000).silence(2_999);
      bench.silence(1).silence(1);
      Session left = run();
      List<String> said = said();
      assertTrue(said.get(4).startsWith("said The clock was set forward by one hour."), said + "");
      assertTrue(said.get(5).startsWith("said The clock was set back by two hours."), said + "");
      assertEquals(
          "said Time is up: Bounce both ends and let it settle. Say: step completed.", said.get(6));
      assertEquals(7, said.size(), said + "");
      List<Recorded> jumps =
          bench.recorded.stream()
              .filter(d -> d.events().get(0) instanceof SessionEvent.ClockJumped)
              .toList();
      assertEquals(
          List.of(
              new SessionEvent.ClockJumped(3_600_000), new SessionEvent.ClockJumped(-7_200_000)),
          jumps.stream().map(d -> d.events().get(0)).toList());
      assertEquals(10_000, bench.recorded.get(6).at().monotonicMillis());
      assertEquals(replayed(), left);
    }

    @Test
    @DisplayName("and lets small differences and summer time pass")
    void small() throws Fault {
      toTimer();
      bench.wallClockSet(4_000, 1_000).summerTime(1_000).wallClockSet(-4_000, 1_000);
      run();
      assertEquals(4, bench.recorded.size());
    }

    @Test
    @DisplayName("and says a jump once, when it can be recorded")
    void notRecorded() throws Fault {
      toTimer();
      bench.breaks(fault()).wallClockSet(-60_000, 1_000).silence(2_000).works();
      bench.silence(8_000).silence(1);
      run();
      List<String> said = said();
      assertEquals("said I cannot write the log. Nothing was closed.", said.get(4));
      assertTrue(said.get(5).startsWith("said The clock was set back by one minute."), said + "");
      assertEquals(
          "said Time is up: Bounce both ends and let it settle. Say: step completed.", said.get(6));
      assertEquals(7, said.size(), said + "");
    }

    @Test
    @DisplayName("and warns once of the end of a long timer, waiting no longer than until then")
    void warns() throws Fault {
      bench.hears("cautions understood").hears("start six minutes for the sealant");
      for (int minute = 0; minute < 5; minute++) {
        bench.silence(60_000);
      }
      bench.silence(30_000).silence(30_000).silence(1);
      run();
      List<String> said = said();
      assertEquals("said One minute left: sealant.", said.get(3));
      assertEquals("said The sealant time is up.", said.get(4));
      assertEquals(5, said.size(), said + "");
    }
  }

  @Nested
  @DisplayName("reminds in a long quiet")
  class Reminds {
    private List<Long> reminders() {
      return bench.recorded.stream()
          .filter(d -> d.events().get(0) instanceof SessionEvent.Reminded)
          .map(d -> d.at().monotonicMillis())
          .toList();
    }

    private void quietMinutes(int minutes) {
      for (int minute = 0; minute < minutes; minute++) {
        bench.silence(60_000);
      }
    }

    @Test
    @DisplayName("after ten minutes, then after twenty more, and counts anew from what is heard")
    void doubled() throws Fault {
      bench.hears("cautions understood");
      quietMinutes(31);
      bench.hears("where am i");
      quietMinutes(10);
      Session left = run();
      assertEquals(List.of(600_000L, 1_800_000L, 2_460_000L), reminders());
      assertTrue(
          bench.happened.contains("said I am still here. Step one, the measured value."),
          bench.happened + "");
      assertEquals(replayed(), left);
    }

    @Test
    @DisplayName("but not while the work is held")
    void held() throws Fault {
      bench.hears("cautions understood").hears("take a break now");
      quietMinutes(60);
      run();
      assertEquals(List.of(), reminders());
    }
  }

  /** Goes to the wait step of 10 seconds, the twelfth of the walk, and starts its timer. */
  private void toTimer() {
    bench.hears("cautions understood").hears("go to step twelve").hears("start the timer");
  }
}
