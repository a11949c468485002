package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Fault;
import org.undercall.port.Journal;

@DisplayName("The session loop")
class SessionLoopTest {
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
  @DisplayName("records")
  class Records {
    @Test
    @DisplayName("every decision before it says a word of it")
    void beforeSpeaking() throws Fault {
      bench.hears("cautions understood").hears("three eight two").hears("that is correct");
      run();
      assertEquals(4, bench.recorded.size());
      for (int i = 0; i < bench.happened.size(); i += 3) {
        String words = bench.happened.get(i).substring("recorded ".length());
        assertEquals("said " + words, bench.happened.get(i + 1));
        assertEquals("forgot", bench.happened.get(i + 2));
      }
    }

    @Test
    @DisplayName("what was heard, as what it was taken, how sure and how it came")
    void heard() throws Fault {
      bench.hears("cautions understood", 0.876).hears("three eight two");
      run();
      assertEquals(Optional.empty(), bench.recorded.get(0).heard());
      assertEquals(
          Optional.of(
              new Recorded.Heard("cautions understood", "cautions-understood", 0.88, "pressed")),
          bench.recorded.get(1).heard());
      assertEquals(
          Optional.of(new Recorded.Heard("three eight two", "value-called", 1.0, "pressed")),
          bench.recorded.get(2).heard());
    }

    @Test
    @DisplayName("decisions numbered without a gap, from one or from where the journal stands")
    void numbers() throws Fault {
      bench.hears("cautions understood").hears("three eight two");
      Session left = run();
      assertEquals(List.of(1L, 2L, 3L), numbersOf(bench.recorded));
      Bench later = new Bench().hears("that is correct");
      new SessionLoop(left, later.ports(), 3)
          .run(Decider.takeUp(left, "test", Duration.ofHours(1)));
      assertEquals(List.of(4L, 5L), numbersOf(later.recorded));
    }

    @Test
    @DisplayName("chatter, which changes nothing and gets no answer")
    void chatter() throws Fault {
      bench.hears("cautions understood");
      bench.hears("did you see the match").hears("step finished whatever");
      Session left = run();
      assertEquals("", bench.recorded.get(2).said());
      assertEquals(
          List.of(new SessionEvent.NotUnderstood("FOREIGN_WORDS")), bench.recorded.get(2).events());
      assertEquals("did you see the match", bench.recorded.get(2).heard().orElseThrow().text());
      assertEquals(OpenSession.replay(procedure, bench.recorded.subList(0, 2)), left);
      assertEquals("recorded ", bench.happened.get(bench.happened.size() - 1));
    }

    private static List<Long> numbersOf(List<Recorded> decisions) {
      return decisions.stream().map(Recorded::seq).toList();
    }
  }

  @Nested
  @DisplayName("with a journal that fails")
  class JournalFails {
    @Test
    @DisplayName("says that it cannot record, changes nothing, and goes on when it works again")
    void failsAndWorks() throws Fault {
      bench.hears("cautions understood").hears("three eight two");
      bench.breaks(fault()).hears("that is correct").hears("that is correct");
      bench.works().hears("say again").hears("that is correct");
      Session left = run();
      String all = String.join("\n", bench.happened);
      String refusal = "failed\nsaid I cannot write the log. Nothing was closed.\nforgot\n";
      assertTrue(all.contains(refusal + refusal + "recorded Three eight two"), all);
      assertTrue(all.contains("said Noted."), all);
      assertEquals(5, bench.recorded.get(4).seq());
      assertEquals(replayed(), left);
    }

    @Test
    @DisplayName("does not begin when not even the first decision can be recorded")
    void cannotBegin() {
      bench.breaks(fault());
      Fault thrown =
          assertThrows(
              Fault.class,
              () -> {
                SessionLoop.Ports ports = bench.ports();
                Journal full =
                    decision -> {
                      throw fault();
                    };
                new SessionLoop(
                        session,
                        new SessionLoop.Ports(ports.ear(), ports.voice(), full, ports.time()),
                        0)
                    .run(Decider.takeUp(session, "test", Duration.ofHours(1)));
              });
      assertEquals("LOG-010", thrown.code().id());
      assertEquals(List.of(), bench.happened);
    }

    @Test
    @DisplayName("says once that a timer's end cannot be recorded, and leaves time to listen")
    void timerEnds() throws Fault {
      toTimer();
      bench.breaks(fault()).silence(10_000).silence(4_000).silence(5_999);
      bench.works().silence(1).hears("say again");
      run();
      long said =
          bench.happened.stream()
              .filter(line -> line.startsWith("said I cannot write the log"))
              .count();
      assertEquals(1, said, String.join("\n", bench.happened));
      assertEquals(
          List.of(10_000L, 10_000L, 6_000L, 1L, 1L, 60_000L),
          bench.patience.subList(bench.patience.size() - 6, bench.patience.size()));
      assertTrue(
          bench.happened.contains(
              "said Time is up: Bounce both ends and let it settle. Say: step completed."));
    }
  }

  @Nested
  @DisplayName("ends")
  class Ends {
    @Test
    @DisplayName("a timer by the time it is given, and waits no longer than it runs")
    void timer() throws Fault {
      toTimer();
      bench.silence(4_000).silence(6_000).hears("step completed");
      run();
      assertEquals(15_000 + 45 * 400, bench.patience.get(0), "the briefing is asked once more");
      assertEquals(
          List.of(10_000L, 6_000L, 60_000L),
          bench.patience.subList(bench.patience.size() - 3, bench.patience.size()));
      String all = String.join("\n", bench.happened);
      assertTrue(
          all.contains("said Time is up: Bounce both ends and let it settle. Say: step completed."),
          all);
      assertTrue(all.contains("said Step closed."), all);
      List<Recorded> ended =
          bench.recorded.stream()
              .filter(d -> d.events().get(0) instanceof SessionEvent.TimerEnded)
              .toList();
      assertEquals(List.of(10_000L), ended.stream().map(d -> d.at().monotonicMillis()).toList());
      assertEquals(Optional.empty(), ended.get(0).heard());
    }

    @Test
    @DisplayName("with its input, after the timers that have run out")
    void input() throws Fault {
      bench.hears("cautions understood");
      Session left = run();
      assertEquals(Phase.MEASURE, left.phase());
      assertEquals(replayed(), left);
    }

    @Test
    @DisplayName("with the session, and hears nothing after it")
    void session() throws Fault {
      bench.hears("cautions understood").hears("end of work").hears("that is correct");
      bench.hears("three eight two");
      Session left = run();
      assertEquals(Phase.ENDED, left.phase());
      assertEquals(4, bench.recorded.size());
    }
  }

  @Test
  @DisplayName("listens for what the phase allows, and for nothing else")
  void listens() throws Fault {
    bench.hears("cautions understood").hears("take a note").hears("seal was dry");
    run();
    assertTrue(bench.allowed.get(0).contains(IntentKind.CAUTIONS_UNDERSTOOD));
    assertTrue(bench.allowed.get(1).contains(IntentKind.VALUE_CALLED));
    assertTrue(bench.allowed.get(2).contains(IntentKind.NOTE_TEXT));
    assertTrue(bench.allowed.get(2).stream().noneMatch(IntentKind::closes));
    assertEquals("note-text", bench.recorded.get(3).heard().orElseThrow().intent());
  }

  /** Goes to the wait step of 10 seconds, the twelfth of the walk, and starts its timer. */
  private void toTimer() {
    bench.hears("cautions understood").hears("go to step twelve").hears("start the timer");
  }
}
