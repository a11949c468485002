package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.LoadChange;

/** What was said not to be so, and answers too short to count. */
final class Denied {
  private Denied() {}

  /** Closes nothing; a value called for the stage, a read-back and a denied load are dropped. */
  static Decision denied(Session session, Intent intent, Moment now) {
    IntentKind denied = ((Intent.Denied) intent).denied();
    Turn turn = new Turn(session);
    turn.record(new SessionEvent.CloseRefused(session.ref(), Missing.AFFIRMATION));
    if (session.talk().pending().isPresent()) {
      return turn.record(new SessionEvent.ReadBackDropped())
          .say(Say.dropped())
          .prompt()
          .end(Outcome.REFUSED);
    }
    turn.say(Say.denied(denied));
    boolean atStage = session.phase() == Phase.TORQUE || session.phase() == Phase.ANGLE;
    if (atStage && session.tightening().called().isPresent()) {
      turn.record(new SessionEvent.ValueDropped(session.ref()));
    }
    if (isLoad(denied)) {
      turn.loadChanged(LoadChange.DENIED);
    }
    return turn.end(Outcome.REFUSED);
  }

  private static boolean isLoad(IntentKind kind) {
    return switch (kind) {
      case WHEELS_CARRY,
          KNUCKLE_JACKED,
          ARCH_HEIGHT,
          HANGS_FREE,
          RIDE_HEIGHT_READ_BACK,
          FULL_DROOP_READ_BACK ->
          true;
      default -> false;
    };
  }

  /** Names the phrase that counts instead: the first that can close what is waited for. */
  static Decision shortAnswer(Session session, Intent intent, Moment now) {
    Optional<String> phrase =
        wanted(session.phase())
            .flatMap(kind -> Phrasebook.withoutNumber(kind).stream().findFirst());
    Reply reply = phrase.map(Ask::wholePhrase).orElseGet(() -> Prompt.of(session));
    return TalkRules.answer(
        session, intent, reply.sentences().equals(List.of()) ? Say.again() : reply);
  }

  /** What closes or confirms in a phase; empty where no single phrase does. */
  private static Optional<IntentKind> wanted(Phase phase) {
    return switch (phase) {
      case BRIEFING -> Optional.of(IntentKind.CAUTIONS_UNDERSTOOD);
      case DO, HAND_OVER, WAITING -> Optional.of(IntentKind.STEP_COMPLETED);
      case CHECK -> Optional.of(IntentKind.CHECK_PASSED);
      case TORQUE -> Optional.of(IntentKind.TORQUE_COMPLETED);
      case ANGLE -> Optional.of(IntentKind.ANGLE_COMPLETED);
      case READ_BACK -> Optional.of(IntentKind.READ_BACK_RIGHT);
      case ON_HOLD -> Optional.of(IntentKind.RESUME);
      default -> Optional.empty();
    };
  }
}
