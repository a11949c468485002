package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Say;
import org.undercall.core.reply.Tell;
import org.undercall.core.term.Claim;
import org.undercall.core.term.Positions;

/**
 * What is done with sets: each fastener of one is called by itself, and a stage is closed only when
 * all were called.
 */
final class SetRules {
  private SetRules() {}

  /** Which one is next, and which are left. */
  static Decision which(Session session, Intent intent, Moment now) {
    List<Integer> sequence = FastenRules.fastener(session).set().sequence();
    Pass pass = session.tightening().pass();
    return TalkRules.answer(session, intent, Tell.ofSet(pass.closed(), pass.left(sequence)));
  }

  /** The stage at hand is said to be completed for one of a set, or for all that are left. */
  static Decision completed(Turn turn, Intent intent) {
    Session session = turn.session();
    Fastener fastener = FastenRules.fastener(session);
    Pass pass = session.tightening().pass();
    List<Integer> left = pass.left(fastener.set().sequence());
    int next = left.get(0);
    if (intent instanceof Intent.Counted counted) {
      return counted(session, counted, left);
    }
    int position = intent instanceof Intent.OfPosition of ? of.position() : next;
    if (position > fastener.set().count()) {
      return StepRules.refuse(
          session, Missing.POSITION, Refuse.noSuchPosition(fastener.set().count()));
    }
    if (pass.closed().contains(position)) {
      return StepRules.refuse(session, Missing.POSITION, Refuse.positionClosed(position, next));
    }
    return position == next
        ? close(turn, Positions.of(position))
        : readBack(session, Positions.of(position));
  }

  private static Decision counted(Session session, Intent.Counted said, List<Integer> left) {
    Fastener fastener = FastenRules.fastener(session);
    int count = fastener.set().count();
    if (!fastener.mayBeCounted() || session.stage() instanceof Stage.AngleStage) {
      return StepRules.refuse(session, Missing.ONE_BY_ONE, Refuse.oneByOne(left.get(0)));
    }
    return said.number() == count && said.of() == count
        ? readBack(session, new Positions(left))
        : StepRules.refuse(session, Missing.COUNT, Refuse.count(said.number(), count));
  }

  private static Decision readBack(Session session, Positions positions) {
    int stage = session.tightening().stagesClosed() + 1;
    return new Turn(session)
        .record(new SessionEvent.PositionsCalled(session.ref(), stage, positions))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** Keeps what was read back of a set. */
  static Decision keep(Session session, Pending.OfSet pending, Intent intent, Moment now) {
    Turn dropped = new Turn(session).drop();
    Session after = dropped.session();
    Optional<Decision> early =
        WrenchRules.calibrationOver(after, now).or(() -> StepRules.tooEarly(after));
    if (early.isPresent()) {
      return dropped.then(early.get());
    }
    boolean atStage = after.phase() == Phase.TORQUE || after.phase() == Phase.ANGLE;
    return atStage && after.tightening().called().isPresent()
        ? close(new Turn(session), pending.positions())
        : dropped.then(StepRules.missing(after, intent, now));
  }

  /** Closes positions at the stage at hand, and the stage once none is left. */
  static Decision close(Turn turn, Positions positions) {
    Session before = turn.session();
    int stage = before.tightening().stagesClosed() + 1;
    String value = FastenRules.recorded(before);
    boolean rest = before.tightening().turned().isPresent();
    turn.record(new SessionEvent.PositionsClosed(before.ref(), stage, positions, value));
    Session after = turn.session();
    List<Integer> left =
        after.tightening().pass().left(FastenRules.fastener(after).set().sequence());
    if (left.isEmpty()) {
      return FastenRules.close(turn).end(Outcome.ACCEPTED);
    }
    turn.say(Say.positionClosed(positions.numbers().get(0), left));
    if (rest) {
      turn.record(new SessionEvent.ValueDropped(after.ref()));
    }
    boolean asks = rest || after.phase() == Phase.BEGUN;
    return (asks ? turn.prompt() : turn).end(Outcome.ACCEPTED);
  }

  /** The positions that a denial opens again: the one it names, else what was called last. */
  static Optional<Positions> denied(Session session, Intent.Denied intent, Claim claim) {
    if (!isOfStage(session, claim)) {
      return Optional.empty();
    }
    Pass pass = session.tightening().pass();
    if (intent.position().isPresent()) {
      return intent.position().filter(pass.closed()::contains).map(Positions::of);
    }
    boolean last =
        session
            .talk()
            .last()
            .filter(l -> l.kind() == org.undercall.core.event.EventKind.POSITIONS_CLOSED)
            .isPresent();
    return last ? Optional.of(new Positions(pass.last())) : Optional.empty();
  }

  /** Whether a denial names a position of the set at hand that is open, and stays so. */
  static boolean isOpen(Session session, Intent.Denied intent, Claim claim) {
    return isOfStage(session, claim)
        && intent
            .position()
            .filter(n -> n <= FastenRules.fastener(session).set().count())
            .isPresent();
  }

  private static boolean isOfStage(Session session, Claim claim) {
    boolean tightening =
        switch (Phase.ofStep(session)) {
          case TORQUE, ANGLE, BEGUN, GATE, TROUBLE ->
              session.place().step() instanceof Step.Fasten
                  && FastenRules.fastener(session).set().several();
          default -> false;
        };
    return tightening && stage(session).filter(stage -> claim == claim(stage)).isPresent();
  }

  /** The stage at hand of a set; empty while its head marking is not known. */
  private static Optional<Stage> stage(Session session) {
    int at = session.tightening().stagesClosed();
    return FastenRules.fastener(session)
        .stagesFor(session.tightening().marking())
        .filter(stages -> at < stages.size())
        .map(stages -> stages.get(at));
  }

  private static Claim claim(Stage stage) {
    return stage instanceof Stage.AngleStage ? Claim.ANGLE_TURNED : Claim.TORQUE_REACHED;
  }

  /** Opens positions of a set again. */
  static Turn open(Turn turn, Positions positions) {
    Session session = turn.session();
    int stage = session.tightening().stagesClosed() + 1;
    return turn.record(new SessionEvent.PositionsTakenBack(session.ref(), stage, positions))
        .say(Say.positionsOpen(positions.numbers()))
        .prompt();
  }
}
