package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.undercall.core.term.Side;

/** Finds the step that comes next. */
final class Route {
  private Route() {}

  /**
   * The next step to work on: first a fastener that was put aside for a load condition now
   * confirmed, then the next open step that no other must come before, then one left open before,
   * then one put aside or to be done after others.
   */
  static Optional<Integer> next(Session session) {
    List<Integer> waiting = session.waiting();
    if (!waiting.isEmpty()) {
      return Optional.of(waiting.get(0));
    }
    return openFirst(session);
  }

  /**
   * The next step after the one at hand was put aside: another fastener further on that waits for a
   * load condition now confirmed, then as {@link #next}. So it never goes straight back.
   */
  static Optional<Integer> afterPutAside(Session session) {
    int at = session.progress().at();
    return session.waiting().stream().filter(i -> i > at).findFirst().or(() -> openFirst(session));
  }

  private static Optional<Integer> openFirst(Session session) {
    int at = session.progress().at();
    Bonds bonds = new Bonds(session);
    IntPredicate open = i -> status(session, i) == StepState.Status.OPEN;
    IntPredicate ready = i -> open.test(i) && bonds.openBefore(i).isEmpty();
    IntPredicate notClosed = i -> status(session, i) != StepState.Status.CLOSED;
    return first(session, i -> i > at && ready.test(i))
        .or(() -> first(session, i -> i < at && ready.test(i)))
        .or(() -> first(session, i -> i > at && notClosed.test(i)))
        .or(() -> first(session, notClosed));
  }

  /** The first step of a side that is open, else the first put aside. */
  static Optional<Integer> onSide(Session session, Side side) {
    IntPredicate here = i -> session.walk().places().get(i).ref().side() == side;
    return first(session, i -> here.test(i) && status(session, i) == StepState.Status.OPEN)
        .or(
            () ->
                first(session, i -> here.test(i) && status(session, i) != StepState.Status.CLOSED));
  }

  private static StepState.Status status(Session session, int index) {
    return session.progress().states().get(index).status();
  }

  private static Optional<Integer> first(Session session, IntPredicate wanted) {
    return IntStream.range(0, session.walk().places().size()).filter(wanted).boxed().findFirst();
  }
}
