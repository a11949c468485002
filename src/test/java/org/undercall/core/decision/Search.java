package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;

/**
 * Every sequence of intents and restarts in a procedure, breadth first, each state once, watched by
 * {@link Promises}. A state is what the program keeps and what the promises keep; how often
 * something was not understood changes words alone, and is left to the random work.
 */
final class Search {
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

  /**
   * What was found.
   *
   * @param states how many different states
   * @param transitions how many decisions, with those of restarts
   * @param depth the most intents on the shortest way to a state
   * @param whole whether no further state can be reached
   */
  record Found(int states, long transitions, int depth, boolean whole) {
    @Override
    public String toString() {
      return "%,d states, %,d transitions, depth %d, %s"
          .formatted(states, transitions, depth, whole ? "a fixed point" : "ended there");
    }
  }

  private final List<Intent> alphabet;
  private final Map<Object, Integer> parts = new HashMap<>();
  private final Set<String> seen = new HashSet<>();
  private final Queue<Node> open = new ArrayDeque<>();
  private long transitions;

  private Search(Walk walk) {
    long onOneSide = walk.places().stream().filter(p -> p.ref().side() != Side.RIGHT).count();
    alphabet = alphabet((int) Math.max(2, onOneSide));
  }

  /**
   * Searches as far as a depth.
   *
   * @throws AssertionError naming the promise, if one is broken
   */
  static Found through(Walk walk, int depth) {
    return new Search(walk).run(walk, depth);
  }

  private Found run(Walk walk, int depth) {
    add(new Node(Session.start(walk), new Promises(walk), 0));
    int deepest = 0;
    boolean whole = true;
    while (!open.isEmpty()) {
      Node node = open.remove();
      deepest = Math.max(deepest, node.depth());
      if (node.depth() < depth) {
        expand(node);
      } else {
        whole = false;
      }
    }
    return new Found(seen.size(), transitions, deepest, whole);
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
    List<Object> kept = new ArrayList<>(s.progress().states());
    kept.addAll(List.of(s.progress().at(), s.progress().lastClosed(), s.loads()));
    kept.addAll(List.of(s.talk().mode(), s.talk().pending()));
    kept.addAll(node.promises().key());
    StringBuilder key = new StringBuilder(kept.size());
    for (Object part : kept) {
      key.append(Character.toChars(parts.computeIfAbsent(part, p -> parts.size())));
    }
    if (seen.add(key.toString())) {
      open.add(node);
    }
  }

  private static List<Intent> alphabet(int steps) {
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
          for (int step = 1; step <= steps; step++) {
            intents.add(new Intent.OfStep(kind, step));
          }
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
