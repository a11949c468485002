package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Walk;

/**
 * Every sequence of intents and restarts, until no new state is found or to a depth, on small
 * two-sided procedures.
 */
class ExhaustiveSearchTest {
  private static final int DEPTH = Integer.getInteger("undercall.depth", 8);
  private static final int FASTENERS = Integer.getInteger("undercall.fasteners", 1);

  /** Putting a step off is left out with three fasteners a side: it makes ten times the states. */
  private static final Set<IntentKind> WITHOUT =
      FASTENERS < 3 ? Set.of() : Set.of(IntentKind.PUT_OFF);

  /** Left out at bush bolts unless all are wanted: they are in the search of plain fasteners. */
  private static final Set<IntentKind> OTHERS =
      Boolean.getBoolean("undercall.everyKind")
          ? Set.of()
          : Set.of(
              IntentKind.PUT_OFF, IntentKind.FITTED_SNUG, IntentKind.HOLD, IntentKind.STEP_BACK);

  /** Kinds that change nothing there, or that another one stands for. */
  private static final Set<IntentKind> SAME =
      Set.of(
          IntentKind.PUT_OFF,
          IntentKind.SIDE_CHANGE,
          IntentKind.HEAD_MARKING,
          IntentKind.NEW_HARDWARE,
          IntentKind.CHECK_PASSED,
          IntentKind.CHECK_FAILED,
          IntentKind.FITTED_SNUG,
          IntentKind.STEP_BACK,
          IntentKind.UNCLEAR);

  @Test
  void noSequenceBreaksAPromiseAtABushBoltOnEachSide() {
    Search.Found found = Search.through(SampleProcedures.bushOnBothSides(), 99, OTHERS);
    System.out.println("exhaustive search, a bush bolt on each side: " + found);
    assertTrue(found.whole(), "every state was found");
    assertTrue(found.states() > 1000, "the search went somewhere");
  }

  @Test
  void noneDoesAtPlainFastenersOfEachLoadOnEachSide() {
    Search.Found found = Search.through(SampleProcedures.plainOnBothSides(FASTENERS), 99, WITHOUT);
    System.out.printf(
        "exhaustive search, plain fasteners, %d on each side: %s%n", FASTENERS, found);
    assertTrue(found.whole(), "every state was found");
    assertTrue(found.states() > 1000, "the search went somewhere");
  }

  @Test
  void noneDoesAtAWheelABushBoltWithAnAngleAndWorkThatUndoesIt() {
    whole("wheel, bush bolt and what undoes it", SampleProcedures.wheelAndBush());
  }

  @Test
  void noneDoesAtASetOfThreeWithAnAngle() {
    whole("a set of three", SampleProcedures.setOf(3));
  }

  @Test
  void noneDoesAtASetOfTwoAtWhichSomethingGoesWrong() {
    whole("a set of two with something wrong", SampleProcedures.setOf(2));
  }

  @Test
  void noneDoesAtABoltWithTwoWrenches() {
    whole("a bolt and two wrenches", SampleProcedures.withTwoWrenches());
  }

  @Test
  void noneDoesAtANutAndALookThatASecondPersonMustSee() {
    whole("a nut and a look seen by a second person", SampleProcedures.seenByASecond());
  }

  private static void whole(String what, Walk walk) {
    Search.Found found = Search.through(walk, 99, SAME);
    System.out.println("exhaustive search, " + what + ": " + found);
    assertTrue(found.whole(), "every state was found");
    assertTrue(found.states() > 1000, "the search went somewhere");
  }

  @Test
  void noneAsDeepAsThisAtThreeFastenersOfEachLoadOnEachSide() {
    Search.Found found = Search.through(SampleProcedures.threeOnBothSides(), DEPTH, Set.of());
    System.out.println("exhaustive search, three fasteners on each side: " + found);
    assertEquals(DEPTH, found.depth());
  }
}
