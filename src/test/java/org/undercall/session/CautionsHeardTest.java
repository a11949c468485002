package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.Positions;
import org.undercall.core.term.TalkLevel;
import org.undercall.port.Fault;

@DisplayName("Cautions that were heard before on a day")
class CautionsHeardTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");

  @TempDir private Path sessions;

  private Recorded begun(String technician, String... phrases) throws Fault {
    Job job =
        new Job(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(technician));
    Bench bench = new Bench();
    List.of(phrases).forEach(bench::hears);
    try (Work work = Work.on(PROCEDURE, sessions, job, Occasion.WORK, true)) {
      work.talk(TalkLevel.NORMAL, job.technician(), Set.of());
      SessionLoop.Ports ports = bench.ports();
      work.run(ports.ear(), ports.voice(), ports.time());
      return SessionLogFile.read(work.folder().log()).decisions().get(0);
    }
  }

  @Test
  @DisplayName("are read in brief to the same technician, and whole by any other")
  void again() throws Fault {
    String whole = begun("AB", "cautions understood").said();
    Recorded second = begun("AB");
    assertTrue(whole.startsWith("Lateral link, short demonstration. "), whole);
    assertTrue(second.said().contains("Stands, never a jack alone."), second::said);
    assertFalse(second.said().contains("Never work under a jack alone."), second::said);
    assertEquals(
        new SessionEvent.TalkSet(
            TalkLevel.NORMAL, true, Optional.of(new Positions(List.of(1, 2))), Optional.empty()),
        second.events().get(1));
    assertEquals(whole, begun("CD").said());
  }

  @Test
  @DisplayName("are read whole if they were not understood before")
  void notUnderstood() throws Fault {
    String whole = begun("AB").said();
    assertEquals(whole, begun("AB").said());
  }
}
