package org.undercall.core.fastening.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The rows of the tables that are accounted for")
class LedgerTest {

  static Stream<Arguments> wrong() {
    return Ledger.uses(RowUse.Fate.WRONG).map(use -> argumentSet(use.id(), use));
  }

  static Stream<Arguments> examples() {
    return Examples.all().stream().map(example -> argumentSet(example.id(), example));
  }

  @Test
  void areEachCheckedOrAnInputOrTellWhyNot() {
    Ledger.all()
        .forEach(
            (table, uses) -> {
              assertEquals(Rows.of(table).size(), uses.size(), table);
              uses.forEach(use -> assertTrue(told(use), table + " " + use.id()));
            });
  }

  private static boolean told(RowUse use) {
    return switch (use.fate()) {
      case CHECKED -> !use.checks().isEmpty() && use.reason().isEmpty();
      case WRONG -> use.checks().size() == 1 && !use.reason().isEmpty();
      case LEFT -> use.checks().isEmpty() && !use.reason().isEmpty();
      case INPUT, JUDGED -> true;
    };
  }

  @Test
  void areReadAndManyAreChecked() {
    List<Check> read =
        Ledger.checks().filter(check -> check.citation().basis() == Basis.READ).toList();
    assertTrue(read.size() >= 900, read.size() + " read");
  }

  @ParameterizedTest(name = "{argumentSetName}")
  @MethodSource("wrong")
  void differFromOursWhereTheyAreMisprinted(RowUse use) {
    double deviation = use.checks().get(0).deviation();
    assertTrue(Math.abs(deviation) > 0.8, deviation + " %");
  }

  @ParameterizedTest(name = "{argumentSetName}")
  @MethodSource("examples")
  void holdTheirWorkedExamplesWhole(Examples example) {
    assertFalse(example.results().isEmpty());
    boolean reasoned =
        example.results().stream()
            .filter(use -> use.fate() == RowUse.Fate.LEFT)
            .noneMatch(use -> use.reason().isEmpty());
    assertTrue(example.whole() || reasoned, example.id());
    assertTrue(Math.abs(example.worst()) <= Group.EXAMPLES.tolerance(), example.worst() + " %");
  }

  @Test
  void holdTwentyExamplesOrMoreThatAreWhole() {
    long whole = Examples.all().stream().filter(Examples::whole).count();
    assertTrue(whole >= 20, whole + " whole");
  }
}
