package org.undercall.core.fastening.reference;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Every outside value next to ours. */
final class AllChecks {
  private AllChecks() {}

  static List<Check> list() {
    return Stream.of(
            StrengthChecks.all(),
            RangeChecks.all(),
            PreloadChecks.all(),
            JointChecks.all(),
            ToolChecks.all(),
            UnitChecks.all(),
            SuspensionChecks.all(),
            Ledger.checks())
        .flatMap(Function.identity())
        .toList();
  }
}
