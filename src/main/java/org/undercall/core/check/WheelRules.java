package org.undercall.core.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.procedure.Again;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Kebab;

/** Rules about the fasteners of a wheel. */
final class WheelRules {
  private static final Set<Lubrication> SLIPPERY =
      EnumSet.of(Lubrication.OILED, Lubrication.GREASED, Lubrication.PASTE);

  private WheelRules() {}

  static List<Finding> check(Spot spot) {
    List<Finding> findings = new ArrayList<>();
    WheelGuess wheel = spot.wheel();
    if (wheel.wheel()) {
      Fastener fastener = spot.fastener().orElseThrow();
      order(spot, fastener, wheel).ifPresent(findings::add);
      if (SLIPPERY.contains(fastener.part().lubrication())) {
        String found = wheel.told('"' + Kebab.of(fastener.part().lubrication()) + '"', fastener);
        findings.add(spot.at("fastener/lubrication", CheckRule.GREASED_WHEEL, found, "\"dry\""));
      }
      if (wheel == WheelGuess.BY_OTHER_WORDS) {
        String found = wheel.told("no \"wheel\"", fastener);
        findings.add(
            spot.at("fastener/name", CheckRule.WHEEL_NOT_STATED, found, "\"wheel\": true"));
      }
    }
    return findings;
  }

  private static Optional<Finding> order(Spot spot, Fastener fastener, WheelGuess wheel) {
    List<Integer> order = fastener.set().order();
    int count = fastener.set().count();
    List<Integer> example = StarOrder.example(count);
    String expected = "a diagonal order" + (example.isEmpty() ? "" : " such as " + example);
    if (order.isEmpty() && count > 1) {
      String found = wheel.told("no order for " + count + " wheel fasteners", fastener);
      return Optional.of(spot.at("fastener", CheckRule.WHEEL_WITHOUT_ORDER, found, expected));
    }
    String found = wheel.told(order.toString(), fastener);
    return StarOrder.diagonal(order)
        ? Optional.empty()
        : Optional.of(spot.at("fastener/order", CheckRule.ORDER_NOT_DIAGONAL, found, expected));
  }

  static List<Finding> handOver(List<Spot> spots) {
    boolean handedOver = spots.stream().map(Spot::step).anyMatch(WheelRules::asksForTorque);
    Optional<Spot> wheel = spots.stream().filter(s -> s.wheel().wheel()).findFirst();
    String expected =
        "a hand-over such as \"Check the torque of the wheel bolts again\", or the maker's"
            + " statement that none is needed";
    return handedOver
        ? List.of()
        : wheel
            .map(
                s ->
                    s.at(
                        "fastener",
                        CheckRule.NO_RETORQUE,
                        s.wheel()
                            .told(
                                "no hand-over tells it, as far as titles can be guessed",
                                s.fastener().orElseThrow()),
                        expected))
            .stream()
            .toList();
  }

  private static boolean asksForTorque(Step step) {
    return step instanceof Step.HandOver later
        && Again.checksWheels(later.head().title() + " " + later.due());
  }
}
