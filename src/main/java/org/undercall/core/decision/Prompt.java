package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Fastener.FastenerSet;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wrenches;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.JobTalk;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Renew;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.reply.ShiftTalk;
import org.undercall.core.reply.Tell;
import org.undercall.core.reply.Timing;
import org.undercall.core.reply.WitnessTalk;
import org.undercall.core.term.DueTime;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;

/** What the program says to tell what the session waits for. */
final class Prompt {
  private Prompt() {}

  /** The step at hand, named, and what it waits for. */
  static Reply entering(Session session) {
    return entering(session, false);
  }

  /** The same when it goes on from a step of the same side, which need not be said again. */
  static Reply onward(Session session) {
    boolean stakes =
        session.place().step() instanceof Step.Fasten
            || session.place().step() instanceof Step.Load;
    return entering(session, !stakes);
  }

  private static Reply entering(Session session, boolean onward) {
    Walk.Place place = session.place();
    return Ask.step(session.progress().at() + 1, place, Titles.known(session), onward)
        .and(why(session))
        .and(of(session));
  }

  /** Why the step is done as it is, for an apprentice, as long as it is open. */
  private static Reply why(Session session) {
    boolean wanted = session.account().isApprentice() && !session.state().closed();
    return session
        .place()
        .step()
        .head()
        .why()
        .filter(why -> wanted)
        .map(WitnessTalk::why)
        .orElse(Reply.SILENCE);
  }

  /** What the session waits for, whole whatever was heard before; of work also the step. */
  static Reply whole(Session session) {
    boolean step = session.talk().mode() == Talk.Mode.WORKING && session.talk().pending().isEmpty();
    return inFull(step ? entering(session) : of(session));
  }

  /** A reply that is said whole whatever was heard before. */
  static Reply inFull(Reply reply) {
    return Reply.of(reply.sentences());
  }

  /** What the session waits for. */
  static Reply of(Session session) {
    return switch (session.phase()) {
      case BRIEFING ->
          session
              .account()
              .next()
              .map(ShiftTalk::named)
              .orElse(Reply.SILENCE)
              .and(Ask.briefing(session.walk().procedure(), session.talk().habit().cautions()));
      case DO -> Reply.SILENCE;
      case CHECK -> Ask.check(((Step.Do) session.place().step()).check().orElseThrow());
      case MEASURE -> Ask.measure((Step.Measure) session.place().step());
      case HARDWARE -> Renew.ask(FastenRules.fastener(session));
      case MARKING -> Ask.marking(FastenRules.fastener(session).set().count());
      case GATE -> Ask.gate(FastenRules.fastener(session).needs(), session.side());
      case TROUBLE -> trouble(session);
      case BY_HAND -> Ask.byHand(FastenRules.fastener(session).set().count());
      case RUN_DOWN -> Ask.runDown(session.specified());
      case BEGUN -> Ask.turnedSoFar(session.specified(), session.tightening().turned());
      case TORQUE, ANGLE -> stage(session);
      case WAITING -> waiting(session);
      case LOAD -> Ask.load((Step.Load) session.place().step(), session.side());
      case HAND_OVER -> Ask.handOver((Step.HandOver) session.place().step());
      case WITNESS -> WitnessTalk.who();
      case JOB_READ_BACK, READ_BACK, LOAD_READ_BACK, WITNESS_READ_BACK ->
          readBack(session.talk().pending().orElseThrow(), session);
      case NOTING ->
          session.talk().pending().orElse(null) instanceof Pending.Report report
              ? Tell.reportStarted(report.finding(), report.side())
              : Tell.noteStarted();
      case ON_HOLD -> Tell.held();
      case SHIFT_CHANGE -> ShiftTalk.whoTakesOver();
      case ALL_CLOSED -> stillRunning(session).and(Ask.allClosed());
      case CLOSED_STEP -> Ask.closedStep();
      case ENDED -> Refuse.notNow();
    };
  }

  private static Reply waiting(Session session) {
    if (session.timers().ended().contains(session.ref())) {
      return Ask.timeOver();
    }
    return session.timers().runs(session.ref())
        ? Ask.timerRuns()
        : Ask.waiting((Step.Wait) session.place().step());
  }

  private static Reply stage(Session session) {
    Reply added =
        session.stage() instanceof Stage.TorqueStage
            ? session.addedRunDown().map(Ask::runDownAdded).orElse(Reply.SILENCE)
            : Reply.SILENCE;
    Reply stage =
        added
            .and(
                Ask.stage(
                    FastenRules.fastener(session),
                    session.stages(),
                    new Ask.At(
                        session.tightening().stagesClosed(),
                        session.tightening().tight(),
                        Titles.known(session).isPresent()),
                    session.walk().procedure().mixesUnits()))
            .and(ofSet(session))
            .and(WrenchRules.prompt(session));
    return session
        .tightening()
        .turned()
        .map(turned -> Ask.rest(session.specified(), turned).and(stage))
        .orElse(stage);
  }

  private static Reply trouble(Session session) {
    StepState.Wrong wrong = session.state().wrong().orElseThrow();
    int count =
        session.place().step() instanceof Step.Fasten fasten && wrong.position().isEmpty()
            ? fasten.fastener().set().count()
            : 1;
    return Ask.trouble(wrong.trouble(), wrong.position(), count);
  }

  /** The head marking that was read for the same step on the other side. */
  private static Optional<HeadMarking> otherSide(Session session) {
    return session.walk().places().stream()
        .filter(p -> p.ref().id().equals(session.ref().id()) && !p.ref().equals(session.ref()))
        .map(p -> session.progress().states().get(session.walk().indexOf(p.ref())))
        .flatMap(state -> state.tightening().marking().stream())
        .findFirst();
  }

  /** Which fastener of a set is next. */
  private static Reply ofSet(Session session) {
    FastenerSet set = FastenRules.fastener(session).set();
    return session
        .tightening()
        .pass()
        .next(set.sequence())
        .filter(n -> set.several())
        .map(Ask::nextOfSet)
        .orElse(Reply.SILENCE);
  }

  private static boolean takesSign(Session session) {
    return session.place().step() instanceof Step.Measure m && m.limits().reachBelowZero();
  }

  private static Reply readBack(Pending pending, Session session) {
    if (pending instanceof Pending.Value value) {
      boolean reference =
          session.place().step() instanceof Step.Measure measure && measure.notesRideHeight();
      return reference
          ? Ask.readBackHeight(value.value(), session.car().lifted())
          : Ask.readBack(value.value(), takesSign(session));
    }
    if (pending instanceof Pending.Turned turned) {
      return Ask.readBackTurned(turned.degrees());
    }
    if (pending instanceof Pending.Wrong wrong) {
      boolean here = wrong.step().equals(session.ref()) && !session.state().closed();
      return here
          ? Ask.readBackTrouble(wrong.trouble(), wrong.position())
          : Ask.readBackTrouble(
              session.walk().places().get(session.walk().indexOf(wrong.step())), wrong.trouble());
    }
    if (pending instanceof Pending.Seen seen) {
      return WitnessRules.readBack(session, seen);
    }
    if (pending instanceof Pending.OfJob ofJob) {
      return JobTalk.readBack(ofJob.field(), ofJob.text());
    }
    if (pending instanceof Pending.RunDown runDown) {
      return Ask.readBackRunDown(runDown.value(), session.specified());
    }
    if (pending instanceof Pending.FinalTorque torque) {
      return Ask.readBackFinalTorque(torque.value(), FinalTorqueRules.unit(session, torque.step()));
    }
    if (pending instanceof Pending.Reuse reuse) {
      return Renew.readBack(FastenRules.fastener(session), reuse.by(), reuse.value());
    }
    if (pending instanceof Pending.Overdue overdue) {
      Wrenches wrenches = session.walk().procedure().wrenches();
      int number = wrenches.number(wrenches.called(overdue.wrench()).orElseThrow());
      return Ask.readBackOverdue(number, overdue.reason());
    }
    if (pending instanceof Pending.Reading reading) {
      return Ask.readBackReading(reading.value(), session.stage());
    }
    if (pending instanceof Pending.OfSet ofSet) {
      return Ask.readBackSet(ofSet.positions(), FastenRules.fastener(session).set().count());
    }
    if (pending instanceof Pending.OutOfOrder order) {
      return Ask.readBackOrder(order.reason());
    }
    if (pending instanceof Pending.Later later) {
      return Ask.stillHold(
          later.steps().stream()
              .map(ref -> session.walk().places().get(session.walk().indexOf(ref)))
              .toList());
    }
    if (pending instanceof Pending.Marking marking) {
      return Ask.readBack(
          marking.marking(),
          FastenRules.fastener(session).set().count(),
          otherSide(session).filter(m -> !m.equals(marking.marking())));
    }
    if (pending instanceof Pending.Load load) {
      return Ask.readBackLoad(load.side(), load.condition());
    }
    return end(session);
  }

  /** The end of the work with open steps, read back, and the timers it would leave alone. */
  static Reply end(Session session) {
    return stillRunning(session).and(Ask.readBackEnd(session.progress().open()));
  }

  private static Reply stillRunning(Session session) {
    List<String> names = TimerRules.runningNames(session);
    return names.isEmpty() ? Reply.SILENCE : Timing.stillRun(names);
  }

  /** What was handed over to be done before the car is driven. */
  private static List<String> beforeDriving(Session session) {
    return session.walk().places().stream()
        .map(Walk.Place::step)
        .filter(Step.HandOver.class::isInstance)
        .map(Step.HandOver.class::cast)
        .filter(item -> DueTime.of(item.due()).when() == DueTime.When.BEFORE_DRIVING)
        .map(item -> item.head().title())
        .distinct()
        .toList();
  }

  /** The session has ended: timers that still ran are not called any more. */
  static Reply ended(Session session, boolean complete) {
    List<String> names = TimerRules.runningNames(session);
    List<String> wrong = new ArrayList<>();
    for (Walk.Place place : session.walk().places()) {
      session
          .progress()
          .states()
          .get(session.walk().indexOf(place.ref()))
          .wrong()
          .ifPresent(w -> wrong.add(Say.trouble(place, w.trouble())));
    }
    List<String> first = beforeDriving(session);
    Reply closed =
        complete && !first.isEmpty()
            ? Say.endedNotToBeDriven(first)
            : Say.ended(complete, session.progress().open(), wrong);
    Reply ended =
        closed
            .and(WitnessTalk.missing(WitnessRules.missing(session)))
            .and(
                Say.found(
                    session.found().count(Finding.FOUND_FAULT),
                    session.found().count(Finding.EXTRA_WORK),
                    session.found().count(Finding.PART_TO_ORDER)));
    return names.isEmpty() ? ended : ended.and(Timing.notCalled(names));
  }
}
