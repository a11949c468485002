package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Walk;

class RandomWorkTest {
  private static final long INTENTS = Long.getLong("undercall.intents", 3_000_000);

  /** A shorter run visits cells too, but perhaps not all. */
  private static final long ENOUGH_FOR_EVERY_CELL = 3_000_000;

  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private final Set<String> visited = new TreeSet<>();

  @Test
  void noPromiseIsBrokenHoweverTheWorkGoesAndEveryCellOfTheTableIsVisited() {
    SplittableRandom random = new SplittableRandom(SEED);
    long intents = 0;
    long runs = 0;
    while (intents < INTENTS) {
      intents += oneRun(random.split());
      runs++;
    }
    System.out.printf("%,d random intents in %,d runs, seed %d%n", intents, runs, SEED);
    Set<String> missed = expected();
    System.out.printf("%d cells and outcomes expected%n", missed.size());
    missed.removeAll(visited);
    if (INTENTS >= ENOUGH_FOR_EVERY_CELL) {
      assertEquals(Set.of(), missed, "cells with outcomes that were never visited");
    }
    Set<String> undeclared = new TreeSet<>(visited);
    undeclared.removeAll(expected());
    assertEquals(Set.of(), undeclared, "outcomes that no rule declares");
  }

  private long oneRun(SplittableRandom random) {
    Walk walk = SampleProcedures.random(random);
    RandomTechnician technician = new RandomTechnician(random);
    Promises promises = new Promises(walk);
    TimerPromises timers = new TimerPromises(walk);
    long set = 0;
    List<SessionEvent> log = new ArrayList<>();
    log.addAll(given(random));
    promises.given(log);
    Session session = Session.start(walk).after(log);
    int length = 20 + random.nextInt(400);
    long seconds = 0;
    for (int i = 0; i < length; i++) {
      seconds += random.nextInt(20);
      Intent intent = technician.next(session);
      set += intent instanceof Intent.ClockJumped jump ? jump.millis() : 0;
      Moment now = new Moment(START.plusSeconds(seconds + set / 1000), seconds * 1000);
      Decision decision = Decider.decide(session, intent, now);
      set -= missedJump(session, intent);
      timers.watch(seconds * 1000, decision);
      visited.add(cell(session.phase(), intent.kind(), decision.outcome()));
      promises.watch(intent, decision);
      requirePossible(session, decision);
      session = session.after(decision.events());
      log.addAll(decision.events());
      if (random.nextInt(50) == 0) {
        session = crashAndReplay(walk, log, session, promises, random.nextInt(240));
      }
    }
    return length;
  }

  /** Now and then the names of witnesses are given, and that an apprentice works. */
  private static List<SessionEvent> given(SplittableRandom random) {
    List<SessionEvent> given = new ArrayList<>();
    if (random.nextInt(5) == 0) {
      given.add(new SessionEvent.WitnessesKnown("Anna Berg, Carl Dorn, Alex Brink, Kim Lind"));
    }
    if (random.nextInt(10) == 0) {
      given.add(new SessionEvent.ApprenticeWorks("JD"));
    }
    return given;
  }

  /** A clock that is set after the end is no longer watched: the test does not set it then. */
  private static long missedJump(Session session, Intent intent) {
    boolean ended = session.phase() == Phase.ENDED;
    return ended && intent instanceof Intent.ClockJumped jump ? jump.millis() : 0;
  }

  /** The program dies and comes back: the state from the log is the state before. */
  private static Session crashAndReplay(
      Walk walk, List<SessionEvent> log, Session before, Promises promises, int seconds) {
    Session replayed = Session.start(walk).after(log);
    assertEquals(before, replayed);
    Decision up = Decider.takeUp(replayed, "test", Duration.ofSeconds(seconds));
    promises.restarted(up);
    requirePossible(replayed, up);
    log.addAll(up.events());
    return replayed.after(up.events());
  }

  /** What the program writes, it also takes when it reads its log. */
  static void requirePossible(Session before, Decision decision) {
    Session session = before;
    for (SessionEvent event : decision.events()) {
      assertEquals(Optional.empty(), Order.expected(session, event), () -> event.toString());
      session = session.after(event);
    }
  }

  private static Set<String> expected() {
    Set<String> cells = new TreeSet<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : IntentKind.values()) {
        for (Outcome outcome : Table.rule(phase, kind).outcomes()) {
          cells.add(cell(phase, kind, outcome));
        }
      }
    }
    return cells;
  }

  private static String cell(Phase phase, IntentKind kind, Outcome outcome) {
    return phase + " " + kind + " " + outcome;
  }
}
