package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Voice;

@DisplayName("A whole job in which a clock changes")
class ClockJobTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final int PACE_MILLIS = 5_000;
  private static final long HOUR = 3_600_000;
  private static final int EVERY = 4;

  /** Summer time ends in Berlin two minutes after the job begins. */
  private static final Instant START = Instant.parse("2026-10-25T00:58:00Z");

  private Procedure procedure;
  private Job usual;

  /** What happens to the clocks, once. */
  enum Change {
    NOTHING(0, 0, BERLIN),
    SET_BACK(-2 * HOUR, 0, BERLIN),
    OTHER_ZONE(0, 0, ZoneId.of("America/Anchorage")),
    SET_FORWARD(3 * HOUR, 0, BERLIN),
    ASLEEP_STEADY_CLOCK_STANDS(HOUR, 0, BERLIN),
    ASLEEP_STEADY_CLOCK_GOES_ON(HOUR, HOUR, BERLIN);

    private final long wall;
    private final long steady;
    private final ZoneId zone;

    Change(long wall, long steady, ZoneId zone) {
      this.wall = wall;
      this.steady = steady;
      this.zone = zone;
    }

    private long jump() {
      return wall - steady;
    }
  }

  /** One job, with its own clocks; the change comes before a phrase or while the timer runs. */
  private final class Job implements Ear, Voice {
    private final List<Recorded> log = new ArrayList<>();
    private final TypedTechnician technician = new TypedTechnician();
    private final Change change;
    private final int before;
    private int phrases;
    private long wall;
    private long steady;
    private ZoneId zone = BERLIN;

    Job(Change change, int before) throws Fault {
      this.change = change;
      this.before = before;
      SessionEvent.SessionStarted started =
          new SessionEvent.SessionStarted("title", "1", "00", "test");
      Session fresh = Session.start(Walk.of(procedure));
      SessionLoop.Ports ports = new SessionLoop.Ports(this, this, log::add, this::now);
      Session left = new SessionLoop(fresh, ports, 0).run(Decider.begin(fresh, started));
      assertEquals(Phase.ENDED, left.phase());
      assertEquals(OpenSession.replay(procedure, log), left);
    }

    private Moment now() {
      return new Moment(START.plusMillis(wall).atZone(zone).toOffsetDateTime(), steady);
    }

    private void pass(long millis) {
      wall += millis;
      steady += millis;
    }

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
      phrases++;
      if (phrases == before) {
        wall += change.wall;
        steady += change.steady;
        zone = change.zone;
      }
      try {
        Session session = OpenSession.replay(procedure, log);
        if (session.nextTimer().isPresent()) {
          pass(phrases == before ? 1 : patienceMillis);
          return Optional.empty();
        }
        pass(PACE_MILLIS);
        return Optional.of(Heard.typed(technician.says(session)));
      } catch (Fault e) {
        throw new IllegalStateException(e);
      }
    }

    @Override
    public void say(String words) {}

    @Override
    public void close() {}

    private List<Long> jumps() {
      return events(SessionEvent.ClockJumped.class).stream()
          .map(d -> ((SessionEvent.ClockJumped) d.events().get(0)).millis())
          .toList();
    }

    private List<Recorded> events(Class<? extends SessionEvent> type) {
      return log.stream().filter(d -> d.events().stream().anyMatch(type::isInstance)).toList();
    }

    /** What was said and when by the steady clock, the news of a clock apart. */
    private List<String> course() {
      return log.stream()
          .filter(d -> !(d.events().get(0) instanceof SessionEvent.ClockJumped))
          .map(d -> d.at().monotonicMillis() + " " + d.said())
          .toList();
    }

    private Review review() {
      return Review.of(Walk.of(procedure), log);
    }

    private long timed() {
      return events(SessionEvent.TimerEnded.class).get(0).at().monotonicMillis()
          - events(SessionEvent.TimerStarted.class).get(0).at().monotonicMillis();
    }
  }

  @BeforeEach
  void usual() throws Exception {
    procedure = ProcedureFile.load(DEMO).procedure();
    usual = new Job(Change.NOTHING, -1);
    assertTrue(usual.phrases > 35, usual.phrases + " phrases");
    assertEquals(List.of(), usual.jumps());
    long offsets = usual.log.stream().map(d -> d.at().wall().getOffset()).distinct().count();
    assertEquals(2, offsets, "summer time ends in the job");
  }

  private List<Job> jobs(Change change) throws Fault {
    List<Job> jobs = new ArrayList<>();
    for (int before = 2; before < usual.phrases; before += EVERY) {
      jobs.add(new Job(change, before));
    }
    return jobs;
  }

  @ParameterizedTest
  @EnumSource(names = {"SET_BACK", "OTHER_ZONE"})
  @DisplayName("goes just as without it, whenever it is set back or its zone is changed")
  void alike(Change change) throws Exception {
    for (Job job : jobs(change)) {
      assertEquals(usual.course(), job.course(), change + " before phrase " + job.before);
      Review review = job.review();
      assertEquals(usual.review().totals(), review.totals());
      assertTrue(review.complete());
    }
  }

  @ParameterizedTest
  @EnumSource
  @DisplayName("shows the jump once in the log and in the review, and keeps order and durations")
  void shown(Change change) throws Exception {
    List<Long> expected = change.jump() == 0 ? List.of() : List.of(change.jump());
    for (Job job : jobs(change)) {
      assertEquals(expected, job.jumps(), change + " before phrase " + job.before);
      Review review = job.review();
      assertTrue(review.complete());
      assertEquals(
          expected.size(),
          review.remarks().timers().stream()
              .filter(t -> t.event() instanceof SessionEvent.ClockJumped)
              .count());
      assertEquals(Duration.ofMillis(job.steady), review.totals().elapsed().length());
      long last = 0;
      for (Recorded decision : job.log) {
        assertTrue(decision.at().monotonicMillis() >= last);
        last = decision.at().monotonicMillis();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  @DisplayName("ends a running timer by the time that truly passed")
  void timer(Change change) throws Exception {
    int waiting = usual.log.indexOf(usual.events(SessionEvent.TimerEnded.class).get(0));
    Job job = new Job(change, waiting);
    assertEquals(10_000, usual.timed());
    long expected = change.steady > 0 ? change.steady + 1 : 10_000;
    assertEquals(expected, job.timed(), change + "");
  }

  @Test
  @DisplayName("asks for the load again after an hour asleep, by either steady clock")
  void load() throws Exception {
    for (Change change :
        List.of(Change.ASLEEP_STEADY_CLOCK_STANDS, Change.ASLEEP_STEADY_CLOCK_GOES_ON)) {
      long asked =
          jobs(change).stream()
              .filter(job -> !job.events(SessionEvent.LoadChanged.class).isEmpty())
              .filter(
                  job ->
                      job.events(SessionEvent.LoadConfirmed.class).size()
                          > usual.events(SessionEvent.LoadConfirmed.class).size())
              .count();
      assertTrue(asked > 0, change + ": never while a load was confirmed");
    }
  }
}
