package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.check.TorqueToExpect;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.FinalTorque;
import org.undercall.core.reply.Refuse;
import org.undercall.core.reply.Say;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TorqueHint;
import org.undercall.core.term.TorqueUnit;

/** The torque that a wrench shows after the last angle. It closes nothing. */
final class FinalTorqueRules {
  private FinalTorqueRules() {}

  /** A torque called for the fastener that was closed last; read back before it is kept. */
  static Decision called(Session session, Intent intent, Moment now) {
    Intent.OfNumber said = (Intent.OfNumber) intent;
    Optional<StepRef> last =
        session.progress().lastClosed().filter(ref -> angle(session, ref).isPresent());
    if (last.isEmpty()) {
      return StepRules.refuse(session, Missing.CLOSED_ANGLE, Refuse.noAngleClosed());
    }
    TorqueUnit unit = unit(session, last.get());
    boolean other = said.unit().isPresent() && !said.unit().equals(FastenRules.spoken(unit));
    boolean lacking = said.unit().isEmpty() && session.walk().procedure().mixesUnits();
    if (other || lacking) {
      return StepRules.refuse(session, Missing.UNIT, Refuse.unit(unit));
    }
    return new Turn(session)
        .record(new SessionEvent.FinalTorqueCalled(last.get(), said.number().value()))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** Keeps the torque, and says what it hints at where there is a band. */
  static Decision keep(Session session, Pending.FinalTorque read) {
    Turn turn =
        new Turn(session).record(new SessionEvent.FinalTorqueNoted(read.step(), read.value()));
    Optional<Stage.AngleStage.Band> stated =
        angle(session, read.step()).flatMap(Stage.AngleStage::finalTorque);
    BandSource source = stated.isPresent() ? BandSource.STATED : BandSource.COMPUTED;
    Optional<Stage.AngleStage.Band> band = stated.or(() -> computed(session, read.step()));
    if (band.isEmpty()) {
      return turn.say(Say.kept()).end(Outcome.ACCEPTED);
    }
    TorqueHint hint = band.get().hint(read.value());
    return turn.record(
            new SessionEvent.FinalTorqueJudged(
                read.step(), hint, band.get().least().amount(), band.get().most().amount(), source))
        .say(FinalTorque.judged(band.get(), source, hint))
        .end(Outcome.ACCEPTED);
  }

  /** The band that is computed from the sizes of the joint; empty if they are not stated. */
  private static Optional<Stage.AngleStage.Band> computed(Session session, StepRef ref) {
    int index = session.walk().indexOf(ref);
    return session.walk().places().get(index).step() instanceof Step.Fasten fasten
        ? TorqueToExpect.of(
            fasten.fastener(),
            session.progress().states().get(index).tightening().marking(),
            session.walk().procedure().tools())
        : Optional.empty();
  }

  /** The unit of the torques of a fastener. */
  static TorqueUnit unit(Session session, StepRef ref) {
    return stages(session, ref).stream()
        .filter(Stage.TorqueStage.class::isInstance)
        .map(stage -> ((Stage.TorqueStage) stage).target().unit())
        .findFirst()
        .orElseThrow();
  }

  /** The last angle of a closed fastener; empty for any other step. */
  static Optional<Stage.AngleStage> angle(Session session, StepRef ref) {
    int index = session.walk().indexOf(ref);
    List<Stage> stages = stages(session, ref);
    boolean closed = index >= 0 && session.progress().states().get(index).closed();
    return closed
            && !stages.isEmpty()
            && stages.get(stages.size() - 1) instanceof Stage.AngleStage angle
        ? Optional.of(angle)
        : Optional.empty();
  }

  private static List<Stage> stages(Session session, StepRef ref) {
    int index = session.walk().indexOf(ref);
    if (index < 0) {
      return List.of();
    }
    Walk.Place place = session.walk().places().get(index);
    return place.step() instanceof Step.Fasten fasten
        ? fasten
            .fastener()
            .stagesFor(session.progress().states().get(index).tightening().marking())
            .orElse(List.of())
        : List.of();
  }
}
