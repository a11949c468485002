package org.undercall.core.difference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** The fields of one part of a procedure with their values, by what they are called. */
final class Facts {
  private final Map<String, Fact> all = new LinkedHashMap<>();

  Map<String, Fact> all() {
    return all;
  }

  /** Puts a value; none if it is blank. */
  Facts put(Weight weight, String what, String shown) {
    all.put(what, new Fact(weight, shown, Optional.empty()));
    return this;
  }

  Facts put(Weight weight, String what, Optional<String> shown) {
    return put(weight, what, shown.orElse(""));
  }

  Facts put(Weight weight, String what, boolean yes) {
    return put(weight, what, yes ? "yes" : "no");
  }

  Facts put(Weight weight, String what, Enum<?> word) {
    return put(weight, what, Kebab.of(word));
  }

  /** Puts several values in their order. */
  Facts put(Weight weight, String what, List<String> several) {
    return put(
        weight,
        what,
        several.stream().map(text -> text.replace("|", "||")).collect(Collectors.joining(" | ")));
  }

  /** Puts an amount with what follows it, such as a unit. */
  Facts put(Weight weight, String what, BigDecimal amount, String unit) {
    return put(weight, what, number(amount) + unit);
  }

  Facts amount(Weight weight, String what, Optional<BigDecimal> amount, String unit) {
    return put(weight, what, amount.map(a -> number(a) + unit));
  }

  Facts torque(Weight weight, String what, Torque torque) {
    return moment(weight, what, torque.amount(), torque.unit());
  }

  /** Puts an amount of torque, which may be zero. */
  Facts moment(Weight weight, String what, BigDecimal amount, TorqueUnit unit) {
    String shown = number(amount) + " " + unit.symbol();
    Fact.Moment moment = new Fact.Moment(plain(amount), unit);
    all.put(what, new Fact(weight, shown, Optional.of(moment)));
    return this;
  }

  /** A time in whole minutes, or in seconds. */
  static String time(Duration time) {
    boolean minutes = time.equals(Duration.ofMinutes(time.toMinutes()));
    return minutes
        ? time.toMinutes() + " min"
        : number(BigDecimal.valueOf(time.toMillis(), 3)) + " s";
  }

  static String number(BigDecimal amount) {
    return plain(amount).toPlainString();
  }

  private static BigDecimal plain(BigDecimal amount) {
    BigDecimal stripped = amount.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
  }
}
