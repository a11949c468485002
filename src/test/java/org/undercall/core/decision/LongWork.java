package org.undercall.core.decision;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;

/** A session of many steps with titles of any length, decided by the real rules. */
public final class LongWork {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final List<String> WORDS =
      List.of("Tighten", "the", "rear", "bush", "bolt", "at", "bracket", "left", "of", "beam");
  private static final int LONGEST_PHASE = 9;

  private final SplittableRandom random;
  private final Walk walk;
  private final List<Recorded> log = new ArrayList<>();
  private Session session;
  private long seconds;

  /** Plans a procedure that is walked in just so many steps. */
  public LongWork(int steps, SplittableRandom random) {
    this.random = random;
    List<WorkPhase> phases = new ArrayList<>();
    int left = steps;
    while (left > 0) {
      Each each = left >= 4 && random.nextInt(3) > 0 ? Each.SIDE : Each.CAR;
      int most = Math.min(LONGEST_PHASE, left / each.sides().size());
      int count = 1 + random.nextInt(most);
      List<Step> work = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        work.add(titled(SampleProcedures.step("s" + left + "-" + i, random)));
      }
      phases.add(new WorkPhase("phase " + phases.size(), each, work));
      left -= count * each.sides().size();
    }
    this.walk = Walk.of(SampleProcedures.procedure(phases.toArray(WorkPhase[]::new)));
    this.session = Session.start(walk);
  }

  /** The procedure, walked. */
  public Walk walk() {
    return walk;
  }

  /** Every decision, as far as somebody came who mostly does what is asked. */
  public List<Recorded> work() {
    apply(
        Decider.begin(session, new SessionEvent.SessionStarted("t", "1", "00", "test")),
        Optional.empty());
    RandomTechnician technician = new RandomTechnician(random);
    int length = 10 + random.nextInt(12 * walk.places().size());
    for (int i = 0; i < length && session.phase() != Phase.ENDED; i++) {
      seconds += random.nextInt(40);
      boolean sensible = random.nextInt(100) < 90;
      Intent intent = sensible ? technician.sensible(session) : technician.next(session);
      String name = intent.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      apply(
          Decider.decide(session, intent, now()),
          Optional.of(new Recorded.Heard(name, name, 0.9, "spoken")));
    }
    return List.copyOf(log);
  }

  private Step titled(Step step) {
    StringBuilder title = new StringBuilder(step.head().id());
    int words = 1 + random.nextInt(12);
    for (int i = 0; i < words; i++) {
      title.append(' ').append(WORDS.get(random.nextInt(WORDS.size())));
    }
    return SampleProcedures.with(
        step,
        new Step.Head(step.head().id(), title.toString(), List.of(), step.head().changesLoad()));
  }

  private Moment now() {
    return new Moment(START.plusSeconds(seconds), seconds * 1000);
  }

  private void apply(Decision decision, Optional<Recorded.Heard> heard) {
    Recorded recorded =
        new Recorded(log.size() + 1L, now(), heard, decision.events(), decision.reply().text());
    log.add(recorded);
    session = session.after(recorded);
  }
}
