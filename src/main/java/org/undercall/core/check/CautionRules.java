package org.undercall.core.check;

import java.util.List;
import org.undercall.core.procedure.Procedure;

/** Rules about the cautions at the start. */
final class CautionRules {
  private CautionRules() {}

  static List<Finding> check(Procedure procedure) {
    List<String> cautions = procedure.cautions();
    boolean told = cautions.stream().anyMatch(Instruction::standsCarry);
    boolean needless = cautions.stream().anyMatch(Instruction::standsNeedless);
    String found =
        needless
            ? "one that says stands are not needed, as far as its words can be guessed"
            : cautions.size() + " of which none tells it, as far as their words can be guessed";
    String expected = "a caution such as \"Stands carry the car, never a jack alone.\"";
    return told && !needless
        ? List.of()
        : List.of(new Finding(CheckRule.NO_STANDS, "/cautions", found, expected));
  }
}
