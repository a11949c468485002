package org.undercall.core.decision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.procedure.Step;

/** Values that a pause may have cut in two, judged by the value that is waited for. */
public final class CutValue {
  /** Digits before the point where nothing tells how many a value has. */
  public static final int USUAL_DIGITS = 3;

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private CutValue() {}

  /** Whether what was said has too few digits for what is waited for, so that more may follow. */
  public static boolean mayGoOn(Session session, Intent said) {
    return digits(session).filter(most -> mayGoOn(said, most)).isPresent()
        && number(said).filter(n -> !fits(session, n.value())).isPresent();
  }

  /**
   * Whether what was said with a pause in it is one value. A lone digit before the pause is as
   * likely to be chatter, so then the value must be the one that is waited for.
   */
  public static boolean isOne(Session session, Intent first, Intent whole) {
    if (!(whole instanceof Intent.OfNumber value)) {
      return false;
    }
    BigDecimal amount = value.number().value();
    return first instanceof Intent.Unclear
        ? fits(session, amount)
        : digits(session).filter(most -> digits(amount) == most).isPresent();
  }

  /** The same where only the most digits of a value are known. */
  public static boolean isOne(Intent whole, int most) {
    return whole instanceof Intent.OfNumber value && digits(value.number().value()) <= most;
  }

  /** Whether what was said has fewer digits than this, or ends with a full ten in words. */
  public static boolean mayGoOn(Intent said, int most) {
    Optional<SpokenNumber> number = number(said);
    if (number.isEmpty() || number.get().value().scale() > 0) {
      return false;
    }
    BigDecimal value = number.get().value();
    return digits(value) < most || (digits(value) == most && takesDigit(number.get()));
  }

  /** Whether a digit can follow a number in words: after "one hundred seventy", not after "ten". */
  private static boolean takesDigit(SpokenNumber number) {
    int value = number.value().remainder(HUNDRED).intValueExact();
    return number.style() == SpokenNumber.Style.WORDS
        && value % 10 == 0
        && (value == 0 || value >= 20);
  }

  /** A number without its unit, which would end it. */
  private static Optional<SpokenNumber> number(Intent said) {
    if (said instanceof Intent.Unclear unclear) {
      return unclear.reason() == Intent.Unclear.Reason.LONE_NUMBER
          ? unclear.number()
          : Optional.empty();
    }
    return said instanceof Intent.OfNumber value && value.unit().isEmpty()
        ? Optional.of(value.number())
        : Optional.empty();
  }

  /** How many digits before the point are waited for; empty if that is not known. */
  private static Optional<Integer> digits(Session session) {
    return switch (Phase.ofStep(session)) {
      case TORQUE, ANGLE -> Optional.of(digits(session.stage().amount()));
      case MEASURE -> {
        Step.Limits limits = ((Step.Measure) session.place().step()).limits();
        yield limits.least().or(limits::most).filter(l -> l.signum() > 0).map(CutValue::digits);
      }
      default -> Optional.empty();
    };
  }

  private static boolean fits(Session session, BigDecimal value) {
    return switch (Phase.ofStep(session)) {
      case TORQUE, ANGLE -> session.stage().isReachedBy(value);
      case MEASURE -> ((Step.Measure) session.place().step()).limits().hold(value);
      default -> false;
    };
  }

  private static int digits(BigDecimal value) {
    return value.setScale(0, RoundingMode.DOWN).abs().toPlainString().length();
  }
}
