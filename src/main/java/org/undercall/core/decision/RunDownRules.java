package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.reply.Refuse;

/** The prevailing torque of a nut: called as it runs down, read back, and added if so stated. */
final class RunDownRules {
  private RunDownRules() {}

  static Decision called(Session session, Intent intent, Moment now) {
    Intent.OfNumber said = (Intent.OfNumber) intent;
    Stage.TorqueStage torque = (Stage.TorqueStage) session.specified();
    Optional<Decision> unit = FastenRules.refusedUnit(session, said, torque);
    if (unit.isPresent()) {
      return unit.get();
    }
    BigDecimal value = said.number().value();
    if (value.signum() <= 0 || value.compareTo(torque.target().amount()) >= 0) {
      return StepRules.refuse(session, Missing.RUN_DOWN, Refuse.runDown(torque));
    }
    return new Turn(session)
        .record(new SessionEvent.RunDownCalled(session.ref(), value))
        .prompt()
        .end(Outcome.ASKED);
  }

  static Decision keep(Session session, Pending.RunDown pending) {
    return new Turn(session)
        .record(new SessionEvent.RunDownNoted(pending.step(), pending.value()))
        .prompt()
        .end(Outcome.ACCEPTED);
  }
}
