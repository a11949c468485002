package org.undercall.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;

/** Types what each phase of the demonstration procedure waits for, until all is done. */
public final class TypedTechnician {
  private static final Map<String, String> TORQUES =
      Map.of("joint-nut", "62 lbf·ft", "bush-bolt", "65 N·m", "wheel-bolts", "135 N·m");
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final int PACE_SECONDS = 20;

  private boolean startTimer;

  /** The next phrase. */
  public String says(Session session) {
    return switch (session.phase()) {
      case BRIEFING -> "cautions understood";
      case CHECK -> "check passed";
      case MEASURE -> "three eight two";
      case READ_BACK -> "that is correct";
      case HARDWARE -> "new hardware fitted";
      case MARKING -> "head marking 10.9";
      case GATE -> "wheels carry the car";
      case LOAD_READ_BACK -> side(session) + " at ride height";
      case TORQUE -> "torque reached " + TORQUES.get(session.place().step().head().id());
      case ANGLE -> "angle turned 75";
      case WAITING -> waiting();
      case ALL_CLOSED -> "end of work";
      default -> "step completed";
    };
  }

  /** Tries to go on; if that is refused, starts the timer. */
  private String waiting() {
    startTimer = !startTimer;
    return startTimer ? "step completed" : "start the timer";
  }

  private static String side(Session session) {
    return session.place().ref().side().place();
  }

  /** Every decision of the whole work, as the program would record it, one in 20 seconds. */
  public static List<Recorded> wholeWork(Procedure procedure, String sha256) {
    TypedTechnician technician = new TypedTechnician();
    Session session = Session.start(Walk.of(procedure));
    List<Recorded> log = new ArrayList<>();
    SessionEvent.SessionStarted started =
        new SessionEvent.SessionStarted(
            procedure.about().title(), procedure.about().revision(), sha256, "test");
    Decision decision = Decider.begin(session, started);
    while (true) {
      long second = (long) PACE_SECONDS * log.size();
      Moment now = new Moment(START.plusSeconds(second), 1000 * second);
      Recorded recorded =
          new Recorded(
              log.size() + 1L, now, Optional.empty(), decision.events(), decision.reply().text());
      log.add(recorded);
      session = session.after(recorded);
      if (session.phase() == Phase.ENDED) {
        return log;
      }
      decision = Decider.decide(session, next(technician, session), now);
    }
  }

  private static Intent next(TypedTechnician technician, Session session) {
    boolean timed = session.nextTimer().isPresent();
    return timed
        ? new Intent.Plain(IntentKind.TIMER_ENDED)
        : Interpreter.interpret(
            RecognisedPhrase.typed(technician.says(session)),
            Decider.heard(session),
            Interpreter.LEAST_CONFIDENCE);
  }
}
