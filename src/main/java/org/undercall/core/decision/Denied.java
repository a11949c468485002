package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.Claim;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.Positions;
import org.undercall.core.term.StepRef;

/** What was said not to be so, and answers too short to count. */
final class Denied {
  private Denied() {}

  /** Closes nothing; a value called for the stage, a read-back and a denied load are dropped. */
  static Decision denied(Session session, Intent intent, Moment now) {
    Claim denied = claim(((Intent.Denied) intent).denied());
    Turn turn = new Turn(session);
    boolean readBack = session.talk().pending().isPresent();
    turn.record(new SessionEvent.CloseRefused(session.ref(), Missing.AFFIRMATION));
    boolean working = session.talk().mode() == Talk.Mode.WORKING;
    if (working && !readBack && wasClosedBy(session, denied)) {
      turn.say(Say.denied(denied, true));
      StepRef ref = session.progress().lastClosed().orElseThrow();
      if (denied == Claim.WITNESSED) {
        return WitnessRules.unwitnessed(turn, ref).end(Outcome.REFUSED);
      }
      ReadBackRules.closing(turn, ref);
      SetRules.denied(turn.session(), (Intent.Denied) intent, denied)
          .ifPresent(open -> SetRules.open(turn, open));
      return turn.end(Outcome.REFUSED);
    }
    Optional<Talk.Last> last = session.talk().last().filter(l -> says(l.kind(), denied));
    if (working && !readBack && last.isPresent()) {
      return ReadBackRules.takeBack(turn.say(Say.denied(denied, true)), last.get())
          .end(Outcome.REFUSED);
    }
    Intent.Denied said = (Intent.Denied) intent;
    boolean rests =
        session.talk().mode() == Talk.Mode.HELD || session.talk().mode() == Talk.Mode.HANDED;
    if ((working || rests) && !readBack) {
      Optional<Positions> open = SetRules.denied(session, said, denied);
      if (open.isPresent()) {
        return SetRules.open(turn, open.get()).end(Outcome.REFUSED);
      }
      if (SetRules.isOpen(session, said, denied)) {
        return turn.say(Say.denied(denied, true)).end(Outcome.REFUSED);
      }
    }
    turn.drop();
    turn.say(readBack ? Say.dropped() : Say.denied(denied, isOpen(session, denied)));
    boolean atStage = session.phase() == Phase.TORQUE || session.phase() == Phase.ANGLE;
    if (atStage && session.tightening().called().isPresent()) {
      turn.record(new SessionEvent.ValueDropped(session.ref()));
    }
    if (denied == Claim.LOAD) {
      turn.loadChanged(LoadChange.DENIED);
    }
    return (readBack ? turn.prompt() : turn).end(Outcome.REFUSED);
  }

  /** Whether what is denied is what was said last and closed something: then it is taken back. */
  private static boolean wasClosedBy(Session session, Claim denied) {
    Optional<EventKind> last = session.talk().last().map(Talk.Last::kind);
    Optional<StepRef> ref = session.progress().lastClosed();
    if (last.isEmpty() || ref.isEmpty()) {
      return false;
    }
    int index = session.walk().indexOf(ref.get());
    Step step = session.walk().places().get(index).step();
    if (denied == Claim.WITNESSED) {
      return WitnessRules.watch(session, ref.get()).by().isPresent();
    }
    boolean stage = last.get() == EventKind.STAGE_CLOSED || last.get() == EventKind.STEP_CLOSED;
    if (stage && step instanceof Step.Fasten fasten) {
      Tightening tightening = session.progress().states().get(index).tightening();
      List<Stage> stages = fasten.fastener().stagesFor(tightening.marking()).orElse(List.of());
      int closed = Math.min(tightening.stagesClosed(), stages.size());
      Claim claim =
          closed > 0 && stages.get(closed - 1) instanceof Stage.AngleStage
              ? Claim.ANGLE_TURNED
              : Claim.TORQUE_REACHED;
      return denied == claim;
    }
    return last.get() == EventKind.STEP_CLOSED
        && !isOpen(session, denied)
        && (denied == Claim.CHECK_PASSED || denied == Claim.STEP_COMPLETED);
  }

  /** Whether what was said last, of a fastener that is still loose, is just what is denied. */
  private static boolean says(EventKind last, Claim denied) {
    return switch (last) {
      case NEW_HARDWARE_FITTED, REUSE_NOTED -> denied == Claim.NEW_HARDWARE_FITTED;
      case MARKING_NOTED -> denied == Claim.HEAD_MARKING_READ;
      case RUN_IN_BY_HAND -> denied == Claim.RUN_IN_BY_HAND;
      case WITNESS_ASKED -> denied == Claim.STEP_COMPLETED || denied == Claim.CHECK_PASSED;
      default -> false;
    };
  }

  /** Whether what was denied is still to come; what was closed before is not said to be open. */
  private static boolean isOpen(Session session, Claim denied) {
    Phase phase = session.phase();
    boolean tightened = phase == Phase.ANGLE || phase == Phase.TORQUE;
    boolean before =
        phase == Phase.HARDWARE
            || phase == Phase.MARKING
            || phase == Phase.BY_HAND
            || phase == Phase.GATE
            || phase == Phase.RUN_DOWN;
    boolean begun = phase == Phase.BEGUN || phase == Phase.TROUBLE;
    return switch (denied) {
      case CAUTIONS_UNDERSTOOD -> phase == Phase.BRIEFING;
      case CHECK_PASSED -> phase == Phase.CHECK;
      case NEW_HARDWARE_FITTED -> phase == Phase.HARDWARE;
      case HEAD_MARKING_READ -> phase == Phase.MARKING;
      case RUN_IN_BY_HAND -> phase == Phase.BY_HAND;
      case TORQUE_REACHED -> before || phase == Phase.TORQUE;
      case ANGLE_TURNED -> before || tightened || begun;
      case STEP_COMPLETED -> !session.state().closed();
      case WITNESSED -> phase == Phase.WITNESS;
      case READ_BACK_RIGHT -> false;
      case LOAD, END_OF_WORK -> true;
    };
  }

  private static Claim claim(IntentKind denied) {
    return switch (denied) {
      case CAUTIONS_UNDERSTOOD -> Claim.CAUTIONS_UNDERSTOOD;
      case CHECK_PASSED -> Claim.CHECK_PASSED;
      case TORQUE_COMPLETED -> Claim.TORQUE_REACHED;
      case ANGLE_COMPLETED -> Claim.ANGLE_TURNED;
      case READ_BACK_RIGHT -> Claim.READ_BACK_RIGHT;
      case HEAD_MARKING -> Claim.HEAD_MARKING_READ;
      case NEW_HARDWARE, HARDWARE_LENGTH, HARDWARE_USES -> Claim.NEW_HARDWARE_FITTED;
      case FITTED_SNUG -> Claim.RUN_IN_BY_HAND;
      case END_OF_WORK -> Claim.END_OF_WORK;
      case WITNESSED -> Claim.WITNESSED;
      case WHEELS_CARRY,
          KNUCKLE_JACKED,
          ARCH_HEIGHT,
          HANGS_FREE,
          RIDE_HEIGHT_READ_BACK,
          FULL_DROOP_READ_BACK ->
          Claim.LOAD;
      default -> Claim.STEP_COMPLETED;
    };
  }

  /** A no where nothing was read back: it closes and opens nothing. */
  static Decision no(Session session, Intent intent, Moment now) {
    boolean check = session.phase() == Phase.CHECK;
    return TalkRules.answer(session, intent, check ? Ask.failedOrPassed() : Ask.nothingChanged());
  }

  /** Names the phrase that counts instead: the first that can close what is waited for. */
  static Decision shortAnswer(Session session, Intent intent, Moment now) {
    Optional<String> phrase =
        wanted(session.phase())
            .flatMap(kind -> Phrasebook.withoutNumber(kind).stream().findFirst());
    Reply reply = phrase.map(Ask::wholePhrase).orElseGet(() -> Prompt.of(session));
    return TalkRules.answer(session, intent, reply.sentences().isEmpty() ? Say.again() : reply);
  }

  /** What closes or confirms in a phase; empty where no single phrase does. */
  private static Optional<IntentKind> wanted(Phase phase) {
    return switch (phase) {
      case BRIEFING -> Optional.of(IntentKind.CAUTIONS_UNDERSTOOD);
      case DO, HAND_OVER, WAITING -> Optional.of(IntentKind.STEP_COMPLETED);
      case CHECK -> Optional.of(IntentKind.CHECK_PASSED);
      case TORQUE -> Optional.of(IntentKind.TORQUE_COMPLETED);
      case ANGLE -> Optional.of(IntentKind.ANGLE_COMPLETED);
      case JOB_READ_BACK, READ_BACK -> Optional.of(IntentKind.READ_BACK_RIGHT);
      case ON_HOLD -> Optional.of(IntentKind.RESUME);
      default -> Optional.empty();
    };
  }
}
