package org.undercall.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Step;

/** Rules about the fasteners of a wheel. */
final class WheelRules {
  private WheelRules() {}

  static List<Finding> check(Spot spot) {
    List<Finding> findings = new ArrayList<>();
    if (spot.ofWheel()) {
      List<Integer> order = spot.fastener().orElseThrow().set().order();
      int count = spot.fastener().orElseThrow().set().count();
      List<Integer> example = StarOrder.example(count);
      String expected = "a diagonal order" + (example.isEmpty() ? "" : " such as " + example);
      if (order.isEmpty() && count > 1) {
        String found = "no order for " + count + " wheel fasteners";
        findings.add(spot.at("fastener", CheckRule.WHEEL_WITHOUT_ORDER, found, expected));
      } else if (!StarOrder.diagonal(order)) {
        findings.add(
            spot.at("fastener/order", CheckRule.ORDER_NOT_DIAGONAL, order.toString(), expected));
      }
    }
    return findings;
  }

  static List<Finding> handOver(List<Spot> spots) {
    boolean handedOver = spots.stream().map(Spot::step).anyMatch(WheelRules::asksForTorque);
    Optional<Spot> wheel = spots.stream().filter(Spot::ofWheel).findFirst();
    String expected = "a hand-over such as \"Check the torque of the wheel bolts again\"";
    return handedOver
        ? List.of()
        : wheel
            .map(s -> s.at("fastener", CheckRule.NO_RETORQUE, "no hand-over for them", expected))
            .stream()
            .toList();
  }

  private static boolean asksForTorque(Step step) {
    String words = step.head().title();
    boolean again = Spot.word(words, "torque") || Spot.word(words, "retorque") || tighten(words);
    return step instanceof Step.HandOver && Spot.word(words, "wheel") && again;
  }

  private static boolean tighten(String words) {
    return Spot.word(words, "tight") || Spot.word(words, "retighten");
  }
}
