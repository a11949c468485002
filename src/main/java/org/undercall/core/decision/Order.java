package org.undercall.core.decision;

import static org.undercall.core.decision.Possible.first;
import static org.undercall.core.decision.Possible.when;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
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
import org.undercall.core.procedure.Step;
import org.undercall.core.term.JobField;

/**
 * Which event can follow which session: one line an event. The program writes no other order, so a
 * log that has one was not written by it, and no session follows from it. That a value, a marking
 * or a load was called before it counted is not asked for here: the review shows where it was not.
 */
final class Order {
  /** No timer is longer, and no clock that is set makes one end later than this after year 0. */
  private static final Duration LONGEST = Duration.ofDays(366);

  private static final Instant EARLIEST = Instant.parse("0001-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("9999-12-31T23:59:59Z");
  private static final Duration MOST = Duration.between(EARLIEST, LATEST);

  private static final Map<EventKind, BiFunction<Possible, SessionEvent, Optional<String>>> RULES =
      new EnumMap<>(EventKind.class);

  static {
    on(SessionStarted.class, (p, e) -> always());
    on(VisitBegun.class, (p, e) -> p.justBegun());
    on(SessionResumed.class, (p, e) -> always());
    on(
        CautionsUnderstood.class,
        (p, e) -> p.mode(Talk.Mode.BRIEFING, "cautions that were read out"));
    on(StepEntered.class, (p, e) -> first(p.settledFor(e.step()), p.known(e.step())));
    on(
        StepClosed.class,
        (p, e) -> first(first(p.settled(), p.seen()), first(p.atHand(e.step()), p.canClose())));
    on(WorkDone.class, (p, e) -> p.atHand(e.step(), Step.Do.class));
    on(
        CheckAnswered.class,
        (p, e) ->
            first(
                p.atHand(e.step(), Step.Do.class),
                when(p.session().state().workDone(), "work that is done")));
    on(ValueCalled.class, (p, e) -> p.nextStage(e.step(), e.stage()));
    on(ReadingCalled.class, (p, e) -> first(p.nextStage(e.step(), e.stage()), p.holds(e.value())));
    on(ValueRefused.class, (p, e) -> p.nextStage(e.step(), e.stage()));
    on(
        ValueDropped.class,
        (p, e) -> first(p.atHand(e.step(), Step.Fasten.class), p.calledBefore()));
    on(StageClosed.class, (p, e) -> first(p.nextStage(e.step(), e.stage()), p.calledBefore()));
    on(
        PositionsClosed.class,
        (p, e) ->
            first(
                first(p.nextStage(e.step(), e.stage()), p.calledBefore()), p.open(e.positions())));
    on(
        PositionsCalled.class,
        (p, e) ->
            first(first(p.settled(), p.nextStage(e.step(), e.stage())), p.open(e.positions())));
    on(
        PositionsTakenBack.class,
        (p, e) -> first(p.known(e.step()), p.closedOfSet(e.step(), e.stage(), e.positions())));
    on(TroubleCalled.class, (p, e) -> first(p.settled(), p.goesWrong(e.step())));
    on(TroubleNoted.class, (p, e) -> p.atHand(e.step()));
    on(TroubleSettled.class, (p, e) -> first(p.settled(), p.atHand(e.step())));
    on(JobCalled.class, (p, e) -> p.tellsJob(e.field()));
    on(JobNoted.class, (p, e) -> p.tellsJob(e.field()));
    on(RunInByHand.class, (p, e) -> p.runsIn(e.step()));
    on(RunDownCalled.class, (p, e) -> first(p.settled(), p.runsDown(e.step())));
    on(RunDownNoted.class, (p, e) -> p.runsDown(e.step()));
    on(
        FinalTorqueCalled.class,
        (p, e) -> first(first(p.settled(), p.known(e.step())), p.endedWithAngle(e.step())));
    on(FinalTorqueNoted.class, (p, e) -> first(p.known(e.step()), p.endedWithAngle(e.step())));
    on(
        FinalTorqueJudged.class,
        (p, e) ->
            first(
                first(p.known(e.step()), p.endedWithAngle(e.step())),
                when(
                    e.least().signum() > 0 && e.least().compareTo(e.most()) <= 0,
                    "a band of torque that goes up")));
    on(WrenchNamed.class, (p, e) -> first(p.atHand(e.step()), p.listed(e.wrench())));
    on(
        OverdueCalled.class,
        (p, e) -> first(first(p.settled(), p.atHand(e.step())), p.listed(e.wrench())));
    on(OverdueNoted.class, (p, e) -> first(p.atHand(e.step()), p.listed(e.wrench())));
    on(StagesVoided.class, (p, e) -> p.begunBefore(e.step()));
    on(TighteningInterrupted.class, (p, e) -> p.begunBefore(e.step()));
    on(TurnCalled.class, (p, e) -> first(p.interrupted(e.step()), degrees(e.degrees())));
    on(TurnNoted.class, (p, e) -> first(p.interrupted(e.step()), degrees(e.degrees())));
    on(Loosened.class, (p, e) -> p.atHand(e.step(), Step.Fasten.class));
    on(StageTakenBack.class, (p, e) -> first(p.settled(), p.stageClosed(e.step(), e.stage())));
    on(ClosingLapsed.class, (p, e) -> first(p.known(e.because()), p.closedBefore(e.step())));
    on(
        ClosingDoubted.class,
        (p, e) -> first(p.working(), first(p.known(e.because()), p.closedBefore(e.step()))));
    on(ClosingsHold.class, (p, e) -> first(p.known(e.because()), p.doubted()));
    on(OutOfOrderCalled.class, (p, e) -> first(p.settled(), p.atHand(e.step())));
    on(OutOfOrderNoted.class, (p, e) -> p.atHand(e.step()));
    on(
        SayingTakenBack.class,
        (p, e) ->
            first(
                first(
                    e.what().equals(EventKind.JOB_NOTED.name())
                        ? p.tellsJob(JobField.TECHNICIAN)
                        : p.settled(),
                    p.known(e.step())),
                when(Talk.Last.canBeTakenBack(e.what()), "something that can be taken back")));
    on(HeightsApart.class, (p, e) -> p.working());
    on(CloseRefused.class, (p, e) -> p.known(e.step()));
    on(MeasureCalled.class, (p, e) -> p.atHand(e.step(), Step.Measure.class));
    on(Measured.class, (p, e) -> p.atHand(e.step(), Step.Measure.class));
    on(
        RideHeightNoted.class,
        (p, e) ->
            first(
                p.atHand(p.session().ref(), Step.Measure.class),
                when(e.side() == p.session().side(), "the side at hand")));
    on(
        MarkingCalled.class,
        (p, e) -> first(p.atHand(e.step(), Step.Fasten.class), p.hasMarking(e.marking())));
    on(
        MarkingNoted.class,
        (p, e) -> first(p.atHand(e.step(), Step.Fasten.class), p.hasMarking(e.marking())));
    on(MarkingRefused.class, (p, e) -> p.atHand(e.step(), Step.Fasten.class));
    on(ReuseCalled.class, (p, e) -> first(p.settled(), p.permits(e.step(), e.by(), e.value())));
    on(ReuseNoted.class, (p, e) -> p.permits(e.step(), e.by(), e.value()));
    on(ReuseRefused.class, (p, e) -> p.atHand(e.step(), Step.Fasten.class));
    on(NewHardwareFitted.class, (p, e) -> p.atHand(e.step(), Step.Fasten.class));
    on(
        LoadCalled.class,
        (p, e) -> first(p.working(), when(e.side() == p.session().side(), "the side at hand")));
    on(
        LoadConfirmed.class,
        (p, e) -> first(p.working(), when(e.side() == p.session().side(), "the side at hand")));
    on(LoadRefused.class, (p, e) -> p.working());
    on(LoadChanged.class, (p, e) -> always());
    on(StepPutOff.class, (p, e) -> first(p.settled(), p.atHand(e.step())));
    on(FastenerSnug.class, (p, e) -> first(p.settled(), p.atHand(e.step(), Step.Fasten.class)));
    on(StepReopened.class, (p, e) -> first(p.settledFor(e.step()), p.closedBefore(e.step())));
    on(
        ReopenedTight.class,
        (p, e) ->
            first(p.settledFor(e.step()), first(p.closedBefore(e.step()), p.mayBeTight(e.step()))));
    on(ClosingTakenBack.class, (p, e) -> first(p.settled(), p.lastClosed(e.step())));
    on(StepRecalled.class, (p, e) -> p.known(e.step()));
    on(
        ReadBackDropped.class,
        (p, e) ->
            when(p.session().talk().pending().isPresent(), "something that waits to be read back"));
    on(NoteStarted.class, (p, e) -> p.working());
    on(
        NoteKept.class,
        (p, e) -> first(p.mode(Talk.Mode.NOTING, "a note that was begun"), p.known(e.step())));
    on(NoteDropped.class, (p, e) -> p.mode(Talk.Mode.NOTING, "a note that was begun"));
    on(WorkHeld.class, (p, e) -> p.working());
    on(WorkResumed.class, (p, e) -> p.rests());
    on(WorkHandedOver.class, (p, e) -> first(p.handsOver(), p.known(e.step())));
    on(WorkTakenOver.class, (p, e) -> p.takesOver(e.technician()));
    on(
        WitnessAsked.class,
        (p, e) -> first(p.settled(), first(p.known(e.step()), p.doneOrSeen(e.step()))));
    on(WitnessCalled.class, (p, e) -> first(p.settled(), p.waitsForWitness(e.step())));
    on(
        Witnessed.class,
        (p, e) -> first(p.waitsForWitness(e.step()), p.readBackTo(e.step(), e.witness())));
    on(ApprenticeWorks.class, (p, e) -> always());
    on(WitnessesKnown.class, (p, e) -> always());
    on(
        TimerStarted.class,
        (p, e) ->
            first(
                p.cures(e.step()) ? always() : p.atHand(e.step(), Step.Wait.class),
                time(e.seconds(), e.due())));
    on(TimerWarned.class, (p, e) -> p.runs(new TimerKey.OfStep(e.step())));
    on(TimerEnded.class, (p, e) -> p.runs(new TimerKey.OfStep(e.step())));
    on(TimerCancelled.class, (p, e) -> p.runs(new TimerKey.OfStep(e.step())));
    on(NamedTimerStarted.class, (p, e) -> first(p.known(e.step()), time(e.seconds(), e.due())));
    on(NamedTimerWarned.class, (p, e) -> p.runs(new TimerKey.Named(e.name())));
    on(NamedTimerEnded.class, (p, e) -> p.runs(new TimerKey.Named(e.name())));
    on(NamedTimerCancelled.class, (p, e) -> p.runs(new TimerKey.Named(e.name())));
    on(ClockJumped.class, (p, e) -> jump(p, e.millis()));
    on(HandedOver.class, (p, e) -> p.atHand(e.step(), Step.HandOver.class));
    on(EndCalled.class, (p, e) -> first(p.settled(), open(p, e.open())));
    on(
        SessionEnded.class,
        (p, e) ->
            first(
                p.working(),
                first(
                    open(p, e.open()),
                    when(e.complete() == (e.open() == 0), "complete with no step open"))));
    on(Asked.class, (p, e) -> always());
    on(NotNow.class, (p, e) -> always());
    on(
        NotUnderstood.class,
        (p, e) ->
            when(
                e.inARow().filter(n -> n < 1 || n > Talk.Missed.MANY).isEmpty(),
                "a count from 1 to 3"));
    on(HearingRemarked.class, (p, e) -> always());
    on(TalkSet.class, (p, e) -> always());
    on(Reminded.class, (p, e) -> always());
    on(LogDoubted.class, (p, e) -> always());
    for (EventKind kind : EventKind.values()) {
      if (!RULES.containsKey(kind)) {
        throw new IllegalStateException("no line says what goes before " + kind);
      }
    }
  }

  private Order() {}

  /** What was expected in words if an event cannot follow; empty if it can. */
  static Optional<String> expected(Session before, SessionEvent event) {
    return RULES.get(EventKind.of(event)).apply(new Possible(before), event);
  }

  private static <E extends SessionEvent> void on(
      Class<E> type, BiFunction<Possible, E, Optional<String>> rule) {
    for (EventKind kind : EventKind.values()) {
      if (kind.type() == type) {
        RULES.put(kind, (before, event) -> rule.apply(before, type.cast(event)));
      }
    }
  }

  private static Optional<String> always() {
    return Optional.empty();
  }

  private static Optional<String> degrees(BigDecimal degrees) {
    return when(degrees.signum() >= 0, "degrees from zero");
  }

  private static Optional<String> open(Possible before, int steps) {
    return when(
        steps == before.session().openSteps(), before.session().openSteps() + " open steps");
  }

  private static Optional<String> time(long seconds, Instant due) {
    return when(
        seconds > 0 && seconds <= LONGEST.toSeconds() && isDate(due),
        "a time of at most a year that ends before the year 10000");
  }

  private static Optional<String> jump(Possible before, long millis) {
    boolean far = Math.abs(millis / 2) > MOST.toMillis() / 2;
    boolean dated =
        !far
            && before.session().timers().running().values().stream()
                .allMatch(timer -> isDate(timer.due().plusMillis(millis)));
    return when(dated, "every timer ending between the years 1 and 9999");
  }

  private static boolean isDate(Instant time) {
    return !time.isBefore(EARLIEST) && !time.isAfter(LATEST);
  }
}
