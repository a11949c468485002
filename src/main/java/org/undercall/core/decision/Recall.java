package org.undercall.core.decision;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Timing;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;

/**
 * Steps put off that are to be brought to mind again, once, when their time has come.
 *
 * @param steps in the order of the walk
 * @param reply what to say about them
 */
record Recall(List<Walk.Place> steps, Reply reply) {

  /** All that is not closed was put off, since the step just closed was the last other one. */
  static Recall leftOver(Session before, Session after) {
    boolean last = open(before) > 0 && open(after) == 0;
    List<Walk.Place> steps = last ? places(after, i -> !state(after, i).closed()) : List.of();
    return new Recall(steps, Timing.leftOver(steps));
  }

  /**
   * The steps put off for a load condition that is confirmed now and was not before. Fasteners that
   * cannot be closed without it are left out: they are named in any case.
   */
  static Recall possible(Session before, Session after) {
    List<Integer> named = after.waiting();
    List<Walk.Place> steps =
        places(after, i -> !named.contains(i) && reasonHolds(after, i) && !reasonHolds(before, i));
    return new Recall(steps, Timing.possibleNow(steps));
  }

  private static long open(Session session) {
    return session.progress().states().stream()
        .filter(state -> state.status() == StepState.Status.OPEN)
        .count();
  }

  private static boolean reasonHolds(Session session, int index) {
    StepState state = state(session, index);
    boolean aside =
        state.status() == StepState.Status.PUT_OFF || state.status() == StepState.Status.SNUG;
    Side side = session.walk().places().get(index).ref().side();
    return aside
        && state.reason().map(Recall::condition).filter(c -> holds(session, side, c)).isPresent();
  }

  /** The condition a step was put off for; {@link LoadCondition#ANY} for another reason. */
  private static LoadCondition condition(PutOffReason reason) {
    return switch (reason) {
      case RIDE_HEIGHT -> LoadCondition.RIDE_HEIGHT;
      case FULL_DROOP -> LoadCondition.FULL_DROOP;
      case WAITING_FOR_PARTS, TOOL_MISSING, NO_WITNESS, LATER -> LoadCondition.ANY;
    };
  }

  private static boolean holds(Session session, Side side, LoadCondition condition) {
    return condition != LoadCondition.ANY && session.loads().holds(side, condition);
  }

  private static StepState state(Session session, int index) {
    return session.progress().states().get(index);
  }

  private static List<Walk.Place> places(Session session, IntPredicate wanted) {
    List<Walk.Place> places = session.walk().places();
    return IntStream.range(0, places.size())
        .filter(wanted)
        .<Walk.Place>mapToObj(places::get)
        .toList();
  }
}
