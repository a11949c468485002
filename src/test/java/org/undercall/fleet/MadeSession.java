package org.undercall.fleet;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.RandomTechnician;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;

/** A session by an invented technician who mostly does what is asked, decided by the real rules. */
final class MadeSession {
  private static final List<String> MUTTERED =
      List.of("hand me the", "where is it", "torque reads", "six tea", "that is", "step come");
  private static final int LONGEST = 400;

  private final SplittableRandom random;
  private final Walk walk;
  private final OffsetDateTime start;
  private final int diligence;
  private final double pace;
  private final List<Recorded> log = new ArrayList<>();
  private Session session;
  private long wall;
  private long mono;

  MadeSession(LoadedProcedure loaded, OffsetDateTime start, SplittableRandom random) {
    this.random = random;
    this.walk = Walk.of(loaded.procedure());
    this.start = start;
    this.diligence = 85 + random.nextInt(14);
    this.pace = 0.6 + random.nextDouble();
    this.session = Session.start(walk);
    Procedure.About about = loaded.procedure().about();
    record(
        Decider.begin(
            session,
            new SessionEvent.SessionStarted(
                about.title(), about.revision(), loaded.sha256(), "test")),
        Optional.empty());
  }

  Walk walk() {
    return walk;
  }

  /** Every decision from the first to the end, or to where the work was left. */
  List<Recorded> work() {
    RandomTechnician technician = new RandomTechnician(random);
    int length = random.nextInt(20) == 0 ? random.nextInt(60) : LONGEST;
    for (int i = 0; i < length && session.phase() != Phase.ENDED; i++) {
      pass((long) (1000 + pace * 9000 * -Math.log(1 - random.nextDouble())));
      boolean sensible = random.nextInt(100) < diligence;
      Intent intent = sensible ? technician.sensible(session) : technician.next(session);
      record(Decider.decide(session, intent, now()), heard(intent));
      if (random.nextInt(300) == 0) {
        restart();
      }
    }
    return log;
  }

  /**
   * The program is started again; its steady clock begins anew, the wall clock may have been set.
   */
  private void restart() {
    long away = random.nextInt(-60_000, 600_000);
    wall += away;
    mono = random.nextBoolean() ? 0 : mono + random.nextInt(1000);
    record(Decider.takeUp(session, "test", Duration.ofMillis(away)), Optional.empty());
  }

  private void pass(long millis) {
    wall += millis;
    mono += millis;
  }

  private Moment now() {
    return new Moment(start.plus(Duration.ofMillis(wall)), mono);
  }

  private Optional<Recorded.Heard> heard(Intent intent) {
    String name = intent.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    String words = name.replace('-', ' ');
    if (intent instanceof Intent.OfNumber number) {
      words += " " + number.number().value().toPlainString();
    } else if (intent instanceof Intent.Unclear) {
      words = MUTTERED.get(random.nextInt(MUTTERED.size()));
    }
    double confidence = 0.7 + random.nextInt(30) / 100.0;
    return Optional.of(new Recorded.Heard(words, name, confidence, "spoken"));
  }

  private void record(Decision decision, Optional<Recorded.Heard> heard) {
    Recorded recorded =
        new Recorded(log.size() + 1L, now(), heard, decision.events(), decision.reply().text());
    log.add(recorded);
    session = session.after(recorded);
  }
}
