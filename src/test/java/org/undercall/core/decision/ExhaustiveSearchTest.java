package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;

/**
 * Every sequence of intents and restarts, until no new state is found, on a small two-sided
 * procedure: a bonded bush bolt on each side, one-time-use, with two head markings.
 */
class ExhaustiveSearchTest {
  private static final int DEPTH = Integer.getInteger("undercall.depth", 99);
  private static final Moment NOW =
      new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);

  /** Kinds that only ask, wait or note, or are another word for one that is in. */
  private static final Set<IntentKind> LEFT_OUT =
      EnumSet.of(
          IntentKind.REPEAT,
          IntentKind.WHAT_IS_LEFT,
          IntentKind.WHERE_AM_I,
          IntentKind.NOTE,
          IntentKind.NOTE_TEXT,
          IntentKind.TIMER_START,
          IntentKind.TIMER_LEFT,
          IntentKind.TIMER_SET,
          IntentKind.TIMER_CANCEL,
          IntentKind.TIMER_ENDED,
          IntentKind.STEP_TIME,
          IntentKind.WORK_TIME,
          IntentKind.NOTHING_HEARD,
          IntentKind.CAR_LOWERED,
          IntentKind.JACK_MOVED,
          IntentKind.ARCH_HEIGHT,
          IntentKind.WRENCH_SETTING,
          IntentKind.OTHER_UNIT,
          IntentKind.WHY_THIS_VALUE);

  private record Node(Session session, Promises promises, int depth) {}

  private final List<Intent> alphabet = alphabet();
  private final Set<Object> seen = new HashSet<>();
  private final Queue<Node> open = new ArrayDeque<>();
  private long transitions;

  @Test
  void noSequenceOfIntentsBreaksAPromise() {
    Walk walk = SampleProcedures.bushOnBothSides();
    add(new Node(Session.start(walk), new Promises(walk), 0));
    int deepest = 0;
    boolean bounded = false;
    while (!open.isEmpty()) {
      Node node = open.remove();
      deepest = Math.max(deepest, node.depth());
      if (node.depth() == DEPTH) {
        bounded = true;
        continue;
      }
      expand(node);
    }
    System.out.printf(
        "exhaustive search: %,d states, %,d transitions, depth %d (%s)%n",
        seen.size(), transitions, deepest, bounded ? "bounded" : "fixed point");
    assertTrue(seen.size() > 1000, "the search went somewhere");
    assertTrue(bounded == (deepest >= DEPTH), "the search ended at its depth or at a fixed point");
  }

  private void expand(Node node) {
    for (Intent intent : alphabet) {
      if (!Table.rule(node.session().phase(), intent.kind()).heard()) {
        continue;
      }
      Decision decision = Decider.decide(node.session(), intent, NOW);
      Promises promises = node.promises().copy();
      promises.watch(intent, decision);
      RandomWorkTest.requirePossible(node.session(), decision);
      transitions++;
      add(new Node(node.session().after(decision.events()), promises, node.depth() + 1));
    }
    restart(node, 60);
    restart(node, 3600);
  }

  private void restart(Node node, long secondsAway) {
    Decision up = Decider.takeUp(node.session(), "test", Duration.ofSeconds(secondsAway));
    Promises promises = node.promises().copy();
    promises.restarted(up, secondsAway);
    RandomWorkTest.requirePossible(node.session(), up);
    transitions++;
    add(new Node(node.session().after(up.events()), promises, node.depth() + 1));
  }

  private void add(Node node) {
    Session s = node.session();
    // How often something was not understood changes words alone, and is left to the random work.
    Object key =
        List.of(
            s.progress(), s.loads(), s.talk().mode(), s.talk().pending(), node.promises().key());
    if (seen.add(key)) {
      open.add(node);
    }
  }

  private static List<Intent> alphabet() {
    List<Intent> intents = new ArrayList<>();
    for (IntentKind kind : EnumSet.complementOf(EnumSet.copyOf(LEFT_OUT))) {
      switch (kind) {
        case VALUE_CALLED, TORQUE_COMPLETED, ANGLE_COMPLETED -> {
          for (String value : List.of("52", "60")) {
            intents.add(number(kind, value));
          }
        }
        case SIDE_CHANGE, RIDE_HEIGHT_READ_BACK, FULL_DROOP_READ_BACK -> {
          intents.add(new Intent.OfSide(kind, Side.LEFT));
          intents.add(new Intent.OfSide(kind, Side.RIGHT));
        }
        case GO_TO_STEP -> {
          intents.add(new Intent.OfStep(kind, 1));
          intents.add(new Intent.OfStep(kind, 2));
        }
        case HEAD_MARKING -> {
          intents.add(new Intent.Marking(new HeadMarking("8.8")));
          intents.add(new Intent.Marking(new HeadMarking("10.9")));
          intents.add(new Intent.Marking(new HeadMarking("12.9")));
        }
        case CLOCK_JUMPED -> intents.add(new Intent.ClockJumped(7_200_000, 7_200_000));
        case PUT_OFF -> intents.add(new Intent.PutOff(PutOffReason.RIDE_HEIGHT));
        case UNCLEAR -> intents.add(new Intent.Unclear(Intent.Unclear.Reason.NOT_A_PHRASE));
        default -> intents.add(new Intent.Plain(kind));
      }
    }
    intents.add(new Intent.Plain(IntentKind.TORQUE_COMPLETED));
    intents.add(new Intent.Plain(IntentKind.ANGLE_COMPLETED));
    return intents;
  }

  private static Intent number(IntentKind kind, String value) {
    SpokenNumber number =
        new SpokenNumber(new BigDecimal(value), SpokenNumber.Style.DIGIT_BY_DIGIT);
    return new Intent.OfNumber(kind, number, Optional.empty());
  }
}
