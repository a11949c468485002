package org.undercall.core.decision;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.term.Positions;

/**
 * What {@link Promises} keeps of a set of fasteners at its stage at hand.
 *
 * @param called the positions that were called
 * @param last those that the last call added
 * @param doubted whether each of the others may have been turned through an angle
 * @param far how many stages are closed of each, since one of them was renewed
 */
record SetBook(Set<Integer> called, Set<Integer> last, boolean doubted, Map<Integer, Integer> far) {
  static final SetBook EMPTY = new SetBook(Set.of(), Set.of(), false, Map.of());

  SetBook(Set<Integer> called, Set<Integer> last, boolean doubted) {
    this(called, last, doubted, Map.of());
  }

  SetBook with(List<Integer> positions) {
    Set<Integer> all = new TreeSet<>(called);
    all.addAll(positions);
    return new SetBook(Set.copyOf(all), Set.copyOf(positions), doubted, far);
  }

  SetBook without(List<Integer> positions) {
    Set<Integer> rest = new TreeSet<>(called);
    positions.forEach(rest::remove);
    return new SetBook(Set.copyOf(rest), Set.of(), doubted, far);
  }

  /** Open again at an angle: which of them was turned is known only if it is the next one. */
  SetBook opened(List<Integer> positions, Fastener fastener) {
    SetBook rest = without(positions);
    boolean next = positions.equals(List.of(rest.next(fastener)));
    return new SetBook(rest.called, rest.last, doubted || !next, far);
  }

  /** After the stage was closed its last call can still be taken back. */
  SetBook lastTakenBack() {
    return without(List.copyOf(last));
  }

  /** At the next stage: those that were further before count. */
  SetBook at(int stage) {
    Set<Integer> further = new TreeSet<>();
    far.forEach(
        (position, stages) -> further.addAll(stages > stage ? List.of(position) : List.of()));
    return new SetBook(Set.copyOf(further), last, doubted && !far.isEmpty(), far);
  }

  /** One is renewed, when so many stages are closed. */
  SetBook renewed(int position, int stages, int count) {
    Map<Integer, Integer> reached = new HashMap<>();
    for (int n = 1; n <= count; n++) {
      int own = Math.max(far.getOrDefault(n, 0), stages + (called.contains(n) ? 1 : 0));
      reached.put(n, n == position ? 0 : own);
    }
    SetBook next = new SetBook(Set.of(), Set.of(), doubted, Map.copyOf(reached)).at(0);
    return new SetBook(next.called, Set.of(), doubted, next.far);
  }

  /** Checks positions that are closed by an intent, or throws. */
  void check(
      Intent intent,
      SessionEvent.PositionsClosed e,
      Fastener fastener,
      IntentKind wanted,
      Optional<Positions> heard) {
    List<Integer> closed = e.positions().numbers();
    boolean readBack = intent.kind() == IntentKind.READ_BACK_RIGHT;
    require(intent.kind() == wanted || readBack, "a position closed by its own phrase", e);
    require(
        closed.stream().noneMatch(called::contains)
            && closed.stream().allMatch(n -> n <= fastener.set().count()),
        "a position closed once",
        e);
    require(!(intent instanceof Intent.Counted), "a count is read back", e);
    boolean asHeard = heard.filter(e.positions()::equals).isPresent();
    boolean next = closed.equals(List.of(next(fastener)));
    boolean named =
        !(intent instanceof Intent.OfPosition of) || closed.equals(List.of(of.position()));
    require((readBack && asHeard) || (next && named), "the position that was called", e);
    boolean free =
        fastener.set().order().isEmpty()
            && !fastener.holdsWheel()
            && wanted == IntentKind.TORQUE_COMPLETED;
    require(closed.size() == 1 || free, "in order means one by one", e);
  }

  private int next(Fastener fastener) {
    List<Integer> order = fastener.set().order();
    for (int i = 1; i <= fastener.set().count(); i++) {
      int position = order.isEmpty() ? i : order.get(i - 1);
      if (!called.contains(position)) {
        return position;
      }
    }
    return 0;
  }

  /** Whether every one of a set was called, or it is a single fastener. */
  boolean complete(Fastener fastener) {
    return fastener.set().count() == 1 || called.size() == fastener.set().count();
  }

  private static void require(boolean holds, String promise, Object where) {
    Promises.require(holds, promise, where);
  }
}
