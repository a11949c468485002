package org.undercall.core.check;

import java.util.List;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.DueTime;

/** The words that tell when something handed over is due. */
final class DueRule {
  private DueRule() {}

  static List<Finding> check(Spot spot) {
    return spot.step() instanceof Step.HandOver item
            && DueTime.of(item.due()).when() == DueTime.When.OTHER
        ? List.of(
            spot.at(
                "due",
                CheckRule.DUE_UNREAD,
                '"' + item.due() + '"',
                "such as before the car is driven, tomorrow, after 3 days, after 50 km"))
        : List.of();
  }
}
