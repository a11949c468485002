package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Session;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Signal;
import org.undercall.port.Voice;

@DisplayName("Before the reply the session loop signals")
class SessionSignalTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");

  private final Bench bench = new Bench();
  private final List<Signal> signals = new ArrayList<>();

  private final class SignallingVoice implements Voice {
    @Override
    public void say(String words) {}

    @Override
    public void signal(Signal signal) {
      signals.add(signal);
    }

    @Override
    public void close() {}
  }

  private void run() throws Exception {
    Session session = Session.start(Walk.of(ProcedureFile.load(PROCEDURE).procedure()));
    SessionLoop.Ports ports = bench.ports();
    new SessionLoop(
            session,
            new SessionLoop.Ports(
                ports.ear(), new SignallingVoice(), ports.journal(), ports.time()),
            0)
        .run(Decider.begin(session, new SessionEvent.SessionStarted("title", "1", "00", "test")));
  }

  @ParameterizedTest(name = "{1} for \"{0}\"")
  @CsvSource({
    "cautions understood, HEARD",
    "step completed, NOT_ACCEPTED",
    "cautions cautions, NOT_ACCEPTED"
  })
  @DisplayName("what became of the phrase")
  void once(String phrase, Signal expected) throws Exception {
    bench.hears(phrase);
    run();
    assertEquals(List.of(expected), signals);
  }

  @Test
  @DisplayName("nothing for chatter and in silence")
  void none() throws Exception {
    bench.hears("nice weather today").silence(1_000);
    run();
    assertEquals(List.of(), signals);
  }
}
