package org.undercall.core.decision;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;

/** One bolt with one torque stage, for measurements of what becomes of heard values. */
public final class TorqueWork {
  private static final Moment NOW = new Moment(OffsetDateTime.parse("2026-11-25T08:00:00Z"), 0);

  private TorqueWork() {}

  /**
   * What became of the stage.
   *
   * @param accepted whether a value was taken for the specification
   * @param closed whether the stage was closed
   */
  public record Effect(boolean accepted, boolean closed) {}

  /** Lets the program decide on intents, in order, at a stage of so many newton metres. */
  public static Effect effect(int newtonMetres, List<Intent> intents) {
    Session session = atStage(newtonMetres);
    boolean accepted = false;
    for (Intent intent : intents) {
      List<SessionEvent> events = Decider.decide(session, intent, NOW).events();
      accepted |= events.stream().anyMatch(SessionEvent.ValueCalled.class::isInstance);
      if (events.stream().anyMatch(SessionEvent.StageClosed.class::isInstance)) {
        return new Effect(accepted, true);
      }
      session = session.after(events);
    }
    return new Effect(accepted, false);
  }

  private static Session atStage(int newtonMetres) {
    Step step =
        SampleProcedures.fasten(
            "arm",
            new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY),
            LoadCondition.ANY,
            List.of(
                new Variant(
                    Optional.empty(),
                    List.of(SampleProcedures.torque(Integer.toString(newtonMetres))))));
    Walk walk =
        Walk.of(SampleProcedures.procedure(new WorkPhase("tighten", Each.CAR, List.of(step))));
    Session session = Session.start(walk);
    session =
        session.after(
            Decider.begin(session, new SessionEvent.SessionStarted("t", "1", "0", "0")).events());
    Intent understood = new Intent.Plain(IntentKind.CAUTIONS_UNDERSTOOD);
    session = session.after(Decider.decide(session, understood, NOW).events());
    if (session.phase() != Phase.TORQUE) {
      throw new IllegalStateException("expected a torque stage, found " + session.phase());
    }
    return session;
  }
}
