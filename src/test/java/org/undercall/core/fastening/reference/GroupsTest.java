package org.undercall.core.fastening.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Groups of outside values")
class GroupsTest {

  @Test
  void allHoldAsAWholeAndNoneIsEmpty() {
    List<Check> checks = AllChecks.list();
    assertEquals(List.of(), checks.stream().filter(c -> !c.holds()).map(Check::name).toList());
    for (Group group : Group.values()) {
      long values = checks.stream().filter(c -> c.group() == group).count();
      assertTrue(values >= 8, () -> group + " has " + values);
    }
    assertTrue(checks.size() >= 1700, () -> checks.size() + " values");
  }
}
