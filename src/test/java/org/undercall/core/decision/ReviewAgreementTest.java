package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.StepRef;

@DisplayName("The review of a session")
class ReviewAgreementTest {
  private static final int RUNS = Integer.getInteger("undercall.reviews", 1_000);
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");

  private int complete;
  private int endedOpen;
  private int decisions;

  /** One session on a random procedure, with everything that was recorded. */
  private static final class Run {
    private final SplittableRandom random;
    private final Walk walk;
    private final Promises promises;
    private final List<Recorded> log = new ArrayList<>();
    private Session session;
    private long seconds;

    Run(SplittableRandom random) {
      this.random = random;
      this.walk = SampleProcedures.random(random);
      this.promises = new Promises(walk);
      this.session = Session.start(walk);
      apply(Decider.begin(session, new SessionEvent.SessionStarted("t", "1", "00", "test")));
    }

    void work() {
      RandomTechnician technician = new RandomTechnician(random);
      int length = 20 + random.nextInt(500);
      for (int i = 0; i < length && session.phase() != Phase.ENDED; i++) {
        seconds += random.nextInt(20);
        Intent intent = technician.next(session);
        Decision decision = Decider.decide(session, intent, now());
        promises.watch(intent, decision);
        apply(decision);
        if (random.nextInt(60) == 0) {
          long away = random.nextInt(240);
          seconds += away;
          Decision up = Decider.takeUp(session, "test", Duration.ofSeconds(away));
          promises.restarted(up);
          apply(up);
        }
      }
    }

    private Moment now() {
      return new Moment(START.plusSeconds(seconds), seconds * 1000);
    }

    private void apply(Decision decision) {
      Recorded recorded =
          new Recorded(
              log.size() + 1L, now(), Optional.empty(), decision.events(), decision.reply().text());
      log.add(recorded);
      session = session.after(recorded);
    }

    List<StepRef> open() {
      return IntStream.range(0, walk.places().size())
          .filter(i -> !session.progress().states().get(i).closed())
          .mapToObj(i -> walk.places().get(i).ref())
          .toList();
    }

    boolean saidComplete() {
      return session.phase() == Phase.ENDED
          && log.get(log.size() - 1).events().contains(new SessionEvent.SessionEnded(true, 0));
    }
  }

  @Test
  @DisplayName("agrees with the session it reviews, however the work went")
  void agrees() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < RUNS; i++) {
      Run run = new Run(random.split());
      run.work();
      compare(run, "run " + i + " of seed " + SEED);
    }
    System.out.printf(
        "%,d sessions reviewed, %,d decisions: %,d complete, %,d ended with steps open%n",
        RUNS, decisions, complete, endedOpen);
    assertTrue(complete > RUNS / 50, "too few were completed: " + complete);
    assertTrue(endedOpen > RUNS / 50, "too few were ended with steps open: " + endedOpen);
  }

  private void compare(Run run, String name) {
    Review review = Review.of(run.walk, run.log);
    decisions += run.log.size();
    boolean ended = run.session.phase() == Phase.ENDED;
    assertEquals(run.open(), review.open().stream().map(s -> s.place().ref()).toList(), name);
    // a torque beside its band is called after the step is closed: the review alone doubts it
    boolean beside = !review.doubtful().isEmpty();
    review
        .doubtful()
        .forEach(
            step ->
                assertEquals(Set.of(StepReview.Doubt.FINAL_TORQUE_OUTSIDE), step.doubts(), name));
    assertEquals(ended, review.ending().ended(), name);
    assertEquals(run.saidComplete() && !beside, review.complete(), name);
    Spent all = run.session.stopwatch().spent().values().stream().reduce(Spent.NONE, Spent::plus);
    assertEquals(review.totals().working().toMillis(), all.working(), name);
    assertEquals(review.totals().held().toMillis(), all.held(), name);
    review
        .steps()
        .forEach(
            step ->
                assertEquals(
                    step.times().working().toMillis(),
                    run.session
                        .stopwatch()
                        .spent()
                        .getOrDefault(step.place().ref(), Spent.NONE)
                        .working(),
                    name + " " + step.place().ref()));
    complete += run.saidComplete() ? 1 : 0;
    endedOpen += ended && !run.saidComplete() ? 1 : 0;
  }
}
