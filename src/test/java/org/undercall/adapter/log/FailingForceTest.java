package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Replay;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Refuse;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Voice;
import org.undercall.session.SessionLoop;
import org.undercall.session.TypedTechnician;

@DisplayName("A whole job on a disk whose write, force or cut fails one time in nine")
class FailingForceTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);

  private final Random random = new Random(SEED);
  private final Disk disk = new Disk();
  private final List<String> said = new ArrayList<>();
  private final TypedTechnician technician = new TypedTechnician();
  private Session session;
  private long millis;
  private boolean failing;
  private int failures;

  /** A file in memory. What a failed force leaves on it is chance. */
  private final class Disk implements LogChannel {
    private byte[] bytes = new byte[0];

    @Override
    public void write(byte[] more, long position) throws IOException {
      boolean fails = fails();
      int taken = fails ? random.nextInt(more.length) : more.length;
      bytes = Arrays.copyOf(bytes, (int) position + taken);
      System.arraycopy(more, 0, bytes, (int) position, taken);
      require(!fails, "no space left");
    }

    @Override
    public void force() throws IOException {
      require(!fails(), "input/output error");
    }

    @Override
    public void cut(long size) throws IOException {
      require(!fails(), "cannot cut");
      bytes = size < bytes.length ? Arrays.copyOf(bytes, (int) size) : bytes;
    }

    @Override
    public void close() {}

    private boolean fails() {
      boolean fails = failing && random.nextInt(9) == 0;
      failures += fails ? 1 : 0;
      return fails;
    }

    private static void require(boolean holds, String why) throws IOException {
      if (!holds) {
        throw new IOException(why);
      }
    }
  }

  /** Types what the phase waits for; after a minute of silence while a timer runs. */
  private final class Typing implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
      failing = true;
      millis += 1_000;
      if (session.nextTimer().isPresent()) {
        millis += patienceMillis;
        return Optional.empty();
      }
      return Optional.of(Heard.typed(technician.says(session)));
    }

    @Override
    public void close() {}
  }

  private final class Kept implements Display {
    @Override
    public void earlier(Session now, List<Recorded> decisions) {}

    @Override
    public void said(String words, Moment at) {}

    @Override
    public void recorded(Session now, Recorded decision) {
      session = now;
    }
  }

  @Test
  @DisplayName(
      "says each time that nothing was closed, closes each step once, and comes to its end")
  void wholeJob() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(DEMO);
    Walk walk = Walk.of(loaded.procedure());
    session = Session.start(walk);
    LogContent none = new LogContent(List.of(), Optional.empty(), 0, LogLine.FIRST);
    SumKeeper sum = new SumKeeper(new RunningSum(), text -> {});
    SessionLogFile log = new SessionLogFile("log.jsonl", disk, null, none, sum);
    Voice voice = new Said();
    SessionLoop.Ports ports =
        new SessionLoop.Ports(new Typing(), voice, log::append, this::now, new Kept());
    SessionEvent.SessionStarted started =
        new SessionEvent.SessionStarted("title", "1", loaded.sha256(), "test");
    Session left = new SessionLoop(session, ports, 0).run(Decider.begin(session, started));
    assertEquals(Phase.ENDED, left.phase());
    List<Recorded> decisions = LogContent.of(disk.bytes, "log.jsonl").decisions();
    assertEquals(new Replay.Done(left), Replay.of(walk, decisions));
    List<String> kept = new ArrayList<>(decisions.stream().map(Recorded::said).toList());
    kept.removeIf(String::isEmpty);
    long refused = said.stream().filter(Refuse.cannotRecord().text()::equals).count();
    said.removeIf(Refuse.cannotRecord().text()::equals);
    assertEquals(kept, said, "what was said is what was recorded, in its order");
    long closed =
        decisions.stream()
            .flatMap(d -> d.events().stream())
            .filter(SessionEvent.StepClosed.class::isInstance)
            .count();
    assertEquals(walk.places().size(), closed);
    System.out.printf(
        "%d decisions, %d failures of the disk, %d times not recorded, seed %d%n",
        decisions.size(), failures, refused, SEED);
    assertTrue(refused > 3, refused + " refused");
  }

  private Moment now() {
    return new Moment(START.plusNanos(millis * 1_000_000), millis);
  }

  private final class Said implements Voice {
    @Override
    public void say(String words) {
      said.add(words);
    }

    @Override
    public void close() {}
  }
}
