package org.undercall.core.decision;

import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Walk;

/**
 * The ways from phase to phase that random runs took, with the intents that led there.
 *
 * @param ways by their arrow in the diagram, in its order
 */
record Ways(Map<String, Set<IntentKind>> ways) {
  static final int INTENTS = 900_000;

  /** What works alike in most phases, and would hide the rest of the diagram. */
  static final Set<IntentKind> EVERYWHERE =
      EnumSet.of(
          IntentKind.GO_TO_STEP,
          IntentKind.STEP_BACK,
          IntentKind.SIDE_CHANGE,
          IntentKind.PUT_OFF,
          IntentKind.REOPEN,
          IntentKind.CANCEL_THAT,
          IntentKind.NOTE,
          IntentKind.NOTE_TEXT,
          IntentKind.HOLD,
          IntentKind.RESUME,
          IntentKind.READ_BACK_WRONG,
          IntentKind.CORRECTED,
          IntentKind.NO,
          IntentKind.END_OF_WORK);

  /** Where a confirmed load leads when it was waited for. */
  private static final Set<Phase> AFTER_LOAD =
      EnumSet.of(Phase.TORQUE, Phase.GATE, Phase.LOAD, Phase.ALL_CLOSED);

  private static final Set<IntentKind> LOAD_CHANGES =
      EnumSet.of(IntentKind.CAR_RAISED, IntentKind.CAR_LOWERED, IntentKind.JACK_MOVED);

  private static final Set<IntentKind> LOAD_CALLS =
      EnumSet.of(
          IntentKind.WHEELS_CARRY,
          IntentKind.KNUCKLE_JACKED,
          IntentKind.ARCH_HEIGHT,
          IntentKind.HANGS_FREE);

  private static final String NEXT = "next_step";

  static Ways taken() {
    Ways ways = new Ways(new TreeMap<>());
    SplittableRandom random = new SplittableRandom(1);
    for (int intents = 0; intents < INTENTS; intents += 300) {
      ways.run(random.split());
    }
    return ways;
  }

  private void run(SplittableRandom random) {
    Walk walk = SampleProcedures.random(random);
    RandomTechnician technician = new RandomTechnician(random);
    Session session = Session.start(walk);
    for (int i = 0; i < 300; i++) {
      Moment now = new Moment(OffsetDateTime.parse("2026-01-05T08:00:00Z").plusSeconds(10L * i), i);
      Intent intent = technician.next(session);
      Decision decision = Decider.decide(session, intent, now);
      Session after = session.after(decision.events());
      take(session.phase(), intent.kind(), decision, after.phase());
      session = after;
    }
  }

  private void take(Phase from, IntentKind kind, Decision decision, Phase to) {
    boolean step = decision.events().stream().anyMatch(e -> e instanceof SessionEvent.StepEntered);
    boolean shown = !LOAD_CHANGES.contains(kind) && shown(from, kind);
    if (!shown || (!step && from == to)) {
      return;
    }
    if (step) {
      add(from.code() + " --> " + NEXT, kind);
      ways.computeIfAbsent(NEXT + " --> " + to.code(), k -> EnumSet.noneOf(IntentKind.class));
    } else if (from != Phase.LOAD_READ_BACK || AFTER_LOAD.contains(to)) {
      add(from.code() + " --> " + to.code(), kind);
    }
  }

  /** The end is shown where it ends, the load where it is waited for. */
  private static boolean shown(Phase from, IntentKind kind) {
    if (LOAD_CALLS.contains(kind)) {
      return from == Phase.GATE || from == Phase.LOAD;
    }
    return kind == IntentKind.END_OF_WORK ? from == Phase.ALL_CLOSED : !EVERYWHERE.contains(kind);
  }

  private void add(String way, IntentKind kind) {
    ways.computeIfAbsent(way, k -> new TreeSet<>()).add(kind);
  }
}
