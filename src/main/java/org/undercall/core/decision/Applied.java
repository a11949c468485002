package org.undercall.core.decision;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.event.SessionEvent.*;
import org.undercall.core.event.SessionEvent.FinalTorqueCalled;
import org.undercall.core.event.SessionEvent.FinalTorqueNoted;
import org.undercall.core.event.SessionEvent.JobCalled;
import org.undercall.core.event.SessionEvent.JobNoted;
import org.undercall.core.event.SessionEvent.OverdueCalled;
import org.undercall.core.event.SessionEvent.OverdueNoted;
import org.undercall.core.event.SessionEvent.RunDownCalled;
import org.undercall.core.event.SessionEvent.RunDownNoted;
import org.undercall.core.event.SessionEvent.RunInByHand;
import org.undercall.core.event.SessionEvent.WrenchNamed;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Habit;
import org.undercall.core.reply.Lesson;
import org.undercall.core.term.JobField;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Remedy;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.Vin;

/** What each event changes in the session: one line an event. */
final class Applied {
  private static final Map<EventKind, BiFunction<Session, SessionEvent, Session>> CHANGES =
      new HashMap<>();

  static {
    on(SessionResumed.class, (s, e) -> s.talk().mode() == Talk.Mode.ENDED ? working(s) : s);
    on(
        SessionStarted.class,
        (s, e) -> s.with(s.account().by(e.technician().orElse(s.account().technician()))));
    on(VisitBegun.class, (s, e) -> s.with(s.account().visits(e)));
    on(CautionsUnderstood.class, (s, e) -> working(s));
    on(StepEntered.class, (s, e) -> entered(s, e.step()));
    on(StepClosed.class, (s, e) -> closed(s, e.step()));
    on(WorkDone.class, (s, e) -> change(s, e.step(), t -> t.withWorkDone(true)));
    on(
        CheckAnswered.class,
        (s, e) ->
            change(s, e.step(), t -> t.withWorkDone(false))
                .with(s.account().checked(e.step(), e.passed())));
    on(
        ReadingCalled.class,
        (s, e) -> await(s, new Pending.Reading(e.step(), e.value(), e.closes())));
    on(
        ValueCalled.class,
        (s, e) -> tighten(settled(s), e.step(), t -> t.withCalled(some(e.value()))));
    on(ValueDropped.class, (s, e) -> tighten(s, e.step(), t -> t.withCalled(Optional.empty())));
    on(StageClosed.class, (s, e) -> stageClosed(s, e));
    on(
        PositionsClosed.class,
        (s, e) ->
            change(
                settled(s),
                e.step(),
                t ->
                    t.with(t.tightening().withClosed(e.positions(), s.atAngle()))
                        .uses(t.uses().tightened())
                        .watch(t.watch().worked(s.account().technician()))));
    on(PositionsTakenBack.class, (s, e) -> opened(s, e));
    on(PositionsCalled.class, (s, e) -> await(s, new Pending.OfSet(e.step(), e.positions())));
    on(TighteningInterrupted.class, (s, e) -> interrupted(s, e.step()));
    on(TurnCalled.class, (s, e) -> await(s, new Pending.Turned(e.step(), e.degrees())));
    on(TurnNoted.class, (s, e) -> turned(settled(s), e));
    on(Loosened.class, (s, e) -> loosened(s, e.step()));
    on(
        StageTakenBack.class,
        (s, e) ->
            forgetClosing(
                change(
                    s,
                    e.step(),
                    t ->
                        t.with(t.tightening().withStageTakenBack(e.stage()))
                            .with(StepState.Status.OPEN)
                            .watch(t.watch().open())),
                e.step()));
    on(ClosingLapsed.class, (s, e) -> lapsed(s, e.step()));
    on(ClosingDoubted.class, (s, e) -> await(s, doubted(s, e)));
    on(ClosingsHold.class, (s, e) -> settled(s));
    on(OutOfOrderCalled.class, (s, e) -> await(s, new Pending.OutOfOrder(e.step(), e.reason())));
    on(
        OutOfOrderNoted.class,
        (s, e) -> change(settled(s), e.step(), t -> t.outOfOrder(e.reason())));
    on(SayingTakenBack.class, (s, e) -> sayingTakenBack(s, e));
    on(
        TroubleCalled.class,
        (s, e) -> await(s, new Pending.Wrong(e.step(), e.trouble(), e.position())));
    on(
        TroubleNoted.class,
        (s, e) ->
            change(
                settled(s),
                e.step(),
                t -> t.wrong(some(new StepState.Wrong(e.trouble(), e.position())))));
    on(TroubleSettled.class, (s, e) -> troubleSettled(s, e));
    on(JobCalled.class, (s, e) -> await(s, new Pending.OfJob(e.field(), e.text())));
    on(JobNoted.class, (s, e) -> jobNoted(settled(s), e));
    on(RunInByHand.class, (s, e) -> change(s, e.step(), t -> t.byHand(true)));
    on(RunDownCalled.class, (s, e) -> await(s, new Pending.RunDown(e.step(), e.value())));
    on(RunDownNoted.class, (s, e) -> change(settled(s), e.step(), t -> t.runDown(some(e.value()))));
    on(FinalTorqueCalled.class, (s, e) -> await(s, new Pending.FinalTorque(e.step(), e.value())));
    on(FinalTorqueNoted.class, (s, e) -> settled(s));
    on(WrenchNamed.class, (s, e) -> s.with(s.bench().using(e.wrench())));
    on(
        OverdueCalled.class,
        (s, e) -> await(s, new Pending.Overdue(e.step(), e.wrench(), e.reason())));
    on(OverdueNoted.class, (s, e) -> settled(s).with(s.bench().excusing(e.wrench())));
    on(StagesVoided.class, (s, e) -> tighten(s, e.step(), t -> t.withStagesClosed(0)));
    on(MeasureCalled.class, (s, e) -> await(s, new Pending.Value(e.step(), e.value())));
    on(Measured.class, (s, e) -> settled(s));
    on(
        RideHeightNoted.class,
        (s, e) -> s.with(s.loads().withRideHeight(e.side(), some(e.value()))));
    on(MarkingCalled.class, (s, e) -> await(s, new Pending.Marking(e.step(), e.marking())));
    on(
        MarkingNoted.class,
        (s, e) -> tighten(settled(s), e.step(), t -> t.withMarking(e.marking())));
    on(NewHardwareFitted.class, (s, e) -> fitted(s, e.step(), 0));
    on(ReuseCalled.class, (s, e) -> await(s, new Pending.Reuse(e.step(), e.by(), e.value())));
    on(ReuseNoted.class, (s, e) -> fitted(settled(s), e.step(), e.value().intValue()));
    on(LoadCalled.class, (s, e) -> await(s, load(e)));
    on(LoadConfirmed.class, (s, e) -> confirmed(s, e));
    on(
        LoadChanged.class,
        (s, e) -> s.with(s.loads().withNothingConfirmed()).with(s.car().moved(e.change())));
    on(StepPutOff.class, (s, e) -> change(s, e.step(), t -> t.putOff(e.reason())));
    on(FastenerSnug.class, (s, e) -> change(s, e.step(), t -> t.with(StepState.Status.SNUG)));
    on(StepReopened.class, (s, e) -> reopened(s, e.step()));
    on(ReopenedTight.class, (s, e) -> reopenedTight(s, e.step()));
    on(ClosingTakenBack.class, (s, e) -> takenBack(s, e.step()));
    on(ReadBackDropped.class, (s, e) -> settled(s));
    on(NoteStarted.class, (s, e) -> noting(s, e));
    on(NoteKept.class, (s, e) -> settled(working(s)).with(s.found().and(e.about())));
    on(NoteDropped.class, (s, e) -> settled(working(s)));
    on(WorkHeld.class, (s, e) -> s.with(s.talk().with(Talk.Mode.HELD)));
    on(WorkResumed.class, (s, e) -> working(s.with(s.account().next(Optional.empty()))));
    on(WorkHandedOver.class, (s, e) -> s.with(s.talk().with(Talk.Mode.HANDED)));
    on(WorkTakenOver.class, (s, e) -> takenOver(s, e));
    on(WitnessAsked.class, (s, e) -> witnessAsked(s, e.step()));
    on(WitnessCalled.class, (s, e) -> await(s, new Pending.Seen(e.step(), e.witness())));
    on(
        Witnessed.class,
        (s, e) -> change(settled(s), e.step(), t -> t.watch(t.watch().seen(e.witness()))));
    on(
        ApprenticeWorks.class,
        (s, e) -> s.with(s.account().with(s.account().crew().teaching(e.apprentice()))));
    on(
        WitnessesKnown.class,
        (s, e) ->
            s.with(
                s.account().with(s.account().crew().knowing(List.of(e.names().split(", ", -1))))));
    on(
        TimerStarted.class,
        (s, e) -> s.with(s.timers().started(of(e.step()), e.due(), e.seconds())));
    on(TimerWarned.class, (s, e) -> s.with(s.timers().warned(of(e.step()))));
    on(TimerEnded.class, (s, e) -> s.with(s.timers().ended(of(e.step()))));
    on(TimerCancelled.class, (s, e) -> s.with(s.timers().cancelled(of(e.step()))));
    on(
        NamedTimerStarted.class,
        (s, e) -> s.with(s.timers().started(named(e.name()), e.due(), e.seconds())));
    on(NamedTimerWarned.class, (s, e) -> s.with(s.timers().warned(named(e.name()))));
    on(NamedTimerEnded.class, (s, e) -> s.with(s.timers().ended(named(e.name()))));
    on(NamedTimerCancelled.class, (s, e) -> s.with(s.timers().cancelled(named(e.name()))));
    on(ClockJumped.class, (s, e) -> s.with(s.timers().shifted(e.millis())));
    on(EndCalled.class, (s, e) -> await(s, new Pending.End()));
    on(SessionEnded.class, (s, e) -> s.with(s.talk().settled().with(Talk.Mode.ENDED)));
    nothing(HandedOver.class, Asked.class, NotNow.class);
    nothing(ValueRefused.class, CloseRefused.class, MarkingRefused.class, LoadRefused.class);
    nothing(ReuseRefused.class, FinalTorqueJudged.class);
    nothing(Reminded.class, StepRecalled.class, LogDoubted.class, HeightsApart.class);
    on(NotUnderstood.class, (s, e) -> e.inARow().map(n -> s.with(s.talk().missed(n))).orElse(s));
    on(TalkSet.class, (s, e) -> s.with(s.talk().with(habit(s.talk().habit(), e))));
    on(HearingRemarked.class, (s, e) -> s.with(s.talk().quietUntil(e.quietUntil())));
    for (EventKind kind : EventKind.values()) {
      if (!CHANGES.containsKey(kind)) {
        throw new IllegalStateException("no line says what changes after " + kind);
      }
    }
  }

  private Applied() {}

  private static Habit habit(Habit before, SessionEvent.TalkSet set) {
    Set<Lesson> known = EnumSet.noneOf(Lesson.class);
    set.known().map(Lesson::named).ifPresent(known::addAll);
    if (set.cautionsHeard()) {
      known.add(Lesson.CAUTIONS);
    }
    Habit next = before.at(set.level()).knowing(known);
    return set.cautions()
        .map(Positions::numbers)
        .map(Set::copyOf)
        .map(next::cautioned)
        .orElse(next);
  }

  static Session to(Session session, SessionEvent event) {
    EventKind kind = EventKind.of(event);
    Session changed = CHANGES.get(kind).apply(session, event);
    Session after =
        changed.with(
            changed
                .talk()
                .last(Talk.Last.after(session.talk().last(), event, session.ref()))
                .hintedAfter(event));
    return Talk.SAYS_NOTHING.contains(kind) ? after : after.with(after.talk().missed(0));
  }

  private static <E extends SessionEvent> void on(
      Class<E> type, BiFunction<Session, E, Session> change) {
    EventKind kind = kind(type);
    if (CHANGES.put(kind, (s, e) -> change.apply(s, type.cast(e))) != null) {
      throw new IllegalStateException("two lines say what changes after " + kind);
    }
  }

  @SafeVarargs
  private static void nothing(Class<? extends SessionEvent>... types) {
    for (Class<? extends SessionEvent> type : types) {
      on(type, (s, e) -> s);
    }
  }

  private static EventKind kind(Class<? extends SessionEvent> type) {
    for (EventKind kind : EventKind.values()) {
      if (kind.type() == type) {
        return kind;
      }
    }
    throw new IllegalStateException("not in the dictionary: " + type);
  }

  private static TimerKey of(StepRef step) {
    return new TimerKey.OfStep(step);
  }

  private static TimerKey named(TimerName name) {
    return new TimerKey.Named(name);
  }

  private static <T> Optional<T> some(T value) {
    return Optional.of(value);
  }

  private static Session working(Session session) {
    return session.with(session.talk().with(Talk.Mode.WORKING));
  }

  private static Session settled(Session session) {
    return session.with(session.talk().settled());
  }

  private static Session await(Session session, Pending pending) {
    return session.with(session.talk().awaiting(pending));
  }

  private static Session jobNoted(Session session, JobNoted e) {
    Account account = session.account();
    if (e.field() == JobField.TECHNICIAN) {
      return session.talk().mode() == Talk.Mode.HANDED
          ? session.with(account.next(some(e.text()))).with(session.talk().with(Habit.NEW))
          : session.with(account.by(e.text()));
    }
    return e.field() == JobField.VIN
        ? session.with(account.withVin(Vin.joined(account.vin(), e.text())))
        : session.with(account.by(account.technician()));
  }

  private static Session jobTakenBack(Session session) {
    boolean handed = session.talk().mode() == Talk.Mode.HANDED;
    return session.with(
        handed ? session.account().next(Optional.empty()) : session.account().takenBack());
  }

  /** The next one hears the cautions; who worked until then no longer does. */
  private static Session takenOver(Session session, WorkTakenOver e) {
    return session
        .with(session.account().by(e.technician()))
        .with(session.talk().with(Talk.Mode.BRIEFING));
  }

  private static Session noting(Session session, NoteStarted e) {
    Session noting = session.with(session.talk().with(Talk.Mode.NOTING));
    return e.about()
        .<Pending>map(f -> new Pending.Report(f, e.side().orElse(session.side())))
        .map(report -> await(noting, report))
        .orElse(noting);
  }

  private static Pending load(LoadCalled e) {
    return new Pending.Load(e.side(), e.condition(), e.proof(), e.height());
  }

  private static Session confirmed(Session session, LoadConfirmed e) {
    return settled(
        session
            .with(session.loads().withConfirmed(e.side(), e.condition(), e.proof()))
            .with(session.car().shown(e.proof())));
  }

  private static Session closed(Session session, StepRef step) {
    Session closed =
        closing(session, step, t -> t.with(StepState.Status.CLOSED))
            .with(session.account().closed(step));
    return closed.with(closed.car().done(place(session, step)));
  }

  /** A fastener starts again, of a set the one at which something went wrong. */
  private static Session troubleSettled(Session session, TroubleSettled e) {
    boolean renewed = e.remedy() == Remedy.NEW_HARDWARE;
    return change(
        session.with(session.account().checked(e.step(), true)),
        e.step(),
        state -> {
          Optional<Integer> position = state.wrong().flatMap(StepState.Wrong::position);
          StepState loose = state.wrong(Optional.empty()).loose().watch(state.watch().open());
          StepState open = renewed ? counted(session, loose, e.step(), 0) : loose;
          if (!(kind(session, e.step()) instanceof Step.Fasten fasten) || state.wrong().isEmpty()) {
            return open;
          }
          Tightening before = state.tightening();
          return open.with(
              position
                  .map(n -> before.renewed(n, fasten.fastener().set().sequence()))
                  .orElse(renewed ? before.withNewHardware() : Tightening.LOOSE));
        });
  }

  /** Some of a set are open again; which of them were turned is known if they come next. */
  private static Session opened(Session session, PositionsTakenBack e) {
    Fastener fastener = ((Step.Fasten) kind(session, e.step())).fastener();
    List<Integer> sequence = fastener.set().sequence();
    boolean angle = session.atAngle();
    return tighten(
        session,
        e.step(),
        t -> {
          List<Integer> left = t.pass().without(e.positions(), false).left(sequence);
          int many = Math.min(left.size(), e.positions().numbers().size());
          boolean next = many == 1 && left.subList(0, 1).equals(e.positions().numbers());
          return t.withOpened(e.positions(), angle, next);
        });
  }

  private static Session interrupted(Session session, StepRef step) {
    boolean angle = session.ref().equals(step) && session.atAngle();
    return tighten(session, step, t -> t.broken(angle));
  }

  private static Session turned(Session session, TurnNoted e) {
    if (!session.ref().equals(e.step()) || !session.atAngle()) {
      return session;
    }
    Stage.AngleStage angle = (Stage.AngleStage) session.specified();
    boolean tooFar = angle.isExceededBy(e.degrees());
    return tighten(
        session,
        e.step(),
        t ->
            angle.isReachedBy(e.degrees())
                ? t.withTurned(e.degrees(), false).withCalled(some(e.degrees()))
                : t.withTurned(e.degrees(), tooFar));
  }

  private static Session loosened(Session session, StepRef step) {
    boolean usedUp = session.ref().equals(step) && session.isUsedUp();
    return change(session, step, t -> t.with(t.tightening().loosened(usedUp)).loose());
  }

  /** New hardware, or used hardware with how often it was tightened before where that counts. */
  private static Session fitted(Session session, StepRef step, int before) {
    return change(
        session,
        step,
        t -> counted(session, t, step, before).with(t.tightening().withNewHardware()).loose());
  }

  private static StepState counted(Session session, StepState state, StepRef step, int before) {
    boolean counted =
        kind(session, step) instanceof Step.Fasten fasten
            && fasten
                .fastener()
                .part()
                .reuse()
                .filter(limit -> limit.by() == ReuseBy.USES)
                .isPresent();
    return counted ? state.uses(state.uses().with(before)) : state;
  }

  /** Open again and to be done anew, as after a step was opened again. */
  private static Session lapsed(Session session, StepRef step) {
    return mayBeTight(session, step) ? reopenedTight(session, step) : reopened(session, step);
  }

  /** Whether a closed fastener was turned through an angle and no new one is asked for. */
  static boolean mayBeTight(Session session, StepRef step) {
    StepState state = session.progress().states().get(session.walk().indexOf(step));
    return kind(session, step) instanceof Step.Fasten fasten
        && !fasten.fastener().part().oneTimeUse()
        && firstAngle(fasten.fastener(), state.tightening()) > 0;
  }

  /** How many stages come before the first angle; 0 if there is no angle. */
  private static int firstAngle(Fastener fastener, Tightening tightening) {
    List<Stage> stages = fastener.stagesFor(tightening.marking()).orElse(List.of());
    return IntStream.range(0, stages.size())
        .filter(i -> stages.get(i) instanceof Stage.AngleStage)
        .findFirst()
        .orElse(0);
  }

  private static Session reopenedTight(Session session, StepRef step) {
    Fastener fastener = ((Step.Fasten) kind(session, step)).fastener();
    return forgetClosing(
        change(
            session,
            step,
            s -> {
              int stages = firstAngle(fastener, s.tightening());
              Tightening tight = s.tightening().withStagesClosed(stages);
              boolean each = fastener.set().several() && stages > 0;
              return StepState.FRESH
                  .with(each ? tight.doubted() : tight.broken(stages > 0))
                  .watch(s.watch().open());
            }),
        step);
  }

  private static Pending doubted(Session session, ClosingDoubted e) {
    return session.talk().pending().orElse(null) instanceof Pending.Later later
        ? later.and(e.step())
        : new Pending.Later(e.because(), List.of(e.step()));
  }

  /** What was said last of a step that is not closed: new hardware, a marking, that it is snug. */
  private static Session sayingTakenBack(Session session, SayingTakenBack e) {
    return switch (EventKind.valueOf(e.what())) {
      case NEW_HARDWARE_FITTED, REUSE_NOTED ->
          change(
              session,
              e.step(),
              t -> t.with(t.tightening().withoutNewHardware()).uses(t.uses().unsaid()));
      case MARKING_NOTED -> tighten(session, e.step(), Tightening::withoutMarking);
      case FASTENER_SNUG, STEP_PUT_OFF ->
          change(session, e.step(), t -> t.with(StepState.Status.OPEN));
      case WRENCH_NAMED -> session.with(session.bench().unnamed());
      case OVERDUE_NOTED -> session.with(Bench.NOTHING_SAID);
      case JOB_NOTED -> jobTakenBack(session);
      case RUN_IN_BY_HAND -> change(session, e.step(), t -> t.byHand(false));
      case RUN_DOWN_NOTED -> change(session, e.step(), t -> t.runDown(Optional.empty()));
      case NOTE_KEPT -> session.with(session.found().withoutLast());
      case TURN_NOTED -> tighten(session, e.step(), t -> t.broken(true));
      case WITNESS_ASKED -> workTakenBack(session, e.step());
      case TROUBLE_NOTED -> change(session, e.step(), t -> t.wrong(Optional.empty()));
      case OUT_OF_ORDER_NOTED -> change(session, e.step(), StepState::inOrder);
      default -> session;
    };
  }

  /** The work waits for its witness; what a witness had closed is open again. */
  private static Session witnessAsked(Session session, StepRef step) {
    boolean closed = session.progress().states().get(session.walk().indexOf(step)).closed();
    String technician = session.account().technician();
    Session asked =
        change(
            session,
            step,
            s ->
                s.with(closed ? StepState.Status.OPEN : s.status())
                    .watch(s.watch().asks(technician)));
    return closed ? forgetClosing(asked, step) : asked;
  }

  /** Work that was said to be done is not; stages of a fastener are taken back by themselves. */
  private static Session workTakenBack(Session session, StepRef step) {
    return kind(session, step) instanceof Step.Fasten
        ? session
        : change(session, step, s -> s.watch(s.watch().open()));
  }

  private static Session entered(Session session, StepRef step) {
    int index = session.walk().indexOf(step);
    Session moved =
        session.with(
            Route.isCalledBack(session, index)
                ? session.progress().calledBackTo(index)
                : session.progress().movedTo(index));
    return moved.with(moved.loads().workedOn(step.side()));
  }

  private static Session stageClosed(Session session, StageClosed e) {
    return closing(
        session,
        e.step(),
        s ->
            s.with(s.tightening().withNextStageClosed(e.stage()))
                .uses(s.uses().tightened())
                .watch(s.watch().worked(session.account().technician())));
  }

  private static Session closing(Session session, StepRef step, UnaryOperator<StepState> how) {
    Session closed = change(session, step, how);
    return closed.with(closed.progress().lastClosed(Optional.of(step)));
  }

  private static Session takenBack(Session session, StepRef step) {
    Session open =
        change(
            session,
            step,
            s ->
                s.with(s.tightening().withStagesClosed(0))
                    .with(StepState.Status.OPEN)
                    .watch(Watch.NOBODY));
    Session undone = open.with(open.car().undone(place(session, step)));
    return forgetHeight(forgetClosing(undone, step), step);
  }

  private static Session reopened(Session session, StepRef step) {
    Session loose =
        forgetClosing(
            change(
                session,
                step,
                s -> StepState.FRESH.uses(s.uses().unsaid()).watch(s.watch().open())),
            step);
    Session open = loose.with(loose.car().undone(place(session, step)));
    return kind(open, step) instanceof Step.Wait
        ? open.with(open.timers().cancelled(of(step)))
        : forgetHeight(open, step);
  }

  /** A ride height whose step is open again was not noted. */
  private static Session forgetHeight(Session session, StepRef step) {
    return kind(session, step) instanceof Step.Measure measure && measure.notesRideHeight()
        ? session.with(session.loads().withRideHeight(step.side(), Optional.empty()))
        : session;
  }

  private static Step kind(Session session, StepRef step) {
    return place(session, step).step();
  }

  private static Walk.Place place(Session session, StepRef step) {
    return session.walk().places().get(session.walk().indexOf(step));
  }

  /** It was not closed last, and what was closed does not cure. */
  private static Session forgetClosing(Session before, StepRef step) {
    Session session =
        kind(before, step) instanceof Step.Fasten
            ? before.with(before.timers().cancelled(of(step)))
            : before;
    return session.progress().lastClosed().filter(step::equals).isPresent()
        ? session.with(session.progress().lastClosed(Optional.empty()))
        : session;
  }

  private static Session tighten(Session session, StepRef step, UnaryOperator<Tightening> how) {
    return change(session, step, s -> s.with(how.apply(s.tightening())));
  }

  private static Session change(Session session, StepRef step, UnaryOperator<StepState> how) {
    return session.with(session.progress().change(session.walk().indexOf(step), how));
  }
}
