package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;

/** A technician who does what is asked and says what the session waits for. */
final class WillingTechnician {
  private WillingTechnician() {}

  /** What to say now. */
  static String answer(Session session) {
    return switch (session.phase()) {
      case BRIEFING -> "cautions understood";
      case DO, HAND_OVER -> "step completed";
      case CHECK -> "check passed";
      case MEASURE -> measured((Step.Measure) session.place().step());
      case HARDWARE -> "new hardware fitted";
      case MARKING -> "head marking " + marking(session);
      case GATE, LOAD ->
          Session.needs(session.place()) == LoadCondition.FULL_DROOP
              ? "suspension hangs free"
              : "wheels carry the car";
      case TORQUE -> "torque reached " + amount(session.stage());
      case ANGLE -> "angle turned " + amount(session.stage());
      case WAITING -> "start the timer";
      case READ_BACK -> "that is correct";
      case LOAD_READ_BACK -> side(session.side()) + condition(session);
      case NOTING -> "nothing to say";
      case ON_HOLD -> "resume the work";
      case ALL_CLOSED, CLOSED_STEP -> "end of work";
      case ENDED -> throw new IllegalStateException("the work has ended");
    };
  }

  private static String measured(Step.Measure step) {
    Optional<BigDecimal> least = step.limits().least().filter(value -> value.signum() > 0);
    BigDecimal value = least.or(step.limits()::most).orElse(BigDecimal.TEN);
    return "it reads " + value.toPlainString() + " " + step.unit().symbol();
  }

  private static HeadMarking marking(Session session) {
    Fastener fastener = ((Step.Fasten) session.place().step()).fastener();
    Variant last = fastener.variants().get(fastener.variants().size() - 1);
    return last.marking().orElseThrow();
  }

  private static String amount(Stage stage) {
    return stage.amount().toPlainString();
  }

  private static String side(Side side) {
    return switch (side) {
      case LEFT -> "left side";
      case RIGHT -> "right side";
      case CAR -> "whole car";
    };
  }

  private static String condition(Session session) {
    return Session.needs(session.place()) == LoadCondition.FULL_DROOP
        ? " at full droop"
        : " at ride height";
  }
}
