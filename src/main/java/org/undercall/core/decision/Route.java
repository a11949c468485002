package org.undercall.core.decision;

import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Side;

/** Finds the step that comes next. */
final class Route {
  private Route() {}

  /**
   * The next step to work on: first a wait whose time is over, then a fastener that was put aside
   * for a load condition now confirmed, then the next open step that no other must come before,
   * then a wait whose time runs, then one left open before, then one put aside or to be done after
   * others.
   */
  static Optional<Integer> next(Session session) {
    return calledBack(session)
        .or(() -> session.waiting().stream().findFirst())
        .or(() -> openFirst(session));
  }

  /**
   * The next step after the one at hand was put aside: a wait whose time is over, another fastener
   * further on that waits for a load condition now confirmed, then as {@link #next}. So it never
   * goes straight back.
   */
  static Optional<Integer> afterPutAside(Session session) {
    int at = session.progress().at();
    return calledBack(session)
        .or(() -> session.waiting().stream().filter(i -> i > at).findFirst())
        .or(() -> openFirst(session));
  }

  /** The next step while the time of the one at hand runs; empty if nothing else is ready. */
  static Optional<Integer> whileWaiting(Session session) {
    Bonds bonds = new Bonds(session);
    return calledBack(session)
        .or(() -> session.waiting().stream().filter(bonds::isReady).findFirst())
        .or(() -> ready(session));
  }

  /** The first wait that is open and whose time is over. */
  static Optional<Integer> calledBack(Session session) {
    return first(session, i -> isCalledBack(session, i));
  }

  /** Whether a step is a wait whose time is over, and which is neither closed nor put off. */
  static boolean isCalledBack(Session session, int index) {
    return isWait(session, index)
        && session.timers().ended().contains(session.walk().places().get(index).ref());
  }

  private static Optional<Integer> openFirst(Session session) {
    int at = session.progress().at();
    IntPredicate notClosed = i -> status(session, i) != StepState.Status.CLOSED;
    return ready(session)
        .or(() -> first(session, i -> isWait(session, i) && runs(session, i)))
        .or(() -> first(session, i -> i > at && notClosed.test(i)))
        .or(() -> first(session, notClosed));
  }

  /** The next open step that no other must come before, and whose time does not run. */
  private static Optional<Integer> ready(Session session) {
    int from = session.progress().from();
    Bonds bonds = new Bonds(session);
    IntPredicate ready =
        i -> status(session, i) == StepState.Status.OPEN && !runs(session, i) && bonds.isReady(i);
    return first(session, i -> i >= from && ready.test(i))
        .or(() -> first(session, i -> i < from && ready.test(i)));
  }

  private static boolean isWait(Session session, int index) {
    return session.walk().places().get(index).step() instanceof Step.Wait
        && status(session, index) == StepState.Status.OPEN;
  }

  private static boolean runs(Session session, int index) {
    return session.timers().runs(session.walk().places().get(index).ref());
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
