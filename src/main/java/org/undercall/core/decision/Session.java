package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/**
 * The whole state of a session. It never changes: {@link #after} gives the state after an event,
 * and replaying the events of a log gives back the very same state.
 *
 * @param walk the procedure, laid out
 * @param progress how far the walk has come
 * @param loads how the suspension is loaded
 * @param car what is known of the car and its wheels
 * @param bench what is known of the torque wrenches
 * @param found what was noted
 * @param account what was told of the job, and who did what
 * @param talk where the conversation stands
 * @param timers the timers that run, and whose time is over
 * @param stopwatch how long it took so far
 */
public record Session(
    Walk walk,
    Progress progress,
    Loads loads,
    Car car,
    Bench bench,
    Found found,
    Account account,
    Talk talk,
    Timers timers,
    Stopwatch stopwatch) {

  /** Reasons that a confirmed load does not do away with. */
  private static final Set<PutOffReason> NOT_FOR_LOAD =
      Set.of(PutOffReason.WAITING_FOR_PARTS, PutOffReason.TOOL_MISSING, PutOffReason.NO_WITNESS);

  private static final int MOST_DOUBLINGS = 10;

  /** The silence after which a question is asked once more. */
  private static final long QUESTION_MILLIS = 15_000;

  /** What a spoken word takes, about: 147 words a minute. */
  private static final long WORD_MILLIS = 400;

  /** A session before its first event. */
  public static Session start(Walk walk) {
    return new Session(
        walk,
        Progress.start(walk.places().size()),
        Loads.NONE,
        Car.NOT_KNOWN,
        Bench.NOTHING_SAID,
        Found.NOTHING,
        Account.NOTHING_TOLD,
        Talk.START,
        Timers.NONE,
        Stopwatch.START);
  }

  /** The session after an event. */
  public Session after(SessionEvent event) {
    return Applied.to(this, event);
  }

  /** The session after several events. */
  public Session after(List<SessionEvent> events) {
    Session session = this;
    for (SessionEvent event : events) {
      session = session.after(event);
    }
    return session;
  }

  /** The session after a recorded decision, with the time it took. */
  public Session after(Recorded decision) {
    Stopwatch next = stopwatch.until(this, decision);
    Session s = after(decision.events());
    Talk said = s.talk.with(s.talk.habit().after(decision.said()));
    return new Session(
        walk, s.progress, s.loads, s.car, s.bench, s.found, s.account, said, s.timers, next);
  }

  /** What the session waits for. */
  public Phase phase() {
    return Phase.of(this);
  }

  /** The step at hand. */
  public Walk.Place place() {
    return walk.places().get(progress.at());
  }

  /** The name of the step at hand. */
  StepRef ref() {
    return place().ref();
  }

  /** The side of the step at hand. */
  Side side() {
    return ref().side();
  }

  /** How far the step at hand has come. */
  StepState state() {
    return progress.states().get(progress.at());
  }

  /** How far the tightening at hand has come. */
  Tightening tightening() {
    return state().tightening();
  }

  /**
   * The stages of the fastener at hand; its marking must be known where one is needed. Of an angle
   * that was turned in part the rest stands there.
   */
  List<Stage> stages() {
    Fastener fastener = ((Step.Fasten) place().step()).fastener();
    List<Stage> stages = new ArrayList<>(specified(fastener).orElseThrow());
    int at = tightening().stagesClosed();
    tightening()
        .turned()
        .filter(t -> at < stages.size() && stages.get(at) instanceof Stage.AngleStage)
        .ifPresent(t -> stages.set(at, ((Stage.AngleStage) stages.get(at)).after(t)));
    return stages;
  }

  /** Whether the next stage of the fastener at hand is an angle on a torque that was reached. */
  boolean atAngle() {
    return place().step() instanceof Step.Fasten fasten
        && tightening().stagesClosed() > 0
        && fasten
            .fastener()
            .stagesFor(tightening().marking())
            .filter(all -> tightening().stagesClosed() < all.size())
            .filter(all -> all.get(tightening().stagesClosed()) instanceof Stage.AngleStage)
            .isPresent();
  }

  /** The stage at hand as it is specified, whatever was turned of it before. */
  Stage specified() {
    Fastener fastener = ((Step.Fasten) place().step()).fastener();
    return specified(fastener).orElseThrow().get(tightening().stagesClosed());
  }

  /**
   * The stages of the specification of the fastener at hand, with what the nut needs to run down
   * where it is added; empty while its head marking is not known.
   */
  public Optional<List<Stage>> specified(Fastener fastener) {
    Optional<List<Stage>> stages = fastener.stagesFor(tightening().marking());
    Optional<BigDecimal> more = addedRunDown();
    return more.isEmpty()
        ? stages
        : stages.map(
            all ->
                all.stream()
                    .map(s -> s instanceof Stage.TorqueStage torque ? torque.plus(more.get()) : s)
                    .toList());
  }

  /** The run-down torque of the fastener at hand, if it is added to its torques. */
  Optional<BigDecimal> addedRunDown() {
    boolean added =
        place().step() instanceof Step.Fasten fasten
            && fasten
                .fastener()
                .manner()
                .runDown()
                .equals(Optional.of(Fastener.Manner.RunDown.ADDED));
    return added ? state().runDown() : Optional.empty();
  }

  /** Whether an angle of the fastener at hand may have been turned since it was loose. */
  boolean angleBegun() {
    boolean none = tightening().turned().filter(t -> t.signum() == 0).isPresent();
    boolean some = !tightening().pass().closed().isEmpty();
    return atAngle() && (tightening().interrupted() || some || !none);
  }

  /** Whether the fastener at hand was tightened so far that it does not count as new any more. */
  boolean isUsedUp() {
    boolean wears =
        place().step() instanceof Step.Fasten fasten && fasten.fastener().part().wearsByTorque();
    return angleBegun() || (wears && tightening().tight());
  }

  /** Whether what was confirmed about the load was confirmed too long ago. */
  boolean isLoadOld(Moment now) {
    return !loads.confirmed().isEmpty()
        && stopwatch.sinceConfirmed(now).compareTo(walk.procedure().loadHolds()) > 0;
  }

  /** The stage at hand; of an angle that was turned in part, its rest. */
  public Stage stage() {
    return stages().get(tightening().stagesClosed());
  }

  /** The load condition a place needs before it can be closed. */
  static LoadCondition needs(Walk.Place place) {
    if (place.step() instanceof Step.Fasten fasten) {
      return fasten.fastener().needs();
    }
    return place.step() instanceof Step.Load load ? load.condition() : LoadCondition.ANY;
  }

  /** Whether the step at hand is open and its load condition is not confirmed. */
  boolean lacksLoad() {
    return !state().closed() && !loads.holds(side(), needs(place()));
  }

  /** The positions of the fasteners that wait for a condition that is confirmed on their side. */
  List<Integer> waiting() {
    return java.util.stream.IntStream.range(0, walk.places().size())
        .filter(this::waits)
        .boxed()
        .toList();
  }

  private boolean waits(int index) {
    Walk.Place place = walk.places().get(index);
    StepState.Status status = progress.states().get(index).status();
    boolean putAside = status == StepState.Status.PUT_OFF || status == StepState.Status.SNUG;
    boolean lacksParts =
        progress.states().get(index).reason().filter(NOT_FOR_LOAD::contains).isPresent();
    LoadCondition needed = needs(place);
    return putAside
        && !lacksParts
        && needed != LoadCondition.ANY
        && loads.holds(place.ref().side(), needed);
  }

  Session with(Progress next) {
    return new Session(walk, next, loads, car, bench, found, account, talk, timers, stopwatch);
  }

  Session with(Loads next) {
    return new Session(walk, progress, next, car, bench, found, account, talk, timers, stopwatch);
  }

  Session with(Car next) {
    return new Session(walk, progress, loads, next, bench, found, account, talk, timers, stopwatch);
  }

  Session with(Bench next) {
    return new Session(walk, progress, loads, car, next, found, account, talk, timers, stopwatch);
  }

  Session with(Found next) {
    return new Session(walk, progress, loads, car, bench, next, account, talk, timers, stopwatch);
  }

  Session with(Account next) {
    return new Session(walk, progress, loads, car, bench, found, next, talk, timers, stopwatch);
  }

  Session with(Talk next) {
    return new Session(walk, progress, loads, car, bench, found, account, next, timers, stopwatch);
  }

  Session with(Timers next) {
    return new Session(walk, progress, loads, car, bench, found, account, talk, next, stopwatch);
  }

  /** How many steps are not closed. */
  public int openSteps() {
    return progress.open();
  }

  /** When the next timer runs out or warns of its end, by the wall clock; empty if none runs. */
  public Optional<Instant> nextTimer() {
    return timers.next();
  }

  /**
   * When to remind the technician that something is waited for, by the clock that is never set: of
   * a question first 15 s after it was said.
   *
   * @param afterMillis the quiet before the first reminder; before each further one it is doubled
   * @return empty while nothing is waited for: on hold, after the end, while the step's time runs
   */
  public Optional<Long> nextReminder(long afterMillis) {
    Phase phase = phase();
    boolean rests =
        phase == Phase.ON_HOLD
            || phase == Phase.SHIFT_CHANGE
            || phase == Phase.ENDED
            || (phase == Phase.WAITING && timers.runs(ref()));
    if (rests) {
      return Optional.empty();
    }
    int given = stopwatch.reminders();
    if (phase.asks() && given == 0) {
      return Optional.of(stopwatch.quiet() + QUESTION_MILLIS + spokenMillis());
    }
    int doubled = Math.min(phase.asks() ? given - 1 : given, MOST_DOUBLINGS);
    return Optional.of(stopwatch.quiet() + (afterMillis << doubled));
  }

  /** About how long the question takes to be said. */
  private long spokenMillis() {
    String question = Prompt.of(this).in(talk.habit()).text();
    return question.split(" ", -1).length * WORD_MILLIS;
  }

  /** How long the work and the step at hand took until now. */
  public Elapsed elapsed(Moment now) {
    return stopwatch.elapsed(this, now);
  }

  /** Since when nothing was heard or said, by the clock that is never set. */
  public long quietSince() {
    return stopwatch.quiet();
  }

  /** The position of the step that should come next, from 0; empty if none is open. */
  public Optional<Integer> next() {
    return Route.next(this);
  }
}
