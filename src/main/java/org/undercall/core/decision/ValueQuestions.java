package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.ScaleReading;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Tell;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Questions about the value of the stage at hand. */
final class ValueQuestions {
  private static final BigDecimal TENTH = new BigDecimal("0.1");

  private ValueQuestions() {}

  static Decision setting(Session session, Intent intent, Moment now) {
    return TalkRules.answer(session, intent, Tell.setting(session.stage()));
  }

  /** In foot pounds what is specified in newton metres, in newton metres what is not. */
  static Decision otherUnit(Session session, Intent intent, Moment now) {
    Torque specified = ((Stage.TorqueStage) session.stage()).target();
    TorqueUnit unit =
        specified.unit() == TorqueUnit.NEWTON_METRE
            ? TorqueUnit.POUND_FORCE_FOOT
            : TorqueUnit.NEWTON_METRE;
    Torque shown = ScaleReading.of(specified, unit, TENTH).shown();
    return TalkRules.answer(session, intent, Tell.inOtherUnit(specified, shown));
  }

  static Decision why(Session session, Intent intent, Moment now) {
    Fastener fastener = FastenRules.fastener(session);
    Stage stage = session.stage();
    Reply belongs = Tell.belongsTo(fastener, session.tightening().marking(), stage);
    Reply force =
        stage instanceof Stage.TorqueStage torque
            ? clampForce(fastener, session, torque.target())
            : Tell.angleNotKnown();
    return TalkRules.answer(session, intent, belongs.and(force));
  }

  /** The preload as a range over the friction that the stated lubrication lets expect. */
  private static Reply clampForce(Fastener fastener, Session session, Torque torque) {
    Optional<Range<Force>> preload =
        bolt(fastener, session)
            .flatMap(
                bolt ->
                    FrictionClass.expect(fastener.part().lubrication())
                        .map(friction -> LongForm.of(bolt).preload(torque, friction)));
    return preload
        .map(f -> Tell.preload(kilonewtons(f.low()), kilonewtons(f.high())))
        .orElse(Tell.preloadNotKnown());
  }

  private static Optional<Bolt> bolt(Fastener fastener, Session session) {
    return ThreadCatalogue.find(fastener.thread())
        .flatMap(
            thread ->
                session
                    .tightening()
                    .marking()
                    .flatMap(PropertyClass::of)
                    .flatMap(
                        strength ->
                            Seat.hexagon(thread).map(seat -> new Bolt(thread, strength, seat))));
  }

  private static long kilonewtons(Force force) {
    return Math.round(force.inKilonewtons());
  }
}
