package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Walk;

@DisplayName("The monitor of the promises")
class SeededBugsTest {
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);
  private static final int MOST = 400_000;
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private int intents;

  static Stream<SeededBug> bugs() {
    return SeededBugs.all().stream();
  }

  @ParameterizedTest
  @MethodSource("bugs")
  @DisplayName("catches a program with one mistake, by the promise it breaks")
  void caught(SeededBug bug) {
    Optional<String> broken = work(bug.program(), bug.promise());
    System.out.printf("caught after %,d intents: %s%n", intents, bug.mistake());
    assertTrue(broken.isPresent(), "never caught: " + bug.mistake());
    assertTrue(
        broken.get().startsWith("broken: " + bug.promise()),
        bug.mistake() + ": caught by another promise, " + broken.get());
  }

  @Test
  @DisplayName("finds nothing in the real program in the same work")
  void nothing() {
    assertEquals(Optional.empty(), work(new SeededBug.Program() {}, ""));
    assertTrue(intents >= MOST, "only " + intents);
  }

  /**
   * Works at random until the promise is broken that belongs to the mistake. Another one may be
   * broken sooner: that run ends, and the next begins.
   *
   * @return what was broken, else another promise that was; empty if none was
   */
  private Optional<String> work(SeededBug.Program program, String promise) {
    Optional<String> other = Optional.empty();
    SplittableRandom random = new SplittableRandom(SEED);
    while (intents < MOST) {
      Walk walk = SampleProcedures.random(random);
      try {
        run(program, walk, random.split());
      } catch (AssertionError e) {
        if (e.getMessage().startsWith("broken: " + promise)) {
          return Optional.of(e.getMessage());
        }
        other = Optional.of(e.getMessage());
      } catch (RuntimeException e) {
        // The mistake stopped the program itself. That is no catch: the next run may show it.
      }
    }
    return other;
  }

  private void run(SeededBug.Program program, Walk walk, SplittableRandom random) {
    RandomTechnician technician = new RandomTechnician(random);
    Promises promises = new Promises(walk);
    Session session = Session.start(walk);
    for (int i = 0; i < 300; i++) {
      intents++;
      Intent intent = technician.next(session);
      Decision decision =
          program.decide(session, intent, new Moment(START.plusSeconds(10L * i), 10_000L * i));
      promises.watch(intent, decision);
      session = after(program, session, decision.events());
      if (random.nextInt(50) == 0) {
        int away = random.nextInt(240);
        Decision up = program.takeUp(session, Duration.ofSeconds(away));
        promises.restarted(up);
        session = after(program, session, up.events());
      }
    }
  }

  private static Session after(
      SeededBug.Program program, Session before, List<SessionEvent> events) {
    Session session = before;
    for (SessionEvent event : events) {
      session = program.after(session, event);
    }
    return session;
  }
}
