package org.undercall.core.decision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.MotionRatio;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Units;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Side;

/** The load condition: said with what shows it, repeated, read back with the side, confirmed. */
final class LoadRules {
  private LoadRules() {}

  static Decision wheelsCarry(Session session, Intent intent, Moment now) {
    return otherSide(session, intent, LoadCondition.RIDE_HEIGHT)
        .orElseGet(() -> wheelsCarry(session));
  }

  private static Decision wheelsCarry(Session session) {
    if (!session.car().hasOn(session.place().wheels())) {
      return refuse(session, Missing.WHEEL_ON, Refuse.wheelOff());
    }
    return ask(session, LoadCondition.RIDE_HEIGHT, LoadProof.WHEELS_CARRY_THE_CAR);
  }

  static Decision hangsFree(Session session, Intent intent, Moment now) {
    return otherSide(session, intent, LoadCondition.FULL_DROOP)
        .orElseGet(() -> ask(session, LoadCondition.FULL_DROOP, LoadProof.SUSPENSION_HANGS_FREE));
  }

  static Decision knuckleJacked(Session session, Intent intent, Moment now) {
    return otherSide(session, intent, LoadCondition.RIDE_HEIGHT)
        .orElseGet(() -> knuckleJacked(session));
  }

  private static Decision knuckleJacked(Session session) {
    if (session.side() == Side.CAR) {
      return refuse(session, Missing.ONE_SIDE, Refuse.oneSide());
    }
    LoadProof proof = LoadProof.KNUCKLE_JACKED_BODY_LIFTING;
    boolean noted =
        session.walk().procedure().rideHeight().isPresent()
            && session.loads().rideHeights().containsKey(session.side());
    if (!noted) {
      return ask(session, LoadCondition.RIDE_HEIGHT, proof, Say.jackedCaution());
    }
    return new Turn(session)
        .record(
            new SessionEvent.LoadRefused(session.side(), Missing.HEIGHT_MEASURED, Optional.empty()))
        .say(Say.loadHeard(proof, session.side()))
        .say(Say.jackedCaution())
        .say(Ask.archHeight())
        .end(Outcome.ASKED);
  }

  /** A measured wheel-centre-to-arch height, compared with the one noted before the work. */
  static Decision archHeight(Session session, Intent intent, Moment now) {
    Intent.OfNumber number = (Intent.OfNumber) intent;
    Side side = session.side();
    Measure noted = session.loads().rideHeights().get(side);
    Optional<RideHeight> rideHeight = session.walk().procedure().rideHeight();
    if (number.unit().orElse(SpokenUnit.MILLIMETRES) != SpokenUnit.MILLIMETRES) {
      return refuse(session, Missing.OTHER_UNIT, Refuse.heightInMillimetres());
    }
    if (noted == null || rideHeight.isEmpty()) {
      return refuse(session, Missing.HEIGHT_NOTED_BEFORE, Refuse.noHeightNoted(side));
    }
    Measure height = new Measure(number.number().value(), MeasureUnit.MILLIMETRE);
    BigDecimal difference = height.amount().subtract(noted.amount());
    Optional<BigDecimal> preset = rideHeight.get().arm().map(arm -> preset(arm, noted, height));
    Reply twist = preset.map(Say::preset).orElse(Reply.SILENCE);
    if (difference.abs().compareTo(rideHeight.get().plusMinus()) > 0
        || tooMuch(rideHeight, preset)) {
      Turn turn =
          dropLoad(session)
              .record(
                  new SessionEvent.LoadRefused(
                      side, Missing.HEIGHT_WITHIN_TOLERANCE, Optional.of(height)))
              .say(Say.heightOutside(height, difference))
              .say(twist)
              .loadChanged(LoadChange.HEIGHT_OUTSIDE);
      return (turn.session().lacksLoad() ? turn.interrupt() : turn).end(Outcome.REFUSED);
    }
    return contradicted(session, side, LoadCondition.RIDE_HEIGHT)
        .record(
            new SessionEvent.LoadCalled(
                side,
                LoadCondition.RIDE_HEIGHT,
                LoadProof.ARCH_HEIGHT_WITHIN_TOLERANCE,
                Optional.of(height)))
        .say(Say.heightDifference(height, difference))
        .say(twist)
        .say(Ask.readBackLoad(side, LoadCondition.RIDE_HEIGHT))
        .end(Outcome.ASKED);
  }

  /** The twist in degrees, to a tenth, that the bush keeps if it is tightened at this height. */
  private static BigDecimal preset(RideHeight.Arm arm, Measure noted, Measure now) {
    ArmSwing swing =
        new ArmSwing(
            new Length(arm.length().doubleValue()),
            Height.mm(arm.ride().doubleValue()),
            new Range<>(Height.mm(arm.droop().doubleValue()), Height.mm(arm.bump().doubleValue())));
    MotionRatio ratio = new MotionRatio(arm.ratio().doubleValue());
    Height joint = swing.heightFor(Units.length(noted), Units.length(now), ratio);
    double reach = arm.length().doubleValue();
    double within = Math.max(-reach, Math.min(reach, joint.millimetres()));
    double degrees = swing.tightenedAt(Height.mm(within)).atRide().degrees();
    return BigDecimal.valueOf(degrees).setScale(1, RoundingMode.HALF_UP);
  }

  private static boolean tooMuch(Optional<RideHeight> rideHeight, Optional<BigDecimal> preset) {
    return rideHeight
        .flatMap(RideHeight::arm)
        .filter(arm -> preset.filter(p -> p.abs().compareTo(arm.presetLimit()) > 0).isPresent())
        .isPresent();
  }

  /** The technician reads the condition back; it counts only for the side that was repeated. */
  static Decision readBack(Session session, Intent intent, Moment now) {
    Pending.Load load = (Pending.Load) session.talk().pending().orElseThrow();
    Side read = ((Intent.OfSide) intent).side();
    LoadCondition condition =
        intent.kind() == IntentKind.RIDE_HEIGHT_READ_BACK
            ? LoadCondition.RIDE_HEIGHT
            : LoadCondition.FULL_DROOP;
    if (read != load.side() || condition != load.condition()) {
      Reply other =
          read != load.side()
              ? Refuse.otherSide(read, load.side())
              : Refuse.otherCondition(condition, load.condition());
      return StepRules.refuse(session, Missing.LOAD_READ_BACK, other);
    }
    Turn turn =
        new Turn(session)
            .record(
                new SessionEvent.LoadConfirmed(
                    load.side(), load.condition(), load.proof(), load.height()))
            .say(Say.loadConfirmed(load.side(), load.condition()));
    turn.recall(Recall.possible(session, turn.session()));
    return goOn(turn).end(Outcome.ACCEPTED);
  }

  /** After a confirmation: close a load step it fulfils, or offer what waited for it. */
  private static Turn goOn(Turn turn) {
    Session session = turn.session();
    List<Walk.Place> waiting =
        session.waiting().stream().map(session.walk().places()::get).toList();
    if (!waiting.isEmpty()) {
      turn.say(Say.waiting(waiting));
    }
    if (session.phase() == Phase.LOAD
        && session.loads().holds(session.side(), Session.needs(session.place()))
        && StepRules.tooEarly(session).isEmpty()) {
      return turn.close();
    }
    boolean atHand = session.place().step() instanceof Step.Fasten && !session.state().closed();
    return waiting.isEmpty() || atHand ? turn.prompt() : turn.moveOn();
  }

  /** A turn that begins by cancelling a confirmation of another condition. */
  private static Turn contradicted(Session session, Side side, LoadCondition condition) {
    boolean other =
        session.loads().confirmed().entrySet().stream()
            .anyMatch(
                known ->
                    (known.getKey() == side || known.getKey() == Side.CAR || side == Side.CAR)
                        && known.getValue().condition() != condition);
    Turn turn = new Turn(session);
    return other ? turn.loadChanged(LoadChange.CONTRADICTED) : turn;
  }

  /**
   * The refusal of what was said of another side than the one at hand; empty if it was not. It
   * still speaks against what is known of that side.
   */
  private static Optional<Decision> otherSide(
      Session session, Intent intent, LoadCondition condition) {
    if (!(intent instanceof Intent.OfSide said) || said.side() == session.side()) {
      return Optional.empty();
    }
    return Optional.of(
        contradicted(session, said.side(), condition)
            .record(new SessionEvent.LoadRefused(session.side(), Missing.SIDE, Optional.empty()))
            .say(Refuse.otherSide(said.side(), session.side()))
            .refused());
  }

  /** A turn that begins by dropping the load that waits to be read back, if one does. */
  private static Turn dropLoad(Session session) {
    Turn turn = new Turn(session);
    return session.talk().pending().orElse(null) instanceof Pending.Load ? turn.drop() : turn;
  }

  private static Decision ask(Session session, LoadCondition condition, LoadProof proof) {
    return ask(session, condition, proof, Reply.SILENCE);
  }

  private static Decision ask(
      Session session, LoadCondition condition, LoadProof proof, Reply caution) {
    Side side = session.side();
    return contradicted(session, side, condition)
        .record(new SessionEvent.LoadCalled(side, condition, proof, Optional.empty()))
        .say(Say.loadHeard(proof, side))
        .say(caution)
        .say(Ask.readBackLoad(side, condition))
        .end(Outcome.ASKED);
  }

  private static Decision refuse(Session session, Missing missing, Reply reply) {
    return new Turn(session)
        .record(new SessionEvent.LoadRefused(session.side(), missing, Optional.empty()))
        .say(reply)
        .refused();
  }
}
