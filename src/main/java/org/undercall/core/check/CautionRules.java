package org.undercall.core.check;

import java.util.List;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Procedure;

/** Rules about the cautions at the start. */
final class CautionRules {
  private CautionRules() {}

  static List<Finding> check(Procedure procedure) {
    boolean stands = procedure.cautions().stream().anyMatch(CautionRules::namesStands);
    String found = procedure.cautions().size() + " without the word \"stands\"";
    String expected = "a caution such as \"Stands carry the car, never a jack alone.\"";
    return stands
        ? List.of()
        : List.of(new Finding(CheckRule.NO_STANDS, "/cautions", found, expected));
  }

  /** In its brief form too, which is all that is heard of it later on a day. */
  private static boolean namesStands(Caution caution) {
    return Spot.word(caution.text(), "stands") && Spot.word(caution.inBrief(), "stands");
  }
}
