package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

@DisplayName("While something waits to be read back")
class WayOutTest {
  private static final int RUNS = 1_500;
  private static final int INTENTS = 120;
  private static final String WAY_OUT = "that was wrong";

  private final Set<String> without = new TreeSet<>();
  private final Set<String> waited = new TreeSet<>();
  private final Set<String> refused = new TreeSet<>();

  @Test
  @DisplayName("every refusal names the way out, whatever waits and whatever is said")
  void everyRefusal() {
    SplittableRandom random = new SplittableRandom(20_261_130);
    for (int run = 0; run < RUNS; run++) {
      work(random.split());
    }
    assertEquals(Set.of(), without, "refusals without a way out");
    assertEquals(pendings(), waited, "what waited");
    Set<String> missed = cells();
    missed.removeAll(refused);
    assertEquals(Set.of(), missed, "cells that always refuse and never did");
  }

  private void work(SplittableRandom random) {
    RandomTechnician technician = new RandomTechnician(random);
    Session session = Session.start(SampleProcedures.random(random));
    for (int i = 0; i < INTENTS; i++) {
      Moment now =
          new Moment(
              OffsetDateTime.parse("2026-01-05T08:00:00Z").plusSeconds(10L * i), 10_000L * i);
      if (session.phase().isReadBack()) {
        waited.add(session.talk().pending().orElseThrow().getClass().getSimpleName());
        for (IntentKind kind : IntentKind.values()) {
          look(session, technician.of(kind), now);
        }
      }
      session = session.after(Decider.decide(session, technician.next(session), now).events());
    }
  }

  private void look(Session session, Intent intent, Moment now) {
    Decision decision = Decider.decide(session, intent, now);
    Session after = session.after(decision.events());
    if (decision.outcome() == Outcome.REFUSED && after.phase().isReadBack()) {
      refused.add(session.phase() + " " + intent.kind());
      if (!decision.reply().text().contains(WAY_OUT)) {
        without.add(session.phase() + " " + intent.kind() + ": " + decision.reply().text());
      }
    }
  }

  /** Everything that can wait, but for a note that is being spoken. */
  private static Set<String> pendings() {
    return Stream.concat(
            Arrays.stream(Pending.class.getPermittedSubclasses()),
            Arrays.stream(Pending.OfStage.class.getPermittedSubclasses()))
        .filter(Class::isRecord)
        .filter(type -> type != Pending.Report.class)
        .map(Class::getSimpleName)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The cells in which nothing but a refusal is possible; a denial drops what waits. */
  private static Set<String> cells() {
    Set<String> cells = new TreeSet<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : IntentKind.values()) {
        boolean refuses = Table.rule(phase, kind).outcomes().equals(Set.of(Outcome.REFUSED));
        if (phase.isReadBack() && refuses && kind != IntentKind.DENIED) {
          cells.add(phase + " " + kind);
        }
      }
    }
    return cells;
  }
}
