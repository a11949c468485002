package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.SoundLevels;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.procedure.Step;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.HearingTrouble;

/** What was not understood. */
final class UnclearRules {
  /** After a remark on the hearing none is made for so long. */
  private static final Duration QUIET = Duration.ofMinutes(5);

  /** The second phrase in a row that was not understood. */
  private static final int SECOND = 2;

  private UnclearRules() {}

  /**
   * Chatter is left alone; what is close to a phrase is asked for again. The second time in a row a
   * value is asked for digit by digit; the third time it is said why, if the levels show it.
   */
  static Decision unclear(Session session, Intent intent, Moment now) {
    Unclear unclear = (Unclear) intent;
    boolean lone = unclear.number().filter(number -> couldBe(session, number)).isPresent();
    if (!unclear.reason().isClose() && !lone) {
      return new Turn(session)
          .record(new SessionEvent.NotUnderstood(unclear.reason().name()))
          .end(Outcome.IGNORED);
    }
    int inARow = session.talk().missed().andOneMore();
    Turn turn = new Turn(session);
    turn.record(new SessionEvent.NotUnderstood(unclear.reason().name(), Optional.of(inARow)));
    Instant moment = now.wall().toInstant();
    Optional<HearingTrouble> trouble =
        inARow < Talk.Missed.MANY || isQuiet(session, moment)
            ? Optional.empty()
            : unclear.levels().flatMap(SoundLevels::trouble);
    trouble.ifPresent(
        t ->
            turn.record(new SessionEvent.HearingRemarked(t, moment.plus(QUIET)))
                .say(Say.hearing(t)));
    return turn.say(again(session, inARow, lone)).end(Outcome.ASKED);
  }

  private static boolean isQuiet(Session session, Instant moment) {
    return session.talk().missed().quietUntil().filter(moment::isBefore).isPresent();
  }

  private static Reply again(Session session, int inARow, boolean lone) {
    if (inARow == SECOND && session.phase() == Phase.MEASURE) {
      return Ask.digitByDigit();
    }
    if (inARow == SECOND && isStage(session) && session.tightening().called().isEmpty()) {
      return Ask.digitByDigit();
    }
    return lone ? Ask.withUnit() : Say.again();
  }

  private static boolean isStage(Session session) {
    return session.phase() == Phase.TORQUE || session.phase() == Phase.ANGLE;
  }

  /** Whether a value is waited for that the number could be, by how many digits it has. */
  private static boolean couldBe(Session session, SpokenNumber number) {
    int digits = digits(number.value());
    if (isStage(session)) {
      return digits == digits(session.stage().amount());
    }
    if (session.phase() == Phase.MEASURE) {
      Step.Limits limits = ((Step.Measure) session.place().step()).limits();
      return limits.most().map(most -> digits <= digits(most)).orElse(true);
    }
    return session.phase() == Phase.READ_BACK
        && session.talk().pending().orElse(null) instanceof Pending.Value value
        && digits == digits(value.value().amount());
  }

  /** How many digits stand before the point; "zero" has one. */
  private static int digits(BigDecimal value) {
    return Math.max(1, value.precision() - value.scale());
  }
}
