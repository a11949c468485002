package org.undercall.core.check;

import java.util.List;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Procedure;

/** Rules about the cautions at the start. */
final class CautionRules {
  private CautionRules() {}

  static List<Finding> check(Procedure procedure) {
    List<Caution> cautions = procedure.cautions();
    boolean told = cautions.stream().anyMatch(CautionRules::standsCarry);
    boolean needless = cautions.stream().anyMatch(CautionRules::standsNeedless);
    String found =
        needless
            ? "one that says stands are not needed, as far as its words can be guessed"
            : cautions.size() + " of which none tells it, as far as their words can be guessed";
    String expected = "a caution such as \"Stands carry the car, never a jack alone.\"";
    return told && !needless
        ? List.of()
        : List.of(new Finding(CheckRule.NO_STANDS, "/cautions", found, expected));
  }

  /** Its brief form, all that is heard of it later on a day, need only name them. */
  private static boolean standsCarry(Caution caution) {
    return Instruction.standsCarry(caution.text()) && Instruction.namesStands(caution.inBrief());
  }

  private static boolean standsNeedless(Caution caution) {
    return Instruction.standsNeedless(caution.text())
        || Instruction.standsNeedless(caution.inBrief());
  }
}
